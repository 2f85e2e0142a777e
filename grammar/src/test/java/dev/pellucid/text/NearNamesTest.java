package dev.pellucid.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearNamesTest {
  private static final List<String> NAMES =
      List.of("maize", "maize-gluten-60", "wheat-middlings", "wheat-bran", "salt", "rye");

  @ParameterizedTest
  @CsvSource({
    "maise, maize",
    "MAIZE, maize",
    "wheat-midlings, wheat-middlings",
    "wheat-barn, wheat-bran",
    "slat, salt",
    "rey, rye"
  })
  void findsWhatWasMeant(String word, String meant) {
    assertEquals(meant, NearNames.of(word, NAMES).get(0));
  }

  @ParameterizedTest
  @CsvSource({"fish-oil", "x", "oat", "soya"})
  void isSilentWhenNothingIsNear(String word) {
    assertEquals(List.of(), NearNames.of(word, NAMES));
  }

  @Test
  void namesThreeAtMostTheNearestFirst() {
    assertEquals(
        List.of("aaaa", "aaab", "aaac"),
        NearNames.of("aaaa", List.of("aaae", "aaad", "aaac", "aaab", "aaaa")));
  }

  @ParameterizedTest
  @DisplayName("distances that textbooks give for kitten, sitting, flaw, lawn (Levenshtein 1966)")
  @CsvSource({"kitten, sitting, 3", "flaw, lawn, 2", "abc, acb, 1", "ca, abc, 3", "'', abc, 3"})
  void countsSlips(String a, String b, int distance) {
    assertEquals(distance, NearNames.distance(a, b));
  }
}
