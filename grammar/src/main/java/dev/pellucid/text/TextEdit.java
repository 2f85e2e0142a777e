package dev.pellucid.text;

/** Put {@code replacement} where {@code span} is. */
public record TextEdit(Span span, String replacement) {
  /** The whole text with this one edit made. */
  public String applied() {
    String text = span.file().text();
    return text.substring(0, span.start()) + replacement + text.substring(span.end());
  }
}
