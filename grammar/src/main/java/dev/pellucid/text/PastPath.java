package dev.pellucid.text;

import java.util.regex.Pattern;

/**
 * Paths of files as an earlier commit has them: {@code 9c71e80d12:limits/grower.limits}. The commit
 * is printed too, so that nobody looks for that line in the file of today.
 */
public final class PastPath {
  private static final Pattern PAST = Pattern.compile("[0-9a-f]{7,64}:.*", Pattern.DOTALL);

  private PastPath() {}

  /**
   * The path of a file in a commit.
   *
   * @param commit in hexadecimal digits
   */
  public static String of(String commit, String path) {
    return commit + ":" + path;
  }

  /** Whether a path is that of a file in a commit. */
  public static boolean is(String path) {
    return PAST.matcher(path).matches();
  }

  /** The commit of such a path. */
  public static String commit(String path) {
    return path.substring(0, path.indexOf(':'));
  }

  /** The path that the file had then. */
  public static String below(String path) {
    return path.substring(path.indexOf(':') + 1);
  }
}
