package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Code;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * The words of a rule from its page.
 *
 * @param page as it is, with its examples, in Markdown
 * @param paragraphs what stands between its name and its examples, each in one line
 */
record RuleWords(String page, List<String> paragraphs) {
  private static final String PAGES = "/dev/pellucid/rules/";
  private static final String EXAMPLES = "## ";
  private static final String EXAMPLE = "```";

  RuleWords {
    paragraphs = List.copyOf(paragraphs);
  }

  /** Every code has a page. */
  static RuleWords of(Code code) {
    String name = PAGES + code + ".md";
    try (InputStream page = RuleWords.class.getResourceAsStream(name)) {
      if (page == null) {
        throw new IllegalStateException("no page " + name);
      }
      return read(new String(page.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  static RuleWords read(String page) {
    int examples = page.indexOf("\n" + EXAMPLES);
    String prose = examples < 0 ? page : page.substring(0, examples);
    List<String> paragraphs = new ArrayList<>();
    for (String block : prose.split("\n\\s*\n", -1)) {
      String line = block.strip().replaceAll("\\s*\n\\s*", " ");
      if (!line.isEmpty() && !line.startsWith("# ")) {
        paragraphs.add(line);
      }
    }
    return new RuleWords(page, paragraphs);
  }

  /** The first sentence. */
  String inShort() {
    String first = paragraphs.isEmpty() ? "" : paragraphs.get(0);
    int end = first.indexOf(". ");
    return end < 0 ? first : first.substring(0, end + 1);
  }

  /**
   * The page for a reader who sees nothing but it: before each example stands in which file it is,
   * where the page has that beside the marks of the example, with what its tests need to know.
   */
  String markdown() {
    StringBuilder out = new StringBuilder();
    for (String line : page.split("\n", -1)) {
      boolean names = line.startsWith(EXAMPLE) && line.length() > EXAMPLE.length();
      out.append(names ? named(line.substring(EXAMPLE.length())) : line).append('\n');
    }
    return out.substring(0, out.length() - 1);
  }

  private static String named(String told) {
    String[] words = told.split(" ", 2);
    String how = words.length > 1 ? words[1] : "";
    return switch (how) {
      case "gone" -> "There is no `" + words[0] + "`:\n\n" + EXAMPLE;
      case "part" -> "In `" + words[0] + "`:\n\n" + EXAMPLE;
      default -> "`" + words[0] + "`:\n\n" + EXAMPLE;
    };
  }

  /** All but the examples. */
  String text() {
    return String.join("\n\n", paragraphs);
  }
}
