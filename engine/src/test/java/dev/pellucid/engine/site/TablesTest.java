package dev.pellucid.engine.site;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.site.Tables.Head;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A table of a page whose rows do not fit its heads cannot be built. */
class TablesTest {
  private static final List<Head> HEADS = List.of(Tables.words("Line"), Tables.figures("kg"));

  @Test
  void aRowOfMoreOrLessCellsIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> Tables.table("Mix", HEADS, Stream.of(Tables.row("maize"))));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            Tables.table(
                "Mix",
                HEADS,
                Stream.of(Tables.row("maize", Tables.figure("1"), Tables.figure("2")))));
  }

  @Test
  void aRowThatFitsIsKept() {
    assertTrue(
        Tables.table("Mix", HEADS, Stream.of(Tables.row("maize", Tables.figure("1"))))
            .render()
            .contains("maize"));
  }
}
