package dev.pellucid.engine.mutants;

import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * One slip of one line of one file of a folder.
 *
 * @param line where it stands, or stood, counted from 1
 * @param section the line that opens its section, counted from 1; 0 where it stands in none
 * @param before the line as it was
 * @param after the file with the slip in it
 */
record Slip(String path, int line, int section, String before, boolean lost, String after) {

  /** One whose line reads otherwise now. */
  static Slip changed(String path, List<String> lines, int at, String to) {
    List<String> all = new ArrayList<>(lines);
    all.set(at, to);
    return new Slip(path, at + 1, heading(lines, at) + 1, lines.get(at), false, joined(all));
  }

  /** One whose line is gone, with so many after it. */
  static Slip lost(String path, List<String> lines, int at, int more) {
    List<String> all = new ArrayList<>(lines);
    all.subList(at, at + 1 + more).clear();
    return new Slip(path, at + 1, heading(lines, at) + 1, lines.get(at), true, joined(all));
  }

  /** One whose line stands there a second time. */
  static Slip twice(String path, List<String> lines, int at) {
    List<String> all = new ArrayList<>(lines);
    all.add(at + 1, lines.get(at));
    return new Slip(path, at + 2, heading(lines, at) + 1, lines.get(at), false, joined(all));
  }

  /** One whose line stands at another place now. */
  static Slip moved(String path, List<String> lines, int at, int to) {
    List<String> all = new ArrayList<>(lines);
    String line = all.remove(at);
    all.add(to, line);
    return new Slip(path, to + 1, heading(lines, at) + 1, line, true, joined(all));
  }

  private static String joined(List<String> lines) {
    return String.join("\n", lines) + "\n";
  }

  /** The nearest line above that stands in column 1, or the line itself. */
  private static int heading(List<String> lines, int at) {
    int line = at;
    while (line > 0
        && (lines.get(line).isBlank() || " #".indexOf(lines.get(line).charAt(0)) >= 0)) {
      line--;
    }
    return line;
  }

  /**
   * Whether a finding stands where a person must go. A line that is gone is told where it stood, at
   * the heading above it, in the head of the file, at the rest that swells, or anywhere in the file
   * by its name.
   */
  boolean isToldBy(Finding finding) {
    if (!finding.span().file().path().equals(path)) {
      return false;
    }
    int told = finding.span().from().line();
    int end = finding.span().to().line();
    if (told <= line && line <= end) {
      return true;
    }
    return lost
        && (isRest(finding)
            || Math.abs(told - line) <= 1
            || told == section
            || opens(finding)
            || names(finding));
  }

  /** The line that takes what others leave, and so swells where one of them is lost. */
  private static boolean isRest(Finding finding) {
    return finding.span().file().line(finding.span().from().line()).contains(" rest ");
  }

  /** Whether it stands in the head of the file, which says what must be there. */
  private static boolean opens(Finding finding) {
    String line = finding.span().file().line(finding.span().from().line());
    return finding.span().from().line() == 1
        || line.matches("(recipe|premix|profile|name|format|  holds|  must)\\b.*");
  }

  private boolean names(Finding finding) {
    String name = before.strip().replaceFirst("^- ", "").split("[:\\s]", 2)[0];
    return finding.headline().toLowerCase(Locale.ROOT).contains(name.toLowerCase(Locale.ROOT));
  }
}
