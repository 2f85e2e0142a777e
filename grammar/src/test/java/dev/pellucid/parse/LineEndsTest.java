package dev.pellucid.parse;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.pellucid.text.SourceFile;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How a line ends, and a byte order mark, change nothing of what is read. */
class LineEndsTest {
  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r", "\n\n", "  # a note\n", "\t\u00A0\n   # a note\n"})
  void theTreeIsTheSame(String end) {
    for (SourceFile file : GoodFiles.all()) {
      for (String mark : List.of("", "\uFEFF")) {
        SourceFile other = new SourceFile(file.path(), mark + file.text().replace("\n", end));
        Parsed parsed = FeedParser.parse(other);
        assertEquals(List.of(), codesBesideTabs(parsed));
        assertEquals(said(FeedParser.parse(file)), said(parsed));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {" ", "\t", "\u00A0", "\u202F", " \t \u2009"})
  void anyWhiteSpaceWillDo(String blank) {
    for (SourceFile file : GoodFiles.all()) {
      SourceFile other = new SourceFile(file.path(), outsideQuotes(file.text(), blank));
      Parsed parsed = FeedParser.parse(other);
      assertEquals(List.of(), codesBesideTabs(parsed));
      assertEquals(said(FeedParser.parse(file)), said(parsed));
    }
  }

  private static List<String> codesBesideTabs(Parsed parsed) {
    return parsed.findings().stream()
        .map(finding -> finding.code().text())
        .filter(code -> !code.equals("tab"))
        .toList();
  }

  private static String outsideQuotes(String text, String blank) {
    StringBuilder out = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      quoted ^= c == '"';
      out.append(c == ' ' && !quoted ? blank : String.valueOf(c));
    }
    return out.toString();
  }

  private static List<String> said(Parsed parsed) {
    return List.copyOf(TreeText.byLine(parsed.file()).values());
  }
}
