package dev.pellucid.text;

/** A stretch of a text, from {@code start} to before {@code end}, in UTF-16 units. */
public record Span(SourceFile file, int start, int end) implements Comparable<Span> {
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

  /** By path, start and end. */
  @Override
  public int compareTo(Span other) {
    int byPath = file.path().compareTo(other.file.path());
    if (byPath != 0) {
      return byPath;
    }
    int byStart = Integer.compare(start, other.start);
    return byStart != 0 ? byStart : Integer.compare(end, other.end);
  }

  @Override
  public String toString() {
    return place();
  }
}
