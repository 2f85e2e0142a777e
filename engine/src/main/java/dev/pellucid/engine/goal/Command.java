package dev.pellucid.engine.goal;

import java.nio.file.Path;
import java.util.regex.Pattern;

/** Words of a command, to be typed in any command shell. */
final class Command {
  private static final Pattern PLAIN = Pattern.compile("[\\p{L}\\p{N}_./:=+-]*");

  private Command() {}

  /** From a folder where it lies below that, else in full. */
  static Path seen(Path from, Path folder) {
    return folder.startsWith(from) ? from.relativize(folder) : folder;
  }

  /** In quotes where a command shell would take it for several words, or for more than words. */
  static String word(String option, Path path) {
    String word = option + path.toString().replace(path.getFileSystem().getSeparator(), "/");
    return PLAIN.matcher(word).matches() ? word : '"' + word + '"';
  }
}
