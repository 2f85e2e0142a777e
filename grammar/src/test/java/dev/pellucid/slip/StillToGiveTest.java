package dev.pellucid.slip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.finding.Finding;
import dev.pellucid.parse.FeedParser;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.ToBeGiven;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A mark in place of a figure is one finding wherever it stands, and a lone sign is none. */
class StillToGiveTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "|batch  ____ kg  weighed|batch",
        "|fish  ____ to ____ g|fish",
        "mix|maize  ____ %  within 10 to 20 %|maize",
        "mix|maize  20 %  within ____ to ____ %|maize 20 % within",
        "coat|fish-oil  ? %|fish-oil",
        "overage|salt  ____ %  for handling|salt",
        "limits|crude-protein  min ____ %|crude-protein min",
        "limits|lysine : crude-protein  min ?|lysine : crude-protein min",
        "process|dry   time  ____ to ____ h|dry time",
        "process|grind  maize screen  ____ mm|grind maize screen",
        "label|crude-protein  __ %|crude-protein"
      })
  void isToldOnce(String section, String line, String what) {
    String text = "recipe A-1\n" + (section == null ? "" : section + "\n") + "  " + line + "\n";
    List<Finding> found =
        FeedParser.parse(new SourceFile("A-1.recipe", text)).findings().stream()
            .filter(one -> one.code().equals(StillToGive.CODE))
            .toList();
    assertEquals(
        List.of(what + " is still to be given"), found.stream().map(Finding::headline).toList());
    assertTrue(ToBeGiven.isMark(found.get(0).span().text()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"____ %", "__", "____ to ____ g", "below ____ mg/kg", "? %", "??"})
  void aTextThatIsNone(String text) {
    assertTrue(ToBeGiven.isIn(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"12 %", "", "_", "a_b", "dry to the hand ?", "FM__1", "who knows?"})
  void aTextThatIsOne(String text) {
    assertFalse(ToBeGiven.isIn(text));
  }
}
