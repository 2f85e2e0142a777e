package dev.pellucid.slip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.finding.Finding;
import dev.pellucid.parse.FeedParser;
import dev.pellucid.show.FindingText;
import dev.pellucid.text.SourceFile;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A number that is none is told by name and at the number, wherever one may stand. */
class NumberSlipsTest {
  /** A line for each place of a figure, and what stands before and behind it. */
  private static final Map<String, List<String>> PLACES =
      Map.of(
          "A-1.recipe",
          List.of(
              "recipe A-1\n  batch @ kg weighed\nmix\n  wheat rest\n",
              "recipe A-1\n  fish 50 to @ g\nmix\n  wheat rest\n",
              "recipe A-1\nmix\n  maize @ %\n  wheat rest\n",
              "recipe A-1\nmix\n  maize 5 % within 4 to @ %\n  wheat rest\n",
              "recipe A-1\nmix\n  wheat rest\nlimits\n  crude-protein min @ %\n",
              "recipe A-1\nmix\n  wheat rest\nlimits\n  calcium : phosphorus max @\n",
              "recipe A-1\nmix\n  wheat rest\nlimits\n  moisture max 9 % min @ %\n",
              "recipe A-1\nmix\n  wheat rest\nprocess\n  blend time @ min\n",
              "recipe A-1\nmix\n  wheat rest\nprocess\n  dry moisture 9 % accept @ to 10 %\n",
              "recipe A-1\nmix\n  wheat rest\noverage\n  wheat @ % for handling\n",
              "recipe A-1\nmix\n  wheat rest\nlabel\n  crude-protein @ %\n"),
          "A-1.premix",
          List.of(
              "premix A-1\n  dose @ g/kg\nsupply\n  zinc 5 mg/kg from salt\ncarrier\n  bran rest\n",
              "premix A-1\n  dose 1 %\nsupply\n  zinc @ mg/kg from salt\ncarrier\n  bran rest\n"),
          "a.limits",
          List.of("profile a\n  kind law\nlimits\n  zinc max @ mg/kg at 12 % moisture\n"));

  @ParameterizedTest
  @CsvSource({
    "1e400, number-exponent",
    "1E-400, number-exponent",
    "1e3, number-exponent",
    "2.5e+3, number-exponent",
    "0x10, number-hexadecimal",
    "0XfF, number-hexadecimal",
    "NaN, number-not-finite",
    "Infinity, number-not-finite",
    "-Infinity, number-not-finite",
    "-inf, number-not-finite",
    "∞, number-not-finite",
    "1:30, number-colon",
    "1:30:00, number-colon",
    "1_000, number-grouped",
    "10_00.5, number-grouped",
    "１２, number-digits",
    "１２．５０, number-digits",
    "١٢٫٥, number-digits",
    "۳۴, number-digits",
    "१२, number-digits",
    "1２, number-digits"
  })
  void isToldByNameAtTheNumber(String number, String code) {
    PLACES.forEach(
        (name, texts) ->
            texts.forEach(
                text -> {
                  Finding finding = only(name, text.replace("@", number));
                  assertEquals(code, finding.code().text(), text);
                  assertEquals(number, finding.span().text(), text);
                }));
  }

  @ParameterizedTest
  @CsvSource({
    "1e3, 1000",
    "2.5e-1, 0.25",
    "1_000, 1000",
    "12_34.5, 1234.5",
    "１２, 12",
    "１２．５０, 12.50",
    "١٢٫٥, 12.5",
    "۳۴, 34",
    "१२, 12",
    "1２, 12"
  })
  void whatIsCertainIsOffered(String number, String fixed) {
    String text = "recipe A-1\nmix\n  maize @ %\n  wheat rest\n";
    Finding finding = only("A-1.recipe", text.replace("@", number));
    assertEquals(1, finding.edits().size());
    assertEquals(text.replace("@", fixed), finding.edits().get(0).applied());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1e400", "1e13", "0x10", "NaN", "∞", "1:30", "１．２．３", "１２３４５６７８９０１２３"})
  void whatIsNotIsNot(String number) {
    Finding finding =
        only("A-1.recipe", "recipe A-1\nmix\n  maize " + number + " %\n  wheat rest\n");
    assertTrue(finding.edits().isEmpty(), FindingText.of(finding));
    assertEquals(1, finding.helps().size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"１２％", "12％ ", "12٪", "１２ %", "١٢ ٪"})
  void aPercentSignOfAnotherKeyboardIsMended(String amount) {
    Finding finding = only("A-1.recipe", "recipe A-1\nmix\n  maize " + amount + "\n  wheat rest\n");
    assertEquals(1, finding.edits().size(), FindingText.of(finding));
  }

  @Test
  void namesMayBeSpeltSo() {
    for (String name : List.of("nan", "inf", "infinity", "e400", "x10")) {
      String text =
          "recipe A-1\nmix\n  "
              + name
              + " 40 %\n  wheat rest\nlimits\n  inclusion "
              + name
              + " max 50 %\n";
      assertEquals(List.of(), FeedParser.parse(new SourceFile("A-1.recipe", text)).findings());
    }
    assertEquals(
        "number-not-finite",
        only("A-1.recipe", "recipe A-1\nmix\n  nan nan %\n  wheat rest\n").code().text());
    assertEquals(
        "unit-unknown",
        only("A-1.recipe", "recipe A-1\nmix\n  inf 40 stone\n  wheat rest\n").code().text());
  }

  private static Finding only(String name, String text) {
    List<Finding> findings = FeedParser.parse(new SourceFile(name, text)).findings();
    assertEquals(1, findings.size(), () -> text + "\n" + FindingText.of(findings));
    return findings.get(0);
  }
}
