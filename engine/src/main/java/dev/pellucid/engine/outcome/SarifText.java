package dev.pellucid.engine.outcome;

/**
 * Words of a finding as plain text of a SARIF message: words and nothing else. Braces would be read
 * as a gap to fill (section 3.11.5 of the standard), and brackets before a parenthesis as a link
 * (section 3.11.6).
 */
final class SarifText {
  private SarifText() {}

  /** Words that are no link. */
  static String of(String words) {
    return words.contains("](") ? escaped(braced(words)) : braced(words);
  }

  /** Words that lead to another place of the result. */
  static String link(String words, int id) {
    return "[" + escaped(braced(words)) + "](" + id + ")";
  }

  private static String braced(String words) {
    return words.replace("{", "{{").replace("}", "}}");
  }

  private static String escaped(String words) {
    return words.replace("\\", "\\\\").replace("[", "\\[").replace("]", "\\]");
  }
}
