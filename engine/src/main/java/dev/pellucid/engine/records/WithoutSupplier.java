package dev.pellucid.engine.records;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Lots that do not tell who sold them, or under what number: a recall ends at the gate. Once for a
 * file; once for the folder where many files lack it.
 */
final class WithoutSupplier {
  static final Code CODE = new Code("lot-without-supplier");

  /** Of more files than this it is told once. */
  private static final int FILES = 3;

  private static final int NAMED = 3;

  private WithoutSupplier() {}

  static void look(FeedTables tables, Consumer<Finding> out) {
    Map<String, List<Lot>> byFile = new LinkedHashMap<>();
    List<Lot> all = new ArrayList<>();
    for (Lot lot : tables.lots().values()) {
      if (lot.supplier().isEmpty() || lot.supplierLot().isEmpty()) {
        byFile.computeIfAbsent(lot.declared().file().path(), none -> new ArrayList<>()).add(lot);
        all.add(lot);
      }
    }
    if (byFile.size() > FILES) {
      out.accept(finding(all, " in " + Plural.of(byFile.size(), "file")));
    } else {
      byFile.values().forEach(lots -> out.accept(finding(lots, "")));
    }
  }

  private static Finding finding(List<Lot> lots, String where) {
    Lot first = lots.get(0);
    boolean one = lots.size() == 1;
    Finding finding =
        Finding.warning(
            CODE,
            first.declared(),
            one
                ? "lot " + first.number() + " does not tell " + lacking(lots, "it", "number")
                : Plural.of(lots.size(), "lot")
                    + where
                    + " do not tell "
                    + lacking(lots, "them", "numbers"));
    return (one ? finding : finding.noting(numbers(lots)))
        .helping("write supplier: and supplier-lot: from the sack or the delivery note")
        .helping("where the seller gives no number, write none, and the day and note it came with");
  }

  private static String lacking(List<Lot> lots, String them, String numbers) {
    boolean who = lots.stream().anyMatch(lot -> lot.supplier().isEmpty());
    boolean number = lots.stream().anyMatch(lot -> lot.supplierLot().isEmpty());
    String sold = "who sold " + them;
    return who && number
        ? sold + " and under what " + numbers
        : who
            ? sold
            : "under what " + numbers + (lots.size() == 1 ? " it was sold" : " they were sold");
  }

  private static String numbers(List<Lot> lots) {
    List<String> named = lots.stream().limit(NAMED).map(Lot::number).toList();
    int more = lots.size() - named.size();
    return String.join(", ", named) + (more > 0 ? " and " + more + " more" : "");
  }
}
