package dev.pellucid.engine.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The record of a batch that is planned: its size, and the lots that are put aside for it. */
public final class BatchForm {
  private BatchForm() {}

  /**
   * Its text.
   *
   * @param size with its unit
   * @param lots {@code lot: } or {@code bin: } and what it is called, by the line that they are for
   * @param without lines of which the store has no lot
   */
  public static String text(String size, Map<String, List<String>> lots, List<String> without) {
    List<String> text = new ArrayList<>();
    text.add("# Planned. When it is made, write the weight into each line, and what was read.");
    text.add("size: " + size);
    if (!lots.isEmpty()) {
      text.add("");
      text.add("weighed:");
    }
    lots.forEach(
        (line, numbers) ->
            numbers.forEach(lot -> text.add("  - {line: " + line + ", " + lot + "}")));
    if (!without.isEmpty()) {
      text.add("# The store tells no lot of " + String.join(", ", without) + ".");
    }
    return String.join("\n", text) + "\n";
  }
}
