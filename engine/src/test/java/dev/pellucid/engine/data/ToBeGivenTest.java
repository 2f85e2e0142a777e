package dev.pellucid.engine.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A mark in a data file is one finding, whatever belongs in its place, and nothing follows. */
class ToBeGivenTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ingredients/maize.yaml|form: grain|form: ____|form",
        "ingredients/maize.yaml|groups: [grains]|groups: [____]|groups",
        "pellucid.yaml|currency: EUR|currency: ____|currency",
        "sources.yaml|standing: published|standing: ____|standing"
      })
  void isToldOnce(String path, String right, String marked, String key) {
    Pantry pantry = Pantry.full();
    String text = pantry.text(path);
    assertTrue(text.contains(right), text);
    String wrong = text.replaceFirst(Pattern.quote(right), marked);
    List<String> told =
        pantry.with(path, wrong).stocked().findings().stream()
            .filter(one -> one.span().file().path().equals(path))
            .map(Finding::headline)
            .toList();
    assertEquals(List.of(key + " is still to be given"), told);
  }

  /** An analysis can find none of a nutrient; a price is always something. */
  @Test
  void noneIsOfferedWhereSomethingCanBeNone() {
    assertTrue(isOfferedNone("ingredients/maize.yaml", "(?m)^( +lysine: ).*$"));
    assertFalse(isOfferedNone("prices/2026-11.yaml", "(?m)^( +maize: ).*$"));
  }

  private static boolean isOfferedNone(String path, String line) {
    Pantry pantry = Pantry.full();
    String marked = pantry.text(path).replaceFirst(line, "$1____");
    assertNotEquals(pantry.text(path), marked);
    return pantry.with(path, marked).stocked().findings().stream()
        .filter(one -> one.headline().endsWith("is still to be given"))
        .flatMap(one -> one.helps().stream())
        .anyMatch(help -> help.contains("write none"));
  }
}
