package dev.pellucid.engine.data;

import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * All files of {@code batches/}: each as it was read, and the first record of each number.
 *
 * @param names what the records could name as they were read
 */
record BatchRecords(
    BatchNames names,
    ReadFiles<Optional<BatchRecord>> reads,
    SortedMap<String, BatchRecord> byNumber,
    List<Finding> findings) {

  static final BatchRecords NONE =
      of(
          BatchNames.of(
              Lots.NONE.ingredients(),
              Lots.NONE.numbers(),
              new TreeSet<>(),
              new Nutrients(List.of(), List.of(Places.BATCHES)),
              Lots.NONE.ingredients()),
          ReadFiles.none());

  /** Reads what is new, or all where other things can be named. */
  BatchRecords next(Nodes nodes, Frame frame, Known ingredients, LotNumbers lots) {
    List<DataFile> files = nodes.in(Places.BATCHES);
    SortedSet<String> numbers = new TreeSet<>();
    for (DataFile file : files) {
      numbers.add(file.stem());
    }
    BatchNames nameable =
        BatchNames.of(ingredients, lots, numbers, frame.nutrients(), frame.names().nutrients());
    return nameable.isLike(names)
        ? of(nameable, reads.next(files, file -> BatchReader.read(file, nameable)))
        : of(nameable, reads.anew(files, file -> BatchReader.read(file, nameable)));
  }

  private static BatchRecords of(BatchNames names, ReadFiles<Optional<BatchRecord>> reads) {
    SortedMap<String, BatchRecord> byNumber = new TreeMap<>();
    Remarks remarks = new Remarks();
    remarks.addAll(reads.findings());
    for (Optional<BatchRecord> read : reads.things()) {
      if (read.isEmpty()) {
        continue;
      }
      BatchRecord record = read.get();
      BatchRecord earlier = byNumber.putIfAbsent(record.number(), record);
      if (earlier != null) {
        remarks.add(
            ReferenceFindings.nameTwice(
                record.number(), "a batch", record.declared(), earlier.declared(), "another"));
      }
    }
    return new BatchRecords(names, reads, byNumber, remarks.findings());
  }

  /** A finding for each lot that has the number of a batch: who names it could mean either. */
  List<Finding> numbersOf(SortedMap<String, Lot> lots) {
    Remarks remarks = new Remarks();
    for (String batch : new TreeSet<>(names.batches())) {
      Optional<String> number = names.lots().named(batch);
      Lot lot = number.isPresent() ? lots.get(number.get()) : null;
      if (lot != null) {
        remarks.add(LotFindings.numberOfBatch(lot.declared(), batch));
      }
    }
    return remarks.findings();
  }
}
