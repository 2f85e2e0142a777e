package dev.pellucid.engine.data;

import dev.pellucid.text.Span;
import java.util.List;

/**
 * What became of a lot beside going into batches.
 *
 * @param returned to who sold it
 * @param corrections of what the books say: less is negative
 * @param counted what was found in the store
 */
public record LotMoves(
    List<Moved> returned, List<Moved> disposed, List<Moved> corrections, List<Moved> counted) {
  public static final LotMoves NONE = new LotMoves(List.of(), List.of(), List.of(), List.of());

  public LotMoves {
    returned = List.copyOf(returned);
    disposed = List.copyOf(disposed);
    corrections = List.copyOf(corrections);
    counted = List.copyOf(counted);
  }

  /**
   * So many kg.
   *
   * @param amount where they stand
   */
  public record Moved(Signed signed, double kg, Span amount) {}
}
