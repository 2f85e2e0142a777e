package dev.pellucid.slip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.finding.Finding;
import dev.pellucid.parse.FeedParser;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.TextEdit;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How far a share may move, in other words than the language has. */
class FreedomSlipsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "within 2 to 10 or none %|none-form|within 2 to 10 % or none",
        "within 2 to 10 % or nothing|none-form|within 2 to 10 % or none",
        "within 2 to 10 % or 0|none-form|within 2 to 10 % or none",
        "within 2 to 10 % or 0 %|none-form|within 2 to 10 % or none",
        "within 2 to 10 % or zero|none-form|within 2 to 10 % or none",
        "within 2 to 10 % or zero  step 0.5 %|none-form|within 2 to 10 % or none  step 0.5 %",
        "none or 2 to 10 %|none-form|within 2 to 10 % or none",
        "within none or 2 to 10 %|none-form|within 2 to 10 % or none",
        "within 0 or 2 to 10 %|none-form|within 2 to 10 % or none",
        "within 0 % or 2 to 10 %|none-form|within 2 to 10 % or none",
        "within 2 to 10 % or|none-form|within 2 to 10 % or none",
        "within 2 to 10 % or  step 0.5 %|none-form|within 2 to 10 % or none  step 0.5 %",
        "within 2 to 10 % none|none-form|within 2 to 10 % or none",
        "within 2 to 10 %, or none|none-form|within 2 to 10 % or none",
        "within 2 to 10 % ore none|none-form|within 2 to 10 % or none",
        "within 2 to 10 % or non|none-form|within 2 to 10 % or none",
        "within 2 to 10 % optional|none-form|within 2 to 10 % or none",
        "within 2 to 10 %  step 0.5 % or none|none-form|within 2 to 10 % or none  step 0.5 %",
        "step 0.5 % or none  within 2 to 10 %|none-form|step 0.5 % within 2 to 10 % or none",
        "within 2 to 10 or none|unit-missing|within 2 to 10 % or none",
        "within 2 10 % or none|to-missing|within 2 to 10 % or none",
        "within 2-10 % or none|range-dash|within 2 to 10 % or none",
        "within 2 % to 10 % or none|range-units|within 2 to 10 % or none",
        "steps 0.5 %|step-form|step 0.5 %",
        "step of 0.5 %|step-form|step 0.5 %",
        "in steps of 0.5 %|step-form|step 0.5 %",
        "in steps of 5 g/kg|step-form|step 5 g/kg",
        "in steps of 0.5|step-form|step 0.5 %",
        "multiples of 0.5 %|step-form|step 0.5 %",
        "0.5 % step|step-form|step 0.5 %",
        "step 0.5|unit-missing|step 0.5 %",
        "step 0.5  within 2 to 10 %|unit-missing|step 0.5 %  within 2 to 10 %",
        "setp 0.5 %|phrase-unknown|step 0.5 %",
        "step 0.5%|unit-glued|step 0.5 %",
      })
  void areReadAsWhatIsMeant(String tail, String code, String meant) {
    Finding finding = only("maize 5.00 %  " + tail);
    assertEquals(code, finding.code().text(), finding.headline());
    assertEquals(1, finding.edits().size(), finding.headline());
    TextEdit edit = finding.edits().get(0);
    String text = finding.span().file().text();
    String fixed =
        text.substring(0, edit.span().start())
            + edit.replacement()
            + text.substring(edit.span().end());
    assertEquals("recipe A-1\nmix\n  maize 5.00 %  " + meant + "\n  wheat rest\n", fixed);
    assertEquals(
        List.of(), FeedParser.parse(new SourceFile("A-1.recipe", fixed)).findings(), fixed);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "maize 5 % or none|or none has no range before it",
        "maize rest or none|or none has no range before it",
        "maize 5 % within 2 to 10 % or 12 %|or is followed by none, and by nothing else",
        "maize 5 % within 10 % or none|within takes two ends",
        "maize 5 % within 2 to 10 % or none or none|the line is complete before this",
        "maize 5 % step 0.5 % to 1 %|a step is one size, and no range",
        "maize 5 % step 0.5 to 1 %|a step is one size, and no range",
        "maize 5 % step|the phrase that begins with step is not whole",
        "maize 5 % step 0 %|a step of 0 % is no step",
        "maize 5 % step 0.5 % step 1 %|step stands twice on this line",
        "maize 5 % within 2 to 10 % within 3 to 4 % or none|within stands twice on this line",
        "maize 5 % step 5 kg|'5 kg is a mass, but a share belongs here'",
        "maize 5 % step 110 %|'110 % cannot be, a share is from 0 to 100 %'",
        "maize step 0.5 %|maize has no figure",
        "maize or none|maize has no figure",
        "fish bone meal 5 %|'a name is one word, fish bone meal has a space in it'",
        "fish step meal 5 %|'a name is one word, fish step meal has a space in it'",
      })
  void thatCanBeMeantInSeveralWaysAreSaidAndLeftToAPerson(String line, String headline) {
    Finding finding = only(line);
    assertEquals(headline, finding.headline());
    assertTrue(!finding.helps().isEmpty(), headline);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "none 5 % within 2 to 10 % or none",
        "or 5 % step 1 % within 2 to 10 % or none",
        "step 5 % step 5 %",
        "none rest",
        "rework step 5 % step 1 %",
        "within 5 % within 2 to 10 % or none step 0.5 %",
      })
  void namesMayBeSpeltLikeTheWords(String line) {
    String text = "recipe A-1\nmix\n  " + line + "\n";
    assertEquals(List.of(), FeedParser.parse(new SourceFile("A-1.recipe", text)).findings());
  }

  private static Finding only(String line) {
    String text = "recipe A-1\nmix\n  " + line + "\n  wheat rest\n";
    List<Finding> found = FeedParser.parse(new SourceFile("A-1.recipe", text)).findings();
    assertEquals(1, found.size(), () -> line + " " + found);
    return found.get(0);
  }
}
