package dev.pellucid.engine.folder;

import java.text.Normalizer;
import java.util.List;

/** Which files of a folder are read, by their names alone. */
final class Names {
  private static final List<String> READ =
      List.of(".recipe", ".premix", ".limits", ".figures", ".yaml", ".yml");

  /** A file of these is called by its name, wherever it lies. */
  private static final List<String> NAMED = List.of(".recipe", ".premix", ".limits");

  /** What a feed hangs on. */
  private static final List<String> MEANT = List.of(".recipe", ".premix", ".limits", ".yaml");

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

  /** The last part of a path. */
  static String ofFile(String path) {
    return path.substring(path.lastIndexOf('/') + 1);
  }

  /** Some systems keep letters and their marks apart in names of files. */
  static String composed(String path) {
    return Normalizer.normalize(path, Normalizer.Form.NFC);
  }
}
