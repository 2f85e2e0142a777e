package dev.pellucid.engine.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * What was promised once and is no more: a line for each, with the version that took it away and
 * what comes in its place.
 */
record Retired(List<String> lines) {
  static final String BLOCK = "retired";
  private static final String UNTOLD = " | VERSION | WHAT TO USE INSTEAD";
  private static final Pattern WHOLE =
      Pattern.compile(".+ \\| [0-9]+\\.[0-9]+\\.[0-9]+ \\| .{10,}");

  Retired {
    lines = List.copyOf(lines);
  }

  static Retired read(String block) {
    return new Retired(block.lines().filter(line -> !line.equals("none")).toList());
  }

  Retired with(List<String> removed) {
    List<String> all = new ArrayList<>(lines);
    removed.forEach(one -> all.add(one + UNTOLD));
    return new Retired(all);
  }

  String text() {
    return lines.isEmpty() ? "none\n" : String.join("\n", lines) + "\n";
  }

  List<String> names() {
    return lines.stream().map(line -> line.replaceFirst(" \\|.*", "")).toList();
  }

  /** Lines that do not say since when, or what there is instead. */
  List<String> untold() {
    return lines.stream()
        .filter(line -> line.endsWith(UNTOLD) || !WHOLE.matcher(line).matches())
        .toList();
  }
}
