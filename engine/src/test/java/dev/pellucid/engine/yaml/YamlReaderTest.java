package dev.pellucid.engine.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Mapping;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.engine.yaml.Yaml.Sequence;
import dev.pellucid.finding.Finding;
import dev.pellucid.show.FindingText;
import dev.pellucid.text.SourceFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Nodes stand where they are in the text, and text is what stands in the file. */
class YamlReaderTest {
  private static YamlRead read(String text) {
    return YamlReader.read(new SourceFile("data.yaml", text));
  }

  private static Mapping mapping(String text) {
    YamlRead read = read(text);
    assertEquals("", FindingText.of(read.findings()));
    return (Mapping) read.root().orElseThrow();
  }

  private static Scalar value(Mapping mapping, String key) {
    for (Entry entry : mapping.entries()) {
      if (entry.key().text().equals(key)) {
        return (Scalar) entry.value();
      }
    }
    throw new AssertionError(key);
  }

  @Test
  void placesCountUnitsOfTheTextBehindLettersAboveTheFirstPlane() {
    Mapping root = mapping("title: 𝒳𝒴 meal # 🐟\nlysine: 3.1 %\n".replace(" # ", "  # "));
    assertEquals("𝒳𝒴 meal", value(root, "title").span().text());
    Scalar lysine = value(root, "lysine");
    assertEquals("3.1 %", lysine.span().text());
    assertEquals("data.yaml:2:9", lysine.span().place());
    assertEquals("lysine", root.entries().get(1).key().span().text());
  }

