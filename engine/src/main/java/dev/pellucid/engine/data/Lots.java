package dev.pellucid.engine.data;

import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.LotsReader.Told;
import dev.pellucid.engine.data.LotsReader.Written;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All files of {@code lots/}: each as it was read, and the lots that count, since of two with one
 * number only the first does.
 *
 * @param ingredients what a lot can be of, as the files were read
 */
record Lots(
    Known ingredients,
    ReadFiles<Told> reads,
    SortedMap<String, Lot> byNumber,
    LotNumbers numbers,
    SortedMap<String, Bin> bins,
    List<Finding> findings) {

  static final Lots NONE = of(Ingredients.names(Set.of()), ReadFiles.none());

  /** Reads what is new, or all where other ingredients can be named. */
  Lots next(Nodes nodes, Frame frame, Known named) {
    List<DataFile> files = nodes.in(Places.LOTS);
    return named.isLike(ingredients)
        ? of(named, reads.next(files, file -> LotsReader.read(file, frame, named)))
        : of(named, reads.anew(files, file -> LotsReader.read(file, frame, named)));
  }

  private static Lots of(Known ingredients, ReadFiles<Told> reads) {
    Remarks remarks = new Remarks();
    remarks.addAll(reads.findings());
    SortedMap<String, Lot> byNumber = new TreeMap<>();
    Map<String, Span> written = new HashMap<>();
    Map<String, String> byKey = new HashMap<>();
    List<Written> all = new ArrayList<>();
    SortedMap<String, List<Located<LocalDate>>> emptied = new TreeMap<>();
    for (Told file : reads.things()) {
      all.addAll(file.lots());
      for (LotsReader.Emptied one : file.bins()) {
        emptied.computeIfAbsent(one.bin(), none -> new ArrayList<>()).add(one.day());
      }
    }
    for (Written one : all) {
      String key = LotsReader.key(one.number().text());
      Span earlier = written.putIfAbsent(key, one.number().span());
      if (earlier != null) {
        remarks.add(LotFindings.twice(one.number(), earlier));
      } else if (one.lot().isPresent()) {
        remarks.addAll(one.ofLot());
        byNumber.put(one.lot().get().number(), one.lot().get());
        byKey.put(key, one.lot().get().number());
      }
    }
    LotNumbers numbers =
        new LotNumbers(
            byKey, written.keySet(), reads.couldBeRead(), List.copyOf(byNumber.keySet()));
    return new Lots(
        ingredients, reads, byNumber, numbers, bins(byNumber, emptied), remarks.findings());
  }

  private static SortedMap<String, Bin> bins(
      SortedMap<String, Lot> lots, SortedMap<String, List<Located<LocalDate>>> emptied) {
    SortedMap<String, Bin> bins = new TreeMap<>();
    for (Lot lot : lots.values()) {
      lot.bin().ifPresent(bin -> bins.put(bin, new Bin(bin, List.of())));
    }
    emptied.forEach(
        (bin, days) -> {
          days.sort(Comparator.comparing(Located::thing));
          bins.put(bin, new Bin(bin, days));
        });
    return bins;
  }
}
