package dev.pellucid.engine.goal;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * What is asked for where it is no number of this folder: a supplier who calls has a number of
 * their own, a customer a delivery note, and people say the name of a feed or the last figures of a
 * number.
 */
final class OtherNumbers {
  /** Less of a number is part of too many. */
  private static final int SHORTEST_PART = 3;

  private static final int AT_MOST = 5;

  private final FeedTables tables;
  private final String asked;

  private OtherNumbers(FeedTables tables, String asked) {
    this.tables = tables;
    this.asked = letters(asked);
  }

  /**
   * What it is, as a sentence goes on; empty where nothing is called so.
   *
   * @param numbers those of all lots and batches
   */
  static Optional<String> sentence(FeedTables tables, Collection<String> numbers, String asked) {
    OtherNumbers other = new OtherNumbers(tables, asked);
    return other.asked.isEmpty()
        ? Optional.empty()
        : other.supplier().or(other::paper).or(other::thing).or(() -> other.part(numbers));
  }

  private Optional<String> supplier() {
    return told(
        "it is the supplier's number of lot ", lots(lot -> lot.supplierLot().filter(this::is)));
  }

  private Optional<String> paper() {
    List<String> went = new ArrayList<>();
    for (BatchRecord record : tables.batches().values()) {
      if (record.since().delivered().stream().anyMatch(handed -> is(handed.note()))) {
        went.add(record.number());
      }
    }
    return told("it is the delivery note of lot ", lots(lot -> lot.deliveryNote().filter(this::is)))
        .or(() -> told("with that delivery note went batch ", went));
  }

  private Optional<String> thing() {
    List<String> batches =
        tables.batches().values().stream()
            .filter(record -> is(record.code()))
            .map(BatchRecord::number)
            .toList();
    return told(
            "it is an ingredient, with lot ",
            lots(lot -> Optional.of(lot.ingredient()).filter(this::is)))
        .or(() -> told("it is a code, with batch ", batches));
  }

  /** A number that is only spelt otherwise is none of these. */
  private Optional<String> part(Collection<String> numbers) {
    return asked.length() < SHORTEST_PART || numbers.stream().anyMatch(this::is)
        ? Optional.empty()
        : told(
            "it is a part of ",
            numbers.stream().filter(number -> letters(number).contains(asked)).toList());
  }

  private List<String> lots(Function<Lot, Optional<String>> said) {
    return tables.lots().values().stream()
        .filter(lot -> said.apply(lot).isPresent())
        .map(Lot::number)
        .toList();
  }

  private static Optional<String> told(String words, List<String> all) {
    List<String> sorted = List.copyOf(new TreeSet<>(all));
    if (sorted.isEmpty()) {
      return Optional.empty();
    }
    String more = sorted.size() > AT_MOST ? " and " + (sorted.size() - AT_MOST) + " more" : "";
    return Optional.of(
        words + String.join(", ", sorted.subList(0, Math.min(AT_MOST, sorted.size()))) + more);
  }

  private boolean is(String written) {
    return letters(written).equals(asked);
  }

  /** Blanks, dashes and capitals are written in many ways. */
  private static String letters(String written) {
    return written.replaceAll("[^\\p{L}\\p{Nd}]", "").toLowerCase(Locale.ROOT);
  }
}
