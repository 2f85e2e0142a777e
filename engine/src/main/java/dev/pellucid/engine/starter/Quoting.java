package dev.pellucid.engine.starter;

import dev.pellucid.text.Markdown;

/** Words of a person in a file of some kind, where they are words and nothing else. */
final class Quoting {
  private Quoting() {}

  /** As the file takes it; where its kind is not known, as it is. */
  static String in(String path, String words) {
    if (path.endsWith(".yaml") || path.endsWith(".yml")) {
      return '"' + words.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
    if (path.endsWith(".xml")) {
      return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
    return path.endsWith(".md") ? Markdown.of(words) : words;
  }
}
