package dev.pellucid.finding;

/** The stable name of a rule or slip, in kebab case: {@code below-minimum}. */
public record Code(String text) implements Comparable<Code> {
  public Code {
    if (!text.matches("[a-z][a-z0-9]*(-[a-z0-9]+)*")) {
      throw new IllegalArgumentException("not a code: " + text);
    }
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
