package dev.pellucid.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MeantTest {
  @Test
  void nearNamesAreListedAsAPersonLists() {
    assertEquals(
        Optional.of("did you mean maize, malt or milo?"),
        Meant.question(List.of("maize", "malt", "milo")));
    assertEquals(
        Optional.of("did you mean maize or malt?"), Meant.question(List.of("maize", "malt")));
    assertEquals(Optional.of("did you mean maize?"), Meant.question(List.of("maize")));
  }

  @Test
  void whereNothingIsNearNothingIsAsked() {
    assertEquals(Optional.empty(), Meant.question(List.of()));
  }
}
