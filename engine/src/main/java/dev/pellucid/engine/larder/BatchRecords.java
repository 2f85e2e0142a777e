package dev.pellucid.engine.larder;

import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Calendar;
import dev.pellucid.text.NearNames;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The files of {@code batches/}, and whether the lots that they name are there. */
final class BatchRecords {
  private static final Pattern NUMBER =
      Pattern.compile(
          "^([A-Z][A-Z0-9]*(?:-[A-Z0-9]+)*?)-([0-9]{4}-[0-9]{2}-[0-9]{2})-([1-9][0-9]{0,3})$");

  private final Known ingredients;
  private final List<Finding> findings;

  /** The number of each file, by its letters in small ones. */
  private final Map<String, String> byLetters = new HashMap<>();

  BatchRecords(Known ingredients, List<Finding> findings) {
    this.ingredients = ingredients;
    this.findings = findings;
  }

  SortedMap<String, BatchRecord> read(List<DataFile> files, LotsReader lots) {
    SortedMap<String, BatchRecord> records = new TreeMap<>();
    SortedSet<String> numbers = new TreeSet<>();
    files.forEach(file -> numbers.add(file.stem()));
    numbers.forEach(number -> byLetters.putIfAbsent(LotsReader.key(number), number));
    lots.checkAgainst(numbers);
    for (DataFile file : files) {
      record(file, lots, numbers, records);
    }
    return records;
  }

  private void record(
      DataFile file, LotsReader lots, Set<String> numbers, SortedMap<String, BatchRecord> records) {
    BatchReader reader =
        new BatchReader(
            findings,
            lot -> checkLot(lot, lots, numbers),
            before -> checkBefore(before, file.stem(), numbers),
            ingredients);
    Matcher number = NUMBER.matcher(file.stem());
    if (!number.matches()) {
      findings.add(LotFindings.batch(file.source().beginning(), file.stem()));
      return;
    }
    try {
      LocalDate day = LocalDate.parse(number.group(2));
      if (!Calendar.holds(day)) {
        findings.add(LotFindings.batch(file.source().beginning(), file.stem()));
        return;
      }
      int serial = Integer.parseInt(number.group(3));
      file.fields(Vocabulary.BATCH, findings)
          .flatMap(fields -> reader.read(file, fields, number.group(1), day, serial))
          .ifPresent(record -> add(record, records));
    } catch (DateTimeException noSuchDay) {
      findings.add(LotFindings.batch(file.source().beginning(), file.stem()));
    }
  }

  private void add(BatchRecord record, SortedMap<String, BatchRecord> records) {
    BatchRecord earlier = records.putIfAbsent(record.number(), record);
    if (earlier != null) {
      findings.add(
          ReferenceFindings.nameTwice(
              record.number(), "a batch", record.declared(), earlier.declared(), "another"));
    }
  }

  /** The number as the folder writes it: capitals do not tell one lot from another. */
  private Optional<String> checkLot(Scalar lot, LotsReader lots, Set<String> numbers) {
    Optional<String> known =
        lots.named(lot.text())
            .map(Lot::number)
            .or(() -> Optional.ofNullable(byLetters.get(LotsReader.key(lot.text()))));
    if (known.isEmpty() && !lots.knows(lot.text())) {
      findings.add(unknown(lot, lots, numbers));
    }
    return known;
  }

  /** A batch of the folder, another one, and not of a later day. */
  private boolean checkBefore(Scalar before, String number, Set<String> numbers) {
    if (!numbers.contains(before.text())) {
      findings.add(LotFindings.unknownBatch(before, notAfter(number, numbers)));
      return false;
    }
    boolean later = day(before.text()).compareTo(day(number)) > 0;
    if (later || before.text().equals(number)) {
      findings.add(
          LotFindings.record(
              before.span(),
              number
                  + " cannot follow "
                  + (later ? before.text() + ", which is of a later day" : "itself"),
              "write the batch that was made on the same line before it"));
      return false;
    }
    return true;
  }

  private static List<String> notAfter(String number, Set<String> numbers) {
    return numbers.stream()
        .filter(one -> !one.equals(number) && day(one).compareTo(day(number)) <= 0)
        .sorted()
        .toList();
  }

  /** The day as a file name writes it; empty where it is no number of a batch. */
  private static String day(String number) {
    Matcher parts = NUMBER.matcher(number);
    return parts.matches() ? parts.group(2) : "";
  }

  private static Finding unknown(Scalar lot, LotsReader lots, Set<String> numbers) {
    List<String> known = new ArrayList<>(lots.byNumber().keySet());
    known.addAll(numbers);
    Finding finding =
        Finding.error(
            LotFindings.UNKNOWN,
            lot.span(),
            KeyFindings.shown(lot.text()) + " is not a lot of this folder");
    List<String> near = NearNames.of(lot.text(), known);
    return near.isEmpty()
        ? finding.helping("add the lot to a file of lots/, or mend the number")
        : KeyFindings.suggesting(finding, lot, known, "");
  }
}
