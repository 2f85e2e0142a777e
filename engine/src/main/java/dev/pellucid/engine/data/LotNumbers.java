package dev.pellucid.engine.data;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The numbers of the lots of a folder, for all that name one. Capitals do not tell one lot from
 * another; a key is a number without them.
 *
 * @param byKey the number of each lot, as the folder writes it
 * @param written the keys of all numbers that were written, also of lots that could not be read
 * @param whole whether all files of lots could be read
 * @param inOrder the number of each lot, in order
 */
record LotNumbers(
    Map<String, String> byKey, Set<String> written, boolean whole, List<String> inOrder) {
  LotNumbers {
    byKey = Map.copyOf(byKey);
    written = Set.copyOf(written);
    inOrder = List.copyOf(inOrder);
  }

  /** Whether another has the same lots. */
  boolean isLike(LotNumbers other) {
    return whole == other.whole
        && byKey.equals(other.byKey)
        && written.equals(other.written)
        && inOrder.equals(other.inOrder);
  }

  /** The number as the folder writes it. */
  Optional<String> named(String number) {
    return Optional.ofNullable(byKey.get(LotsReader.key(number)));
  }

  /** Whether a lot of this number was written, or may stand in what could not be read. */
  boolean mayBe(String number) {
    return !whole || written.contains(LotsReader.key(number));
  }
}
