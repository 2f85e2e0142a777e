package dev.pellucid.engine.mutants;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Pattern;

/** The slips that people make: which lines of which files they hit, and how. */
enum SlipKind {
  SHARE_TEN_TIMES(".*\\.recipe", "mix|coat", Lines.FIGURE, Hand.TEN_TIMES),
  MATERIAL_MISSPELT(".*\\.recipe", "mix|coat", Lines.ANY, Hand.NAME_MISSPELT),
  MATERIAL_LOST(".*\\.recipe", "mix|coat", Lines.ANY, Hand.LOST),
  HEAD_LINE_LOST(".*\\.recipe", "recipe", "(?!status)\\S+ .*", Hand.LOST),
  PROCESS_LINE_LOST(".*\\.recipe", "process", Lines.ANY, Hand.LOST),
  SECTION_LOST(".*\\.recipe", "(?!recipe).*", Lines.HEADING, Hand.SECTION_LOST),
  HEADING_MISSPELT(".*\\.(recipe|premix|limits)", ".*", Lines.HEADING, Hand.NAME_MISSPELT),
  HEADING_LOST(".*\\.(recipe|premix|limits)", ".*", Lines.HEADING, Hand.LOST),
  OWN_LIMIT_TEN_TIMES(".*\\.recipe", "limits|waivers", Lines.FIGURE, Hand.TEN_TIMES),
  PROCESS_TEN_TIMES(".*\\.recipe", "process", Lines.FIGURE, Hand.TEN_TIMES),
  LABEL_TEN_TIMES(".*\\.recipe", "label", Lines.FIGURE, Hand.TEN_TIMES),
  NUTRIENT_MISSPELT(".*\\.(recipe|limits)", "label|limits", Lines.ANY, Hand.NAME_MISSPELT),
  UNIT_SLIP(".*\\.recipe", ".*", Lines.FIGURE, Hand.UNIT),
  LINE_TWICE(".*\\.(recipe|premix)", ".*", Lines.ANY, Hand.TWICE),
  LINE_MOVED(".*\\.(recipe|premix)", ".*", Lines.ANY, Hand.MOVED),
  FISH_TEN_TIMES(
      ".*\\.(recipe|limits)|species/.*", ".*", "(- )?(fish|pellet)[ :].*", Hand.TEN_TIMES),
  SUPPLY_TEN_TIMES(".*\\.premix", "supply", Lines.FIGURE, Hand.TEN_TIMES),
  SUPPLY_LOST(".*\\.premix", "supply", Lines.ANY, Hand.LOST),
  SUPPLY_MISSPELT(".*\\.premix", "supply", Lines.ANY, Hand.NAME_MISSPELT),
  PREMIX_TEN_TIMES(".*\\.premix", "(?!supply).*", Lines.FIGURE, Hand.TEN_TIMES),
  LAW_OR_PREMIX_LINE_LOST(".*\\.premix|law/.*", "(?!supply|profile).*", Lines.ANY, Hand.LOST),
  NEED_TEN_TIMES("limits/.*", "limits", Lines.FIGURE, Hand.TEN_TIMES),
  NEED_LOST("limits/.*", "limits", Lines.FIGURE, Hand.LOST),
  SIDE_TURNED(".*\\.(recipe|limits)", "limits", ".*\\b(min|max)\\b.*", Hand.SIDE_TURNED),
  PHRASE_LOST(".*\\.(recipe|limits)", "limits", Lines.PHRASE, Hand.PHRASE_LOST),
  LAW_TEN_TIMES("law/.*", "limits", Lines.FIGURE, Hand.TEN_TIMES),
  PROFILE_HEAD_LOST("(limits|law)/.*", "profile", Lines.ANY, Hand.LOST),
  CONTENT_TEN_TIMES("ingredients/.*", "contents", Lines.FIGURE, Hand.TEN_TIMES),
  CONTENT_UNIT("ingredients/.*", "contents", Lines.FIGURE, Hand.CONTENT_UNIT),
  INGREDIENT_KEY("ingredients/.*", ".*", "[- ]*[a-z-]+:.*", Hand.NAME_MISSPELT),
  INGREDIENT_YAML("ingredients/.*", ".*", "[- ]*[a-z-]+: .*", Hand.YAML),
  DIGESTIBILITY("ingredients/.*", "digestibility", Lines.FIGURE, Hand.TEN_TIMES),
  PRICE_OFF("prices/2026-11.*", "prices", Lines.FIGURE, Hand.PRICE),
  PRICE_LOST("prices/2026-11.*", ".*", Lines.FIGURE, Hand.LOST),
  SHARED_YAML(
      "(nutrients|species)/.*|groups.yaml|sources.yaml|pellucid.yaml",
      ".*",
      "[- ]*[a-z0-9-]+: .*",
      Hand.YAML),
  SHARED_KEY(
      "(nutrients|species)/.*|groups.yaml|sources.yaml|pellucid.yaml",
      ".*",
      "[- ]*[a-z0-9-]+:.*",
      Hand.NAME_MISSPELT),
  LOT_OFF(
      "lots/.*",
      "lots",
      "(- )?(number|ingredient|received|best-before|quantity|inspection|moisture|crude-[a-z]+): .*",
      Hand.TEN_TIMES_OR_LOST),
  PLANT_TEN_TIMES("plant/.*|species/.*", ".*", Lines.FIGURE, Hand.TEN_TIMES),
  PRACTICE_OFF("practice/.*", ".*", Lines.FIGURE, Hand.TEN_TIMES),
  RECORD_TEN_TIMES("batches/.*", ".*", Lines.FIGURE, Hand.TEN_TIMES);

  private final Pattern files;
  private final Pattern sections;
  private final Pattern lines;
  private final Hand hand;

  SlipKind(String files, String sections, String lines, Hand hand) {
    this.files = Pattern.compile(files);
    this.sections = Pattern.compile(sections);
    this.lines = Pattern.compile(lines);
    this.hand = hand;
  }

  /** What lines there are. */
  private static final class Lines {
    static final String ANY = "[^#\\s].*";
    static final String FIGURE = "[^#].*\\d.*";
    static final String HEADING = "HEADING";
    static final String PHRASE = ".*(on dry matter|at \\d+ % moisture|in \\d+ % of batches).*";
  }

  boolean isOf(String path) {
    return files.matcher(path).matches();
  }

  /** The slip at a line, where this kind can be made there. */
  Optional<Slip> at(String path, List<String> lines, int at, Random random) {
    String line = lines.get(at);
    if (line.isBlank() || line.strip().startsWith("#")) {
      return Optional.empty();
    }
    boolean heading = !Character.isWhitespace(line.charAt(0));
    boolean language = !path.endsWith(".yaml");
    boolean wanted =
        lines().equals(Lines.HEADING)
            ? heading
            : !(heading && language) && this.lines.matcher(line.strip()).matches();
    return wanted && sections.matcher(section(lines, at)).matches()
        ? hand.slip(path, lines, at, random)
        : Optional.empty();
  }

  private String lines() {
    return lines.pattern();
  }

  private static String section(List<String> lines, int at) {
    int line = at;
    while (line > 0
        && (lines.get(line).isBlank() || " #-".indexOf(lines.get(line).charAt(0)) >= 0)) {
      line--;
    }
    return lines.get(line).split("[ :]", 2)[0];
  }
}
