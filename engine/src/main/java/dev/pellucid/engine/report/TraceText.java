package dev.pellucid.engine.report;

import dev.pellucid.engine.made.Trace;
import java.util.List;
import java.util.stream.IntStream;

/** A trace as a table in plain text, one line for each lot in each batch. */
public final class TraceText {
  private static final List<String> HEADS =
      List.of("Lot", "Ingredient", "Batch", "Day", "Through", "Batch is");

  private TraceText() {}

  public static String of(Trace trace) {
    if (trace.steps().isEmpty()) {
      return "no batch record names such a lot or batch\n";
    }
    List<List<String>> rows =
        trace.steps().stream()
            .map(
                step ->
                    List.of(
                        step.lot(),
                        step.ingredient(),
                        step.batch(),
                        step.day().toString(),
                        String.join(" > ", step.through()),
                        step.became()))
            .toList();
    StringBuilder text = new StringBuilder();
    int[] widths =
        IntStream.range(0, HEADS.size())
            .map(
                column ->
                    Math.max(
                        HEADS.get(column).length(),
                        rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0)))
            .toArray();
    line(text, HEADS, widths);
    rows.forEach(row -> line(text, row, widths));
    return text.toString();
  }

  private static void line(StringBuilder text, List<String> row, int[] widths) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < row.size(); i++) {
      line.append(row.get(i)).append(" ".repeat(widths[i] - row.get(i).length() + 2));
    }
    text.append(line.toString().stripTrailing()).append('\n');
  }
}
