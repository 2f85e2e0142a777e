package dev.pellucid.finding;

/** What a finding means for the reader, the gravest first. */
public enum Severity {
  /** The feed must not be made as it is written. */
  ERROR("error"),
  /** Someone should look. */
  WARNING("warning"),
  /** Good to know. */
  NOTE("note");

  private final String word;

  Severity(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