  @Test
  void aByteOrderMarkAndWindowsLineEndsShiftNothing() {
    Mapping root = mapping("\uFEFFa: 1 %\r\nb:\r\n  - c: 2 %\r\n    d: 'it''s'\r\n");
    assertEquals("1 %", value(root, "a").span().text());
    Mapping item = (Mapping) ((Sequence) root.entries().get(1).value()).items().get(0);
    assertEquals("2 %", value(item, "c").span().text());
    assertEquals("'it''s'", value(item, "d").span().text());
    assertEquals("it's", value(item, "d").text());
    assertEquals("data.yaml:4:8", value(item, "d").span().place());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "012",
        "1e3",
        "0x1F",
        "1_000",
        "no",
        "yes",
        "true",
        "null",
        "~",
        "NaN",
        ".nan",
        ".inf",
        "2026-11-01",
        "1:30",
        "0.10",
        "-0",
        "+1",
        "1,5",
        "=",
        "a:b",
        "lot#3",
        "<2 %",
        "50%"
      })
  void textStaysTextWhateverYamlMakesOfIt(String text) {
    Scalar value = value(mapping("key: " + text + "\n"), "key");
    assertEquals(text, value.text());
    assertEquals(text, value.span().text());
    assertTrue(value.plain());
  }

  @Test
  void blocksOfTextAndQuotesAreRead() {
    Mapping root =
        mapping("a: |\n  one: two # three\n\n  %four\nb: >-\n  five\n  six\nc: \"7: 8\"\n");
    assertEquals("one: two # three\n\n%four", value(root, "a").text());
    assertEquals("five six", value(root, "b").text());
    assertEquals("7: 8", value(root, "c").text());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n\n", "# only a comment\n", "---\n# nothing\n"})
  void aFileThatSaysNothingIsNoSlipOfYaml(String text) {
    YamlRead read = read(text);
    assertEquals(List.of(), read.findings());
    assertTrue(read.root().isEmpty() || ((Scalar) read.root().get()).isEmpty());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a:⏎⇥b: 1 | 2:1 | yaml-tab",
        "a: 1⏎  ⇥b: 1 | 2:1 | yaml-tab",
        "a: 𝒳⏎b: %x | 2:4 | yaml-reserved-start",
        "- @x | 1:3 | yaml-reserved-start",
        "a: `x | 1:4 | yaml-reserved-start",
        "a: [1, %x] | 1:8 | yaml-reserved-start",
        "a: one: two | 1:7 | yaml-colon-in-text",
        "a: {b: one: two} | 1:4 | yaml-open-bracket",
        "a: some text: | 1:13 | yaml-colon-in-text",
        "a:1 | 1:1 | yaml-missing-space",
        "- source:x | 1:3 | yaml-missing-space",
        "a: {b:1} | 1:5 | yaml-missing-space",
        "80 °C:97 % | 1:1 | yaml-missing-space",
        "a: x #3 | 1:6 | yaml-hash-in-text",
        "a: x # y | 1:6 | yaml-hash-in-text",
        "a: x  #y | 1:7 | yaml-hash-in-text",
        "a: 1⏎a: 2 | 2:1 | yaml-duplicate-key",
        "a: &x 1 | 1:4 | yaml-alias",
        "a: *x | 1:4 | yaml-alias",
        "<<: {a: 1} | 1:1 | yaml-alias",
        "a: &x⏎  b: 1 | 1:4 | yaml-alias",
        "a: !!str 1 | 1:4 | yaml-tag",
        "a: !mine⏎  b: 1 | 1:4 | yaml-tag",
        "a: 1⏎---⏎b: 2 | 3:1 | yaml-second-document",
        "a: \"x⏎b: 1 | 1:4 | yaml-open-quote",
        "a: 'x⏎b: 1 | 1:4 | yaml-open-quote",
        "a: [x, y⏎b: 1 | 1:4 | yaml-open-bracket",
        "a: {x: y⏎b: 1 | 1:4 | yaml-open-bracket",
        "a:⏎  b: 1⏎ c: 2 | 3:2 | yaml-indentation",
        "a: x⏎  y | 1:4 | yaml-over-lines",
        "a: 1⏎b 2⏎c: 3 | 2:1 | yaml-missing-colon",
        "a: [[[[[[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]]]]]] | 1:23 | yaml-too-deep",
        "a: ⌫ | 1:4 | yaml-control-character",
        "a: ma\u202Eize | 1:6 | yaml-control-character",
        "a: b  # ma\uDB40\uDC41ize | 1:11 | yaml-control-character",
        "ma\u200Bize: b | 1:3 | yaml-control-character",
        "a: ma\uD800ize | 1:6 | yaml-control-character",
        "a: ma\uFEFFize | 1:6 | yaml-control-character",
        "a: ma\u2028ize | 1:6 | yaml-control-character",
        "a: \"ma\\u202eize\" | 1:7 | yaml-control-character",
        "a: \"ma\\x07ize\" | 1:7 | yaml-control-character",
        "a: \"ma\\eize\" | 1:7 | yaml-control-character",
        "a: \"ma\\0ize\" | 1:7 | yaml-control-character",
        "a: \"ma\\nize\" | 1:7 | yaml-control-character",
        "a: \"ma\\uD800ize\" | 1:7 | yaml-control-character",
        "a: \"x\\\\y\\U000E0041ize\" | 1:9 | yaml-control-character",
        "\"ma\\u200bize\": b | 1:4 | yaml-control-character",
        "a: \"می\\u200c\" | 1:7 | yaml-control-character",
      })
  void eachSlipIsNamedWhereItStands(String shown, String place, String code) {
    String text = shown.replace('⏎', '\n').replace('⇥', '\t').replace('⌫', '\b');
    List<Finding> findings = read(text).findings();
    assertEquals(1, findings.size(), FindingText.of(findings));
    assertEquals(code, findings.get(0).code().text(), FindingText.of(findings));
    assertEquals("data.yaml:" + place, findings.get(0).span().place());
    assertTrue(!findings.get(0).helps().isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a: \"می\\u200cخواهم\"",
        "a: می\u200Cخواهم",
        "a: \"\\uD83D\\uDC1F \\xB5g \\\"quoted\\\" \\\\u202E tab\\t \\/\"",
        "a: '\\u202e is no escape here'",
        "a: \\x07 is none either",
        "# \\e"
      })
  void escapesOfWhatMayStandThereAreSilent(String text) {
    assertEquals("", FindingText.of(read(text).findings()));
  }

  @Test
  void whatCannotBeSeenComesOutSeen() {
    YamlRead read = read("a: \"x\\e]0;y\\u202E\\r\\nz\"\nb: p\u202Eq\n");
    assertEquals(2, read.findings().size());
    Yaml.Mapping root = (Yaml.Mapping) read.root().orElseThrow();
    assertEquals(
        "x<U+001B>]0;y<U+202E><U+000D><U+000A>z",
        ((Yaml.Scalar) root.entries().get(0).value()).text());
    assertEquals("p<U+202E>q", ((Yaml.Scalar) root.entries().get(1).value()).text());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a: 1  # a comment\n",
        "# a: b: c\n",
        "a: 'one: two # three'\n",
        "a: \"%\"\n",
        "a: https://example.org/x#y\n",
        "a: {b: 1, c: 2} # comment\n",
        "a: # comment\n  - b\n",
        "- a: 1\n  b: 2\n-   c: 3\n",
        "a:\n- b\n- c\n",
        "a: |\n  \tx: y: z #1\n",
        "80 °C: 97 %\n",
        "a: [b, c]\n",
        "---\na: 1\n",
        "a: 1\n...\n"
      })
  void goodYamlIsReadInSilence(String text) {
    assertEquals("", FindingText.of(read(text).findings()));
  }

  @Test
  void allSlipsOfLinesAreNamedInOneRun() {
    List<Finding> findings = read("a:1\nb: %\nc: d: e\n").findings();
    assertEquals(
        List.of("yaml-missing-space", "yaml-reserved-start", "yaml-colon-in-text"),
        findings.stream().map(finding -> finding.code().text()).toList());
  }

  @Test
  void aTextBeyondTheBoundIsNotRead() {
    List<Finding> findings = read("a: " + "x".repeat(YamlReader.LONGEST)).findings();
    assertEquals("yaml-too-large", findings.get(0).code().text());
  }

  @Test
  void depthWithoutBoundEndsInOneFinding() {
    List<Finding> findings = read("a: " + "[".repeat(100_000)).findings();
    assertEquals(1, findings.size());
  }
}
