package dev.pellucid.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing that a person wrote calls anybody, links anywhere or marks anything. */
class MarkdownTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '¦',
      value = {
        "ask @here, @team/feed ¦ ask @&#8203;here, @&#8203;team/feed",
        "a@b.example ¦ a@&#8203;b.example",
        "see #12 and mill/feed#3 ¦ see \\#&#8203;12 and mill/feed\\#&#8203;3",
        "merge !7 ¦ merge !&#8203;7",
        "GH-1 and gh-22 ¦ GH&#8203;-1 and gh&#8203;-22",
        "http://a.example/x ¦ http:&#8203;//a.example/x",
        "HTTPS://a.example ¦ HTTPS:&#8203;//a.example",
        "ftp://a and x+y://z ¦ ftp:&#8203;//a and x+y:&#8203;//z",
        "www.a.example WWW.b ¦ www&#8203;.a.example WWW&#8203;.b",
        "a :smile: b :+1: ¦ a :&#8203;smile: b :&#8203;+1:",
        "fixes deadbee and 0123456789abcdef ¦ fixes d&#8203;eadbee and 0&#8203;123456789abcdef",
        "<b> | *x* [y](z) `q` _u_ ~~s~~ ¦ \\<b> \\| \\*x\\* \\[y\\](z) \\`q\\` \\_u\\_ \\~\\~s\\~\\~",
        "&#64;here & co ¦ &amp;\\#&#8203;64;here &amp; co",
        "$x$ is a sum, $12 a link ¦ \\$x\\$ is a sum, \\$&#8203;12 a link",
        "see %12, %next, %\"v 2\" ¦ see %&#8203;12, %&#8203;next, %&#8203;\"v 2\"",
        "see &4 and mill&5 ¦ see &amp;&#8203;4 and mill&amp;&#8203;5",
        "- a list ¦ \\- a list",
        "+ a list ¦ \\+ a list",
        "12. a list ¦ 12\\. a list",
        "> a quote -> b ¦ \\> a quote -> b",
        "# a heading ¦ \\# a heading",
        "\\@x ¦ \\\\@&#8203;x",
      })
  void isWordsOnly(String written, String escaped) {
    assertEquals(escaped, Markdown.of(written), written);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "CG-36 \"Catfish grower, 4 mm\"",
        "cost -0.0047 EUR/kg (1234567.50)",
        "lysine : crude-protein min 5.1 %",
        "at 12:30",
        "recipes/catfish/CG-36.recipe:12",
        "no @ alone, no # alone, well done!",
        "facade and decade",
        "-0.5 %",
        "12 %, (5%), 3 % to 4%",
        "Корм для карпа 4 мм"
      })
  void plainWordsStayAsTheyAre(String words) {
    assertEquals(words.replace("#", "\\#"), Markdown.of(words));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a\nb", "a\r\n# b", "a\u2028b", "a\u202Eb", "a\u0000b"})
  void oneLineAndNothingUnseen(String words) {
    String line = Markdown.of(words);
    assertEquals(-1, Unseen.find(line, 0));
    assertEquals(1, line.lines().count());
  }
}
