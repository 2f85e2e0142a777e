package dev.pellucid.engine.folder;

import java.text.Normalizer;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Which files of a folder are read, by their names alone. */
final class Names {
  private static final List<String> READ =
      List.of(".recipe", ".premix", ".limits", ".figures", ".yaml", ".yml");

  /** A file of these is called by its name, wherever it lies. */
  private static final List<String> NAMED = List.of(".recipe", ".premix", ".limits");

  /** What a feed hangs on. */
  private static final List<String> MEANT = List.of(".recipe", ".premix", ".limits", ".yaml");

  /** Where records of batches are read. */
  static final String BATCHES = "batches/";

  /** Where lots are read. */
  static final String LOTS = "lots/";

  private static final Pattern TEXT = Pattern.compile("[^.]+|.*\\.(txt|text|json)");
  private static final Pattern LOTS_WORD = Pattern.compile("(.*[^a-z])?lots([^a-z].*)?");
  private static final Pattern YEAR = Pattern.compile("[0-9]{4}-?[0-9]{2}");

  /** Lists to which a folder adds entries of its own. */
  private static final List<String> ADDED_TO = List.of("sources.yaml", "groups.yaml");

  private Names() {}

  /** Whether a file is read for the end of its name. */
  static boolean isRead(String name) {
    return endsIn(READ, name);
  }

  /** Whether other files call this one by its name without its folder. */
  static boolean isCalled(String path) {
    return endsIn(NAMED, path);
  }

  /** Whether a feed can hang on a file. */
  static boolean isMeant(String path) {
    return endsIn(MEANT, path);
  }

  private static boolean endsIn(List<String> endings, String name) {
    for (String ending : endings) {
      if (name.endsWith(ending)) {
        return true;
      }
    }
    return false;
  }

  /** Whether what lies in a folder of that name is none of ours. */
  static boolean isPassedOver(String folder) {
    return folder.startsWith(".") || folder.equals("target");
  }

  /** Whether whoever lists the folder comes upon a file at a path below it. */
  static boolean isReached(String path) {
    List<String> parts = List.of(path.split("/", -1));
    int last = parts.size() - 1;
    return !parts.get(last).startsWith(".")
        && parts.subList(0, last).stream().noneMatch(Names::isPassedOver);
  }

  /** Whether a file in a folder adds to the one that comes along, and does not replace it. */
  static boolean isAddedTo(String path) {
    return ADDED_TO.contains(path);
  }

  /**
   * What tells a file from others of its kind, so that a second one of the same would be the same
   * thing again: its name alone where other files call it so, else its name in the folder of its
   * kind.
   */
  static String ofThing(String path) {
    int first = path.indexOf('/');
    return isCalled(path) || first < 0 ? ofFile(path) : path.substring(0, first + 1) + ofFile(path);
  }

  /** Whether there is a recipe or a premix of that code, whatever its capitals. */
  static boolean isMade(String code, Collection<String> files) {
    return files.stream()
        .map(Names::ofFile)
        .anyMatch(
            name ->
                name.equalsIgnoreCase(code + ".recipe") || name.equalsIgnoreCase(code + ".premix"));
  }

  /** Whether the record of a batch is where records are read, whatever its capitals. */
  static boolean hasRecord(String number, Collection<String> files) {
    return files.stream()
        .filter(path -> path.startsWith(BATCHES))
        .anyMatch(path -> ofFile(path).equalsIgnoreCase(number + ".yaml"));
  }

  /** Whether a text that is not read is called as a file of lots is. */
  static boolean isTextOfLots(String path) {
    String name = ofFile(path).toLowerCase(Locale.ROOT);
    return TEXT.matcher(name).matches()
        && (LOTS_WORD.matcher(name).matches()
            || (path.startsWith(LOTS) && YEAR.matcher(name).lookingAt()));
  }

  /** The last part of a path. */
  static String ofFile(String path) {
    return path.substring(path.lastIndexOf('/') + 1);
  }

  /** Some systems keep letters and their marks apart in names of files. */
  static String composed(String path) {
    return Normalizer.normalize(path, Normalizer.Form.NFC);
  }
}
