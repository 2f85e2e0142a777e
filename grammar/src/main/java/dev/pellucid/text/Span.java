package dev.pellucid.text;

import java.util.Comparator;

/** A stretch of a text, from {@code start} to before {@code end}, in UTF-16 units. */
public record Span(SourceFile file, int start, int end) implements Comparable<Span> {
  private static final Comparator<Span> ORDER =
      Comparator.comparing((Span span) -> span.file().path())
          .thenComparingInt(Span::start)
          .thenComparingInt(Span::end);

  public Span {
    if (start < 0 || end < start || end > file.text().length()) {
      throw new IllegalArgumentException(
          "span " + start + ".." + end + " does not lie in " + file.path());
    }
  }

  public Position from() {
    return file.position(start);
  }

  public Position to() {
    return file.position(end);
  }

  public String text() {
    return file.text().substring(start, end);
  }

  /** The stretch from the start of this one to the end of a later one in the same file. */
  public Span through(Span later) {
    return new Span(file, start, later.end);
  }

  /** {@code path:line:column}, as editors and terminals make it a link. */
  public String place() {
    return file.path() + ":" + from();
  }

  @Override
  public int compareTo(Span other) {
    return ORDER.compare(this, other);
  }

  @Override
  public String toString() {
    return place();
  }
}
