package dev.pellucid.finding;

/** The stable name of a rule or slip, in kebab case: {@code below-minimum}. */
public record Code(String text) implements Comparable<Code> {
  public Code {
    if (!isKebabCase(text)) {
      throw new IllegalArgumentException("not a code: " + text);
    }
  }

  /**
   * Words of small letters and digits with a hyphen between two, the first begins with a letter.
   */
  private static boolean isKebabCase(String text) {
    char before = '-';
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean letter = c >= 'a' && c <= 'z';
      boolean later = (c >= '0' && c <= '9' && i > 0) || (c == '-' && before != '-');
      if (!letter && !later) {
        return false;
      }
      before = c;
    }
    return before != '-';
  }

  @Override
  public int compareTo(Code other) {
    return text.compareTo(other.text);
  }

  @Override
  public String toString() {
    return text;
  }
}
