package dev.pellucid.engine.arithmetic;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * {@code docs/arithmetic.md}, read for its examples. An example is a table whose head is {@code
 * Example `id`}; a row in bold is what comes out, any other is what it begins with.
 */
final class ArithmeticPage {
  static final Path PAGE = Path.of("docs", "arithmetic.md");

  private static final Pattern HEAD = Pattern.compile("\\| Example `([a-z0-9-]+)` \\| \\|");
  private static final Pattern ROW = Pattern.compile("\\| (.+?) \\| (.+?) \\|");
  private static final Pattern BOLD = Pattern.compile("\\*\\*(.+)\\*\\*");

  private ArithmeticPage() {}

  /**
   * What stands below a heading of the third level.
   *
   * @param formulas lines that are set as they are
   */
  record Section(String title, List<String> lines, List<String> formulas, List<Example> examples) {}

  static List<Section> sections() throws IOException {
    List<Section> sections = new ArrayList<>();
    String title = "";
    List<String> lines = new ArrayList<>();
    for (String line : Files.readAllLines(PAGE)) {
      if (line.startsWith("#")) {
        add(sections, title, lines);
        title = line.startsWith("### ") ? line.substring(4) : "";
        lines = new ArrayList<>();
      } else {
        lines.add(line);
      }
    }
    add(sections, title, lines);
    return sections;
  }

  private static void add(List<Section> sections, String title, List<String> lines) {
    List<Example> examples = examples(lines);
    if (!title.isEmpty()) {
      sections.add(
          new Section(
              title, lines, lines.stream().filter(it -> it.startsWith("    ")).toList(), examples));
    } else if (!examples.isEmpty()) {
      throw new AssertionError("an example below no heading: " + examples);
    }
  }

  private static List<Example> examples(List<String> lines) {
    List<Example> examples = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Matcher head = HEAD.matcher(lines.get(i));
      if (head.matches()) {
        examples.add(example(head.group(1), lines.subList(i + 2, lines.size())));
      }
    }
    return examples;
  }

  private static Example example(String id, List<String> lines) {
    Map<String, Figure> given = new LinkedHashMap<>();
    Map<String, Figure> gives = new LinkedHashMap<>();
    for (String line : lines) {
      Matcher row = ROW.matcher(line);
      if (!row.matches()) {
        break;
      }
      Matcher bold = BOLD.matcher(row.group(1));
      Figure figure = new Figure(row.group(2).replace("**", ""));
      Figure before =
          bold.matches()
              ? gives.putIfAbsent(bold.group(1), figure)
              : given.putIfAbsent(row.group(1), figure);
      if (before != null) {
        throw new AssertionError(id + " tells twice: " + line);
      }
    }
    return new Example(id, given, gives);
  }
}
