package dev.pellucid.engine.starter;

import dev.pellucid.engine.data.Schemas;
import dev.pellucid.engine.starter.StarterFile.Part;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The files that a folder of feeds begins with. In a template {@code @word@} stands for a wish or
 * for what follows from it; a line that asks for something the folder does not get is left out.
 */
public final class Starter {
  private static final String SETTINGS = "pellucid.yaml";

  /** Common files that tell of the first feeds. */
  private static final List<String> OF_FEEDS = List.of("README.md", "sources.yaml");

  private static final Pattern ASKS = Pattern.compile("@([a-z][a-z-]*)@");

  private final Wishes wishes;
  private final Map<String, String> words = new TreeMap<>();

  private Starter(Wishes wishes) {
    this.wishes = wishes;
    words.put("artifact", artifact(wishes.name()));
    words.put("currency", wishes.currency());
    // Of the day before, so that own prices can be from this day.
    words.put("day", wishes.day().minusDays(1).toString());
    words.put("jurisdiction", wishes.jurisdiction());
    words.put("species", wishes.species());
    words.put("species-name", wishes.species().replace('-', ' '));
    words.put("version", wishes.version());
  }

  /** All files, in the order in which they are to be written. */
  public static List<StarterFile> whole(Templates templates, Wishes wishes) {
    Starter starter = new Starter(wishes);
    SortedMap<String, String> feeds = templates.of(wishes.species());
    String recipe = first(feeds, "", ".recipe");
    starter.words.put("recipe", named(recipe));
    starter.words.put("recipe-file", recipe);
    starter.words.put("premix", named(first(feeds, "", ".premix")));
    starter.words.put("plant", named(first(feeds, "plant/", ".yaml")));
    List<StarterFile> files = starter.frame(templates);
    feeds.forEach((path, text) -> files.add(starter.file(path, text, Part.FEEDS)));
    files.sort(Comparator.comparing(StarterFile::part).thenComparing(StarterFile::path));
    return List.copyOf(files);
  }

  /** The same for a folder that has feeds of its own: what tells of the first feeds is left out. */
  public static List<StarterFile> aroundFeeds(Templates templates, Wishes wishes) {
    List<StarterFile> files = new Starter(wishes).frame(templates);
    files.removeIf(file -> file.part() == Part.FEEDS);
    files.sort(Comparator.comparing(StarterFile::part).thenComparing(StarterFile::path));
    return List.copyOf(files);
  }

  private List<StarterFile> frame(Templates templates) {
    List<StarterFile> files = new ArrayList<>();
    templates.common().forEach((path, text) -> files.add(file(path, text, part(path))));
    Schemas.byKind()
        .forEach(
            (kind, schema) -> files.add(new StarterFile(Schemas.path(kind), schema, Part.FRAME)));
    return files;
  }

  private static Part part(String path) {
    if (path.equals(SETTINGS)) {
      return Part.SETTINGS;
    }
    return OF_FEEDS.contains(path) ? Part.FEEDS : Part.FRAME;
  }

  private StarterFile file(String path, String template, Part part) {
    StringBuilder text = new StringBuilder(Schemas.line(path).orElse(""));
    template.lines().filter(this::isGiven).forEach(line -> text.append(filled(path, line)));
    return new StarterFile(path, text.toString(), part);
  }

  private boolean isGiven(String line) {
    Matcher asks = ASKS.matcher(line);
    while (asks.find()) {
      if (!asks.group(1).equals("name") && !words.containsKey(asks.group(1))) {
        return false;
      }
    }
    return true;
  }

  private String filled(String path, String line) {
    return ASKS.matcher(line)
            .replaceAll(asks -> Matcher.quoteReplacement(word(path, asks.group(1))))
        + "\n";
  }

  private String word(String path, String asked) {
    return asked.equals("name")
        ? Quoting.in(path, wishes.name())
        : words.getOrDefault(asked, asked);
  }

  private static String artifact(String name) {
    String plain = Normalizer.normalize(name, Normalizer.Form.NFD).toLowerCase(Locale.ROOT);
    String word = plain.replaceAll("\\p{M}", "").replaceAll("[^a-z0-9]+", "-");
    String ends = word.replaceAll("^-|-$", "");
    return ends.isEmpty() ? "feeds" : ends;
  }

  /** The first file of a kind, by its path. */
  private static String first(SortedMap<String, String> feeds, String folder, String ending) {
    return feeds.keySet().stream()
        .filter(path -> path.startsWith(folder) && path.endsWith(ending))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("a starter without any " + ending));
  }

  private static String named(String path) {
    return path.substring(path.lastIndexOf('/') + 1, path.lastIndexOf('.'));
  }
}
