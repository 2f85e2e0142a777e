package dev.pellucid.engine.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Notes are taken as they come, and told in order and once. */
class ReadsTest {
  private static final Ref MAIZE = new Ref(Ref.Kind.INGREDIENT, "maize");
  private static final Ref SALT = new Ref(Ref.Kind.INGREDIENT, "salt");
  private static final Ref FRAME = Ref.only(Ref.Kind.FRAME);

  @Test
  void whatIsLookedUpTwiceIsToldOnceAndInOrder() {
    Reads.Notes notes = new Reads.Notes(0);
    notes.add(SALT, Optional.empty());
    notes.addFound(MAIZE, "maize");
    notes.add(SALT, Optional.empty());
    notes.addFound(FRAME, "frame");
    assertEquals(List.of(FRAME, MAIZE, SALT), notes.reads().refs());
  }

  @Test
  void notesThatBeginWithOthersLeaveThoseAsTheyAre() {
    Reads before = Reads.of(List.of(SALT));
    Reads.Notes notes = new Reads.Notes(before, 0);
    notes.addFound(MAIZE, "maize");
    assertEquals(List.of(MAIZE, SALT), notes.reads().refs());
    assertEquals(List.of(SALT), before.refs());
  }

  @Test
  void namesAreThoseOfTheKindsThatAreAskedFor() {
    Reads reads = Reads.of(List.of(SALT, FRAME, new Ref(Ref.Kind.PREMIX, "VM-1"), MAIZE));
    assertEquals(sorted("maize", "salt"), reads.names(Ref.Kind.INGREDIENT));
    assertEquals(
        sorted("VM-1", "maize", "salt"), reads.names(Ref.Kind.PREMIX, Ref.Kind.INGREDIENT));
  }

  private static SortedSet<String> sorted(String... names) {
    return new TreeSet<>(List.of(names));
  }
}
