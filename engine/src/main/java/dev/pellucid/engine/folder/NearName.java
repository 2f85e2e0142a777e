package dev.pellucid.engine.folder;

import dev.pellucid.text.NearNames;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The name of a file that is not read and looks as if it were meant to be: {@code CG-36.RECIPE},
 * {@code CG-36.recip}, {@code CG-36.recipe.txt}, {@code CG-36.recipe.orig}. What editors and
 * systems write for themselves, hidden files and {@code CG-36.recipe~}, is not among them, nor is
 * anything made of a recipe, such as {@code CG-36.recipe.pdf}.
 *
 * @param ending how it ends, with its point
 * @param meant the name that it would be read by
 * @param copy whether a program laid it by as a copy, so that the one that is read stands beside it
 */
record NearName(String ending, String meant, boolean copy) {
  /** Endings near which others lie; {@code .yml} is too short to be near to anything. */
  private static final List<String> OURS = List.of("recipe", "premix", "limits", "figures", "yaml");

  private static final String ENDINGS = "recipe|premix|limits|figures|yaml|yml";

  /** What an editor or a mail adds to a text. */
  private static final Set<String> OF_TEXT =
      Set.of("txt", "text", "rtf", "doc", "docx", "odt", "md", "csv", "bin", "download", "part");

  /** What merging and saving leave behind. */
  private static final Set<String> OF_COPIES =
      Set.of("bak", "backup", "old", "orig", "rej", "save", "sav", "tmp", "temp", "copy", "prev");

  /** {@code .recipe (1)}, {@code .recipe 2}, {@code .recipe-old}, {@code .recipe.}. */
  private static final Pattern TRAILED =
      Pattern.compile(
          "(?i)(?<stem>.+)\\.(?<ours>" + ENDINGS + ")(?<more>[ ._(-][^.]*|\\.)", Pattern.DOTALL);

  private static final Pattern DOUBLED =
      Pattern.compile(
          "(?i)(?<stem>.+)\\.(?<ours>" + ENDINGS + ")\\.(?<more>[^.]+)", Pattern.DOTALL);

  private static final Pattern ENDED =
      Pattern.compile("(?<stem>.+)\\.(?<more>[^.]+)", Pattern.DOTALL);

  /** For the name of a file, without its folder, that does not end as ours do. */
  static Optional<NearName> of(String name) {
    if (name.startsWith(".") || name.startsWith("#") || name.endsWith("~")) {
      return Optional.empty();
    }
    Matcher doubled = DOUBLED.matcher(name);
    if (doubled.matches()) {
      return doubled(doubled);
    }
    Matcher trailed = TRAILED.matcher(name);
    if (trailed.matches()) {
      return Optional.of(
          new NearName(
              "." + trailed.group("ours") + trailed.group("more"),
              meant(trailed.group("stem"), trailed.group("ours")),
              false));
    }
    Matcher ended = ENDED.matcher(name);
    return ended.matches() ? misspelt(ended) : Optional.empty();
  }

  private static Optional<NearName> doubled(Matcher name) {
    String more = name.group("more").strip().toLowerCase(Locale.ROOT);
    boolean copy = OF_COPIES.contains(more);
    if (!copy && !OF_TEXT.contains(more) && !more.matches("[0-9]{1,2}|" + ENDINGS)) {
      return Optional.empty();
    }
    return Optional.of(
        new NearName(
            "." + name.group("ours") + "." + name.group("more"),
            meant(name.group("stem"), name.group("ours")),
            copy));
  }

  private static Optional<NearName> misspelt(Matcher name) {
    String ending = name.group("more");
    String small = ending.toLowerCase(Locale.ROOT);
    if (small.matches(ENDINGS)) {
      return Optional.of(new NearName("." + ending, meant(name.group("stem"), small), false));
    }
    return OURS.stream()
        .filter(ours -> isSlipOf(small, ours))
        .findFirst()
        .map(ours -> new NearName("." + ending, meant(name.group("stem"), ours), false));
  }

  /** One slip, or a plural: {@code .recip}, {@code .receipe}, {@code .premixes}. */
  private static boolean isSlipOf(String small, String ours) {
    return small.length() >= 4
        && (NearNames.distance(small, ours) == 1 || small.equals(ours + "es"));
  }

  private static String meant(String stem, String ours) {
    return stem + "." + ours.toLowerCase(Locale.ROOT);
  }
}
