package dev.pellucid.engine.data;

import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.NearNames;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;

/**
 * What a batch record can name: ingredients, lots and other batches.
 *
 * @param ingredients what can be flushed with
 * @param batches the name of each file of {@code batches/}, whether or not it could be read
 * @param batchesByKey the same, by their letters in small ones
 * @param contents what a laboratory can find
 * @param nutrients the names of that
 */
record BatchNames(
    Known ingredients,
    LotNumbers lots,
    Set<String> batches,
    Map<String, String> batchesByKey,
    Nutrients contents,
    Known nutrients) {
  BatchNames {
    batches = Set.copyOf(batches);
    batchesByKey = Map.copyOf(batchesByKey);
  }

  static BatchNames of(
      Known ingredients,
      LotNumbers lots,
      SortedSet<String> batches,
      Nutrients contents,
      Known nutrients) {
    Map<String, String> byKey = new HashMap<>();
    for (String number : batches) {
      byKey.putIfAbsent(LotsReader.key(number), number);
    }
    return new BatchNames(ingredients, lots, batches, byKey, contents, nutrients);
  }

  /** Whether the same can be named by another; the keys follow from the names. */
  @SuppressWarnings("ReferenceEquality")
  boolean isLike(BatchNames other) {
    return contents == other.contents
        && nutrients.isLike(other.nutrients)
        && ingredients.isLike(other.ingredients)
        && lots.isLike(other.lots)
        && batches.equals(other.batches);
  }

  /**
   * The number of a lot or batch as the folder writes it: capitals tell none from another.
   *
   * @param line the ingredient or premix that it is named for
   */
  Optional<String> lot(Scalar lot, String line, Remarks remarks) {
    Optional<String> known =
        lots.named(lot.text())
            .or(() -> Optional.ofNullable(batchesByKey.get(LotsReader.key(lot.text()))));
    if (known.isEmpty() && !lots.mayBe(lot.text())) {
      remarks.add(unknown(lot, line));
    }
    return known;
  }

  /** Of a premix nothing but its own batches is offered. */
  private Finding unknown(Scalar lot, String line) {
    List<String> made = batches.stream().filter(one -> isOf(one, line)).sorted().toList();
    List<String> near =
        new ArrayList<>(BatchNumber.near(lot.text(), made.isEmpty() ? batches : made));
    if (made.isEmpty()) {
      near.addAll(NearNames.of(lot.text(), lots.inOrder()));
    }
    Finding finding =
        Finding.error(
            LotFindings.UNKNOWN,
            lot.span(),
            KeyFindings.shown(lot.text()) + " is not a lot of this folder");
    if (!near.isEmpty()) {
      return KeyFindings.suggesting(finding, lot, near, "");
    }
    return made.isEmpty() && BatchNumber.of(lot.text()).isEmpty()
        ? finding.helping("add the lot to a file of lots/, or fix the number")
        : finding.helping("write a record of that batch first, or fix the number");
  }

  private static boolean isOf(String number, String code) {
    return BatchNumber.code(number).equals(code);
  }

  /** What a record names an earlier batch for. */
  enum Earlier {
    ON_THE_LINE(
        "cannot follow",
        "write the batch that was made on the same line before it",
        "leave after out, where what was made before is not known"),
    PART_BAG(
        "cannot have been begun with a part bag of",
        "write the batch whose part bag was filled up",
        "write a record of that batch first: whoever gets the bag gets feed of both");

    private final String cannot;
    private final String write;
    private final String otherwise;

    /**
     * @param cannot what is said of a batch that cannot be it
     * @param write what to write instead
     * @param otherwise what to do where there is no record of it
     */
    Earlier(String cannot, String write, String otherwise) {
      this.cannot = cannot;
      this.write = write;
      this.otherwise = otherwise;
    }
  }

  /** Whether a batch is one of the folder, another than this one, and not of a later day. */
  boolean isBefore(Scalar before, String number, Earlier as, Remarks remarks) {
    if (!batches.contains(before.text())) {
      List<String> earlier = notAfter(number, as);
      remarks.add(LotFindings.unknownBatch(before, earlier, as.otherwise));
      return false;
    }
    boolean later = BatchNumber.day(before.text()).compareTo(BatchNumber.day(number)) > 0;
    if (later || before.text().equals(number)) {
      remarks.add(
          LotFindings.record(
              before.span(),
              number
                  + " "
                  + as.cannot
                  + " "
                  + (later ? before.text() + ", which is of a later day" : "itself"),
              as.write));
      return false;
    }
    return true;
  }

  /** A part bag is filled up with feed of its own recipe alone. */
  private List<String> notAfter(String number, Earlier as) {
    String code = BatchNumber.code(number);
    return batches.stream()
        .filter(one -> !one.equals(number))
        .filter(one -> as == Earlier.ON_THE_LINE || isOf(one, code))
        .filter(one -> BatchNumber.day(one).compareTo(BatchNumber.day(number)) <= 0)
        .sorted()
        .toList();
  }
}
