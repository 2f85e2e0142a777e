package dev.pellucid.engine.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Table;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A table whose rows do not fit its head cannot be built. */
class TableTest {
  private static final List<Column> HEADS =
      List.of(new Column("Line", Holds.WORDS), new Column("kg", Holds.FIGURES));

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 3})
  void aRowOfMoreOrLessCellsIsRefused(int cells) {
    List<List<String>> rows =
        List.of(List.of("maize", "14"), java.util.Collections.nCopies(cells, "x"));
    assertThrows(IllegalArgumentException.class, () -> new Table(HEADS, rows, false));
  }

  @Test
  void aRowThatFitsIsKept() {
    assertEquals(1, new Table(HEADS, List.of(List.of("maize", "")), false).rows().size());
  }
}
