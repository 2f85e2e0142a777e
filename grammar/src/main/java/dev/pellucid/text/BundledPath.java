package dev.pellucid.text;

/**
 * Paths of files that come with this program and not with a folder: {@code
 * pellucid:ingredients/maize.yaml}. The mark before them is printed too, so that nobody looks for
 * such a file in the folder.
 */
public final class BundledPath {
  /** What such a path begins with. */
  public static final String MARK = "pellucid:";

  private BundledPath() {}

  /** The path of a file that comes along. */
  public static String of(String below) {
    return MARK + below;
  }

  /** Whether a path is that of a file that comes along. */
  public static boolean is(String path) {
    return path.startsWith(MARK);
  }

  /** The place that a file has, or would have, below a folder: its path without the mark. */
  public static String below(String path) {
    return is(path) ? path.substring(MARK.length()) : path;
  }
}
