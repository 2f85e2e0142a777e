package dev.pellucid.text;

import java.util.Arrays;

/**
 * One text and the path a person knows it by.
 *
 * <p>The path is for printing only, with nothing in it that cannot be seen, and uses {@code /}. The
 * text is kept exactly as it was read, line ends and a leading byte order mark included, so that an
 * edit can be applied to it. A line ends at {@code \n}, {@code \r\n} or a lone {@code \r}.
 */
public final class SourceFile {
  private final String path;
  private final String text;

  /** Found when first asked for; a text in memory is asked by several threads at once. */
  private volatile int[] lineStarts = {};

  public SourceFile(String path, String text) {
    this.path = Unseen.shownOnOneLine(path);
    this.text = text;
  }

  public String path() {
    return path;
  }

  public String text() {
    return text;
  }

  /** The last part of the path: {@code CG-36.recipe}. */
  public String fileName() {
    return path.substring(path.lastIndexOf('/') + 1);
  }

  /** The file name without its last extension: {@code CG-36}. */
  public String stem() {
    String name = fileName();
    int dot = name.lastIndexOf('.');
    return dot < 0 ? name : name.substring(0, dot);
  }

  /** The part from {@code start} to before {@code end}, in UTF-16 units of the text. */
  public Span span(int start, int end) {
    return new Span(this, start, end);
  }

  /** The very beginning, for what concerns the file as a whole. */
  public Span beginning() {
    return span(0, 0);
  }

  public Position position(int offset) {
    int[] starts = starts();
    int found = Arrays.binarySearch(starts, offset);
    int line = found >= 0 ? found : -found - 2;
    return new Position(line + 1, offset - starts[line] + 1);
  }

  public int lineCount() {
    return starts().length;
  }

  /** The text of a line, counted from 1, without its line end. */
  public String line(int number) {
    int[] starts = starts();
    int start = starts[number - 1];
    int end = number < starts.length ? starts[number] : text.length();
    while (end > start && isLineEnd(text.charAt(end - 1))) {
      end--;
    }
    return text.substring(start, end);
  }

  private int[] starts() {
    int[] starts = lineStarts;
    if (starts.length == 0) {
      starts = findLineStarts();
      lineStarts = starts;
    }
    return starts;
  }

  private int[] findLineStarts() {
    int[] starts = new int[64];
    int count = 1;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean loneReturn = c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n');
      if (c == '\n' || loneReturn) {
        if (count == starts.length) {
          starts = Arrays.copyOf(starts, count * 2);
        }
        starts[count++] = i + 1;
      }
    }
    return Arrays.copyOf(starts, count);
  }

  private static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r';
  }

  @Override
  public String toString() {
    return path;
  }
}
