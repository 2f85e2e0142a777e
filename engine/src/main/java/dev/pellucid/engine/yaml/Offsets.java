package dev.pellucid.engine.yaml;

import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;

/** Turns places that count code points, as the YAML library does, into places in UTF-16 units. */
final class Offsets {
  private final SourceFile file;
  private final int[] unitOfPoint;

  Offsets(SourceFile file) {
    this.file = file;
    String text = file.text();
    int points = text.codePointCount(0, text.length());
    unitOfPoint = points == text.length() ? new int[0] : units(text, points);
  }

  /** The one character at a place, or nothing at the end of the text. */
  Span at(long point) {
    int start = unit(point);
    int end = start == file.text().length() ? start : file.text().offsetByCodePoints(start, 1);
    return file.span(start, end);
  }

  int unit(long point) {
    int bounded = (int) Math.max(0, Math.min(point, file.text().length()));
    if (unitOfPoint.length == 0) {
      return bounded;
    }
    return unitOfPoint[Math.min(bounded, unitOfPoint.length - 1)];
  }

  private static int[] units(String text, int points) {
    int[] units = new int[points + 1];
    int unit = 0;
    for (int point = 0; point < points; point++) {
      units[point] = unit;
      unit = text.offsetByCodePoints(unit, 1);
    }
    units[points] = unit;
    return units;
  }
}
