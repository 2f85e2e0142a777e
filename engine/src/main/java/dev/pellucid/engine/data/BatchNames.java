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

  /** The number of a lot or batch as the folder writes it: capitals tell none from another. */
  Optional<String> lot(Scalar lot, Remarks remarks) {
    Optional<String> known =
        lots.named(lot.text())
            .or(() -> Optional.ofNullable(batchesByKey.get(LotsReader.key(lot.text()))));
    if (known.isEmpty() && !lots.mayBe(lot.text())) {
      remarks.add(unknown(lot));
    }
    return known;
  }

  private Finding unknown(Scalar lot) {
    List<String> known = new ArrayList<>(lots.inOrder());
    batches.stream().sorted().forEach(known::add);
    Finding finding =
        Finding.error(
            LotFindings.UNKNOWN,
            lot.span(),
            KeyFindings.shown(lot.text()) + " is not a lot of this folder");
    List<String> near = NearNames.of(lot.text(), known);
    return near.isEmpty()
        ? finding.helping("add the lot to a file of lots/, or fix the number")
        : KeyFindings.suggesting(finding, lot, known, "");
  }

  /** What a record names an earlier batch for. */
  enum Earlier {
    ON_THE_LINE(
        "cannot follow",
        "write the batch that was made on the same line before it",
        "or leave after out, where what was made before is not known"),
    PART_BAG(
        "cannot have been begun with a part bag of",
        "write the batch whose part bag was filled up",
        "or write a record of that batch first: whoever gets the bag gets feed of both");

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
      remarks.add(LotFindings.unknownBatch(before, notAfter(number), as.otherwise));
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

  private List<String> notAfter(String number) {
    return batches.stream()
        .filter(one -> !one.equals(number))
        .filter(one -> BatchNumber.day(one).compareTo(BatchNumber.day(number)) <= 0)
        .sorted()
        .toList();
  }
}
