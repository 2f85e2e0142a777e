package dev.pellucid.engine.yaml;

import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Slips that can be named from a line alone, found before YAML reads it: a YAML parser puts them in
 * the wrong place, or reads something else than what stands there.
 */
final class LineScan {
  private static final Pattern HEAD = Pattern.compile("^([ \\t]*)((?:- +)*)(.*)$", Pattern.DOTALL);
  private static final Pattern GLUED =
      Pattern.compile("^(?:[A-Za-z][A-Za-z0-9_-]*|[0-9.]+ ?(?:°C|C|℃)):[^\\s/].*", Pattern.DOTALL);
  private static final Pattern OPENS_BLOCK =
      Pattern.compile("(?:^|: +|- +)[|>][+-]?[0-9]?[+-]? *$");

  private final SourceFile file;
  private final List<Finding> findings = new ArrayList<>();
  private int blockIndent = -1;

  private LineScan(SourceFile file) {
    this.file = file;
  }

  static List<Finding> of(SourceFile file) {
    LineScan scan = new LineScan(file);
    scan.lines();
    return scan.findings;
  }

  private void lines() {
    String text = file.text();
    int start = text.startsWith("\uFEFF") ? 1 : 0;
    while (start < text.length()) {
      int end = lineEnd(text, start);
      line(text.substring(start, end), start);
      start = end;
      while (start < text.length() && start < end + 1) {
        start += text.startsWith("\r\n", start) ? 2 : 1;
      }
    }
  }

  private static int lineEnd(String text, int start) {
    int end = start;
    while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
      end++;
    }
    return end;
  }

  private void line(String line, int start) {
    controls(line, start);
    Matcher head = HEAD.matcher(line);
    if (line.isBlank() || !head.matches()) {
      return;
    }
    int tab = head.group(1).indexOf('\t');
    int indent = tab < 0 ? head.end(1) : tab;
    if (blockIndent >= 0 && indent > blockIndent) {
      return;
    }
    if (tab >= 0) {
      findings.add(YamlFindings.tab(file.span(start, start + head.end(1))));
      return;
    }
    blockIndent = OPENS_BLOCK.matcher(line).find() ? indent : -1;
    content(head.group(3), start + head.start(3));
  }

  private void controls(String line, int start) {
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (Character.isISOControl(c) && c != '\t' || isLoneSurrogate(line, i) || c > 0xFFFD) {
        findings.add(YamlFindings.control(file.span(start + i, start + i + 1)));
        return;
      }
    }
  }

  private static boolean isLoneSurrogate(String line, int i) {
    char c = line.charAt(i);
    if (Character.isHighSurrogate(c)) {
      return i + 1 == line.length() || !Character.isLowSurrogate(line.charAt(i + 1));
    }
    return Character.isLowSurrogate(c)
        && (i == 0 || !Character.isHighSurrogate(line.charAt(i - 1)));
  }

  /** What stands behind the white space and the dashes of a line. */
  private void content(String content, int at) {
    if (content.isEmpty() || "#'\"{[".indexOf(content.charAt(0)) >= 0) {
      return;
    }
    if (isReserved(content)) {
      findings.add(YamlFindings.reserved(rest(content, 0, at)));
      return;
    }
    if (GLUED.matcher(content).matches()) {
      int colon = content.indexOf(':');
      findings.add(YamlFindings.missingSpace(file.span(at, at + colon + 1), content));
      return;
    }
    int colon = content.indexOf(": ");
    int comment = content.indexOf(" #");
    if (colon > 0 && (comment < 0 || colon < comment)) {
      value(content, colon + 1, at);
    }
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
      findings.add(YamlFindings.reserved(rest(content, start, at)));
      return;
    }
    int comment = value.indexOf(" #");
    String text = comment < 0 ? value : value.substring(0, comment);
    int colon = text.stripTrailing().endsWith(":") ? text.lastIndexOf(':') : text.indexOf(": ");
    if (colon >= 0) {
      int place = at + start + colon;
      findings.add(YamlFindings.colonInText(file.span(place, place + 1), rest(content, start, at)));
    }
  }

  private Span rest(String content, int from, int at) {
    return file.span(at + from, at + content.stripTrailing().length());
  }

  private static boolean isReserved(String text) {
    return "%@`".indexOf(text.charAt(0)) >= 0;
  }
}
