package dev.pellucid.text;

/** A place as people name it: line and column, both from 1; a column counts UTF-16 units. */
public record Position(int line, int column) {
  public Position {
    if (line < 1 || column < 1) {
      throw new IllegalArgumentException("lines and columns start at 1");
    }
  }

  @Override
  public String toString() {
    return line + ":" + column;
  }
}
