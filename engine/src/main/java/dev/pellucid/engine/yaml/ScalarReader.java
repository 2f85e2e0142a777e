package dev.pellucid.engine.yaml;

import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Span;
import dev.pellucid.text.Unseen;
import java.util.List;
import java.util.Optional;

/**
 * One key or value: its text, and what YAML would have done to it in silence. What cannot be seen
 * is a finding, and in the text made to be seen, so that nothing that prints it has to think of it.
 */
final class ScalarReader {
  private ScalarReader() {}

  /**
   * @param cooked the text as YAML reads it, quotes and escapes resolved
   */
  static Scalar read(String cooked, Span span, List<Finding> findings) {
    Scalar scalar = readKey(cooked, span, findings);
    if (scalar.plain() && !scalar.isEmpty()) {
      refuseCut(span, findings);
    }
    return scalar;
  }

  static Scalar readKey(String cooked, Span span, List<Finding> findings) {
    String raw = span.text();
    if (raw.isEmpty()) {
      return new Scalar("", true, span);
    }
    refuseProperties(raw, span, findings);
    char first = raw.charAt(0);
    if (first == '|' || first == '>') {
      return new Scalar(Unseen.shown(cooked.strip()), false, span);
    }
    if (raw.indexOf('\n') >= 0 || raw.indexOf('\r') >= 0) {
      findings.add(YamlFindings.overLines(span));
    }
    if (first == '"') {
      Optional<Finding> refused = Escapes.refuse(span);
      if (refused.isPresent()) {
        findings.add(refused.get());
      }
    }
    boolean quoted = first == '"' || first == '\'';
    String text = quoted ? Unseen.shownOnOneLine(cooked) : Unseen.shown(raw);
    return new Scalar(text, !quoted && text.equals(raw), span);
  }

  /** Anchors, aliases, merges and tags stand before what they are for. */
  static void refuseProperties(Span span, List<Finding> findings) {
    refuseProperties(span.text(), span, findings);
  }

  private static void refuseProperties(String raw, Span span, List<Finding> findings) {
    if (raw.startsWith("&") || raw.startsWith("*") || raw.equals("<<")) {
      findings.add(YamlFindings.alias(span));
    } else if (raw.startsWith("!")) {
      findings.add(YamlFindings.tag(span));
    }
  }

  /** A comment behind text must look like one, else it may be text that YAML cuts off. */
  private static void refuseCut(Span span, List<Finding> findings) {
    String text = span.file().text();
    int hash = span.end();
    while (hash < text.length() && isBlank(text.charAt(hash))) {
      hash++;
    }
    if (hash == text.length() || text.charAt(hash) != '#') {
      return;
    }
    boolean apart = hash - span.end() >= 2;
    boolean spaced = hash + 1 == text.length() || text.charAt(hash + 1) <= ' ';
    if (!apart || !spaced) {
      findings.add(YamlFindings.hashInText(span.file().span(hash, hash + 1), span));
    }
  }

  private static boolean isBlank(char c) {
    return c == ' ' || c == '\t';
  }
}
