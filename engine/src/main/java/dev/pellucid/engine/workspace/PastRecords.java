package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.BatchRecord.MadeFrom;
import dev.pellucid.engine.folder.Past.Then;
import dev.pellucid.engine.records.BatchRecordCheck;
import dev.pellucid.engine.records.BatchRecordCheck.Looked;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The batch records that say what they were made from, each held against that, on its own day: an
 * edit of today accuses no batch of last month.
 *
 * <p>Where the fingerprint that a record names is that of the files as they are, they are what it
 * was made from. Else the commit is asked for that it names. Recipes, premixes, ingredients,
 * limits, prices, practice and plant are those of that state; lots and records are those of today,
 * since they come later, and what is found in a lot counts for every batch that holds it. What can
 * be had from nowhere is told, and not judged.
 *
 * <p>A batch that follows another on the line hangs on that one's recipe too, which its fingerprint
 * does not hold; there the commit is asked for first.
 */
public final class PastRecords {
  /** What a record names as its fingerprint is not that of the files of its commit. */
  public static final Code UNLIKE = new Code("made-from-unlike");

  /** What a record was made from is not to be had. */
  public static final Code NOT_JUDGED = NotJudged.CODE;

  /** So many parts of the commits are looked at beside each other. */
  private static final int PARTS = 8;

  /** Records do not say what they were made from. */
  public static final Code WITHOUT_COMMIT = WithoutCommit.CODE;

  /** A record is otherwise than when its batch was released. */
  public static final Code CHANGED = ReleasedRecords.CODE;

  private final Shared today;
  private final PastState now;
  private final Verdicts verdicts;

  /**
   * What came of them.
   *
   * @param looked what they take of lots, and what was found of them
   * @param findings each as it is told, in no order
   * @param readThen by the path of each record that was judged, what its own state says of reading
   *     it
   */
  record Said(
      Looked looked, List<Finding> findings, int judged, Map<String, Set<String>> readThen) {
    /** The findings of a folder without those of records that only names of today give. */
    List<Finding> without(List<Finding> ofFolder) {
      return readThen.isEmpty()
          ? ofFolder
          : ofFolder.stream().filter(one -> !isOfNamesOfToday(one)).toList();
    }

    private boolean isOfNamesOfToday(Finding one) {
      Set<String> then = readThen.get(one.span().file().path());
      return then != null && isOfIngredient(one) && !then.contains(one.headline());
    }
  }

  private PastRecords(Shared today) {
    this.today = today;
    this.now = new PastState(today);
    this.verdicts = new Verdicts(today.tables());
  }

  /** Looks at all of them. */
  static Said of(Shared today) {
    PastRecords past = new PastRecords(today);
    List<BatchRecord> records = new ArrayList<>();
    for (BatchRecord record : today.tables().batches().values()) {
      if (BatchRecordCheck.isOfItsOwnState(record)) {
        records.add(record);
      }
    }
    if (!records.isEmpty()) {
      records.sort(Comparator.comparing(BatchRecord::day).thenComparing(BatchRecord::number));
      past.judge(records);
    }
    return past.verdicts.said();
  }

  private void judge(List<BatchRecord> records) {
    List<BatchRecord> ofToday = new ArrayList<>();
    Map<String, List<BatchRecord>> byCommit = new LinkedHashMap<>();
    for (BatchRecord record : records) {
      Optional<String> commit = Verdicts.commit(record);
      boolean same = isOfToday(record);
      if (same && (commit.isEmpty() || record.after().isEmpty())) {
        ofToday.add(record);
      } else if (commit.isPresent()) {
        byCommit.computeIfAbsent(commit.get(), none -> new ArrayList<>()).add(record);
      } else {
        verdicts.noCommit(record);
      }
    }
    ofToday(ofToday, true);
    if (!byCommit.isEmpty()) {
      ofCommits(byCommit);
    }
  }

  static Optional<Located<String>> fingerprint(BatchRecord record) {
    return record.madeFrom().flatMap(MadeFrom::fingerprint);
  }

  private boolean isOfToday(BatchRecord record) {
    Optional<Located<String>> named = fingerprint(record);
    return named.isPresent()
        && now.has(record.code())
        && now.fingerprint(record.code()).equals(named.get().thing());
  }

  /**
   * @param line whether what they follow is judged too
   */
  private void ofToday(List<BatchRecord> records, boolean line) {
    PastState state = now;
    LocalDate day = LocalDate.MIN;
    for (BatchRecord record : records) {
      if (!record.day().equals(day)) {
        day = record.day();
        Shared there = today.on(Days.on(day));
        state = there == today ? now : new PastState(there);
      }
      verdicts.judge(record, state, line);
    }
  }

  /** Each part of the commits by itself; within one, what did not change is not read again. */
  private void ofCommits(Map<String, List<BatchRecord>> byCommit) {
    Map<String, Then> states = new PastTexts(today.texts()).of(byCommit);
    OfTodayIn store = OfTodayIn.of(today.texts());
    List<OfOneCommit> there = new ArrayList<>();
    for (Map.Entry<String, List<BatchRecord>> each : byCommit.entrySet()) {
      Then then = states.getOrDefault(each.getKey(), Then.gone("it is not known", ""));
      if (then.texts().isEmpty()) {
        each.getValue().forEach(record -> gone(record, then));
      } else {
        there.add(new OfOneCommit(each.getValue(), then, then.texts().get()));
      }
    }
    parts(there).parallelStream()
        .map(part -> new OfCommits(today, store).of(part))
        .forEachOrdered(this::take);
  }

  private void take(OfCommits part) {
    verdicts.add(part.verdicts());
    part.doubted().forEach(one -> gone(one.record(), one.then()));
  }

  private static List<List<OfOneCommit>> parts(List<OfOneCommit> all) {
    int each = (all.size() + PARTS - 1) / PARTS;
    List<List<OfOneCommit>> parts = new ArrayList<>();
    for (int from = 0; from < all.size(); from += each) {
      parts.add(all.subList(from, Math.min(all.size(), from + each)));
    }
    return parts;
  }

  private void gone(BatchRecord record, Then then) {
    if (isOfToday(record)) {
      ofToday(List.of(record), false);
    } else {
      verdicts.gone(record, then.doubt(), then.help());
    }
  }

  /** Whether it is said of a name of an ingredient, which hangs on the library. */
  static boolean isOfIngredient(Finding one) {
    return one.code().text().equals("data-unknown-ingredient");
  }
}
