package dev.pellucid.engine.yaml;

import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import dev.pellucid.text.Unseen;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Slips that can be named from a line alone, found before YAML reads it: a YAML parser puts them in
 * the wrong place, or reads something else than what stands there.
 */
final class LineScan {
  private static final Pattern GLUED =
      Pattern.compile("^(?:[A-Za-z][A-Za-z0-9_-]*|[0-9.]+ ?(?:°C|C|℃)):[^\\s/].*", Pattern.DOTALL);
  private static final Pattern OPENS_BLOCK =
      Pattern.compile("(?:^|: +|- +)[|>][+-]?[0-9]?[+-]? *$");

  private final SourceFile file;

  /** Whether no character of the whole text is one that cannot be seen. */
  private final boolean allSeen;

  private final List<Finding> slips = new ArrayList<>();
  private final List<Finding> remarks = new ArrayList<>();
  private int blockIndent = -1;

  private LineScan(SourceFile file) {
    this.file = file;
    this.allSeen = Unseen.find(file.text(), textStart(file)) < 0;
  }

  static LineScan of(SourceFile file) {
    LineScan scan = new LineScan(file);
    scan.lines();
    return scan;
  }

  /** What keeps YAML from reading the file. */
  List<Finding> slips() {
    return slips;
  }

  /** What is wrong with the text and yet can be read. */
  List<Finding> remarks() {
    return remarks;
  }

  private static int textStart(SourceFile file) {
    return file.text().startsWith("\uFEFF") ? 1 : 0;
  }

  private void lines() {
    String text = file.text();
    boolean hasReturns = text.indexOf('\r') >= 0;
    int start = textStart(file);
    while (start < text.length()) {
      int end = hasReturns ? lineEnd(text, start) : newline(text, start);
      line(text.substring(start, end), start);
      start = end + (text.startsWith("\r\n", end) ? 2 : 1);
    }
  }

  private static int newline(String text, int start) {
    int end = text.indexOf('\n', start);
    return end < 0 ? text.length() : end;
  }

  private static int lineEnd(String text, int start) {
    int end = start;
    while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
      end++;
    }
    return end;
  }

  private void line(String line, int start) {
    if (!allSeen) {
      unseen(line, start);
    }
    if (line.isBlank()) {
      return;
    }
    int head = headEnd(line);
    int tab = line.indexOf('\t');
    boolean tabbed = tab >= 0 && tab < head;
    int indent = tabbed ? tab : head;
    if (blockIndent >= 0 && indent > blockIndent) {
      return;
    }
    if (tabbed) {
      slips.add(YamlFindings.tab(file.span(start, start + head)));
      return;
    }
    blockIndent = opensBlock(line) ? indent : -1;
    int content = contentStart(line, head);
    content(line.substring(content), start + content);
  }

  /** Where the white space ends that a line begins with. */
  private static int headEnd(String line) {
    int end = 0;
    while (end < line.length() && (line.charAt(end) == ' ' || line.charAt(end) == '\t')) {
      end++;
    }
    return end;
  }

  /** Where the text begins behind the dashes of lists. */
  private static int contentStart(String line, int head) {
    int start = head;
    while (line.startsWith("- ", start)) {
      start += 2;
      while (start < line.length() && line.charAt(start) == ' ') {
        start++;
      }
    }
    return start;
  }

  /** Few lines hold a sign that could open a block, and only these are looked at closely. */
  private static boolean opensBlock(String line) {
    return (line.indexOf('|') >= 0 || line.indexOf('>') >= 0) && OPENS_BLOCK.matcher(line).find();
  }

  private void unseen(String line, int start) {
    int at = Unseen.find(line, 0);
    if (at < 0) {
      return;
    }
    Span place = file.span(start + at, start + at + Unseen.length(line, at));
    Finding finding = YamlFindings.control(place, line.codePointAt(at));
    (stopsYaml(line, at) ? slips : remarks).add(finding);
  }

  /** Whether a line holds a character from a place on that a YAML parser does not take. */
  private static boolean stopsYaml(String line, int from) {
    return line.codePoints().skip(line.codePointCount(0, from)).anyMatch(LineScan::stopsYaml);
  }

  private static boolean stopsYaml(int c) {
    return c != '\t'
        && (Character.isISOControl(c)
            || Character.getType(c) == Character.SURROGATE
            || c == '\uFEFF'
            || (c & 0xFFFE) == 0xFFFE
            || c == 0x2028
            || c == 0x2029);
  }

  /** What stands behind the white space and the dashes of a line. */
  private void content(String content, int at) {
    if (content.isEmpty() || "#'\"{[".indexOf(content.charAt(0)) >= 0) {
      return;
    }
    if (isReserved(content)) {
      slips.add(YamlFindings.reserved(rest(content, 0, at)));
      return;
    }
    if (isGlued(content)) {
      int colon = content.indexOf(':');
      slips.add(YamlFindings.missingSpace(file.span(at, at + colon + 1), content));
      return;
    }
    int colon = content.indexOf(": ");
    int comment = content.indexOf(" #");
    if (colon > 0 && (comment < 0 || colon < comment)) {
      value(content, colon + 1, at);
    }
  }

  /** A key whose value begins right behind the colon; nearly always a space stands there. */
  private static boolean isGlued(String content) {
    int behind = content.indexOf(':') + 1;
    return behind > 0
        && behind < content.length()
        && content.charAt(behind) != ' '
        && GLUED.matcher(content).matches();
  }

  private void value(String content, int from, int at) {
    int start = from;
    while (start < content.length() && content.charAt(start) <= ' ') {
      start++;
    }
    String value = content.substring(start);
    if (value.isEmpty() || "#'\"{[|>&*!".indexOf(value.charAt(0)) >= 0) {
      return;
    }
    if (isReserved(value)) {
      slips.add(YamlFindings.reserved(rest(content, start, at)));
      return;
    }
    int comment = value.indexOf(" #");
    String text = comment < 0 ? value : value.substring(0, comment);
    int colon = text.stripTrailing().endsWith(":") ? text.lastIndexOf(':') : text.indexOf(": ");
    if (colon >= 0) {
      int place = at + start + colon;
      slips.add(YamlFindings.colonInText(file.span(place, place + 1), rest(content, start, at)));
    }
  }

  private Span rest(String content, int from, int at) {
    return file.span(at + from, at + content.stripTrailing().length());
  }

  private static boolean isReserved(String text) {
    return "%@`".indexOf(text.charAt(0)) >= 0;
  }
}
