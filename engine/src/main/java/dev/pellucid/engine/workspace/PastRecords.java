package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.BatchRecord.MadeFrom;
import dev.pellucid.engine.folder.Past.Then;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.records.BatchRecordCheck;
import dev.pellucid.engine.records.BatchRecordCheck.Looked;
import dev.pellucid.engine.records.Use;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.trend.MeasuredBatch;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;

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

  /** Records do not say what they were made from. */
  public static final Code WITHOUT_COMMIT = WithoutCommit.CODE;

  /** A record is otherwise than when its batch was released. */
  public static final Code CHANGED = ReleasedRecords.CODE;

  private final Shared today;
  private final PastState now;
  private final NotJudged notJudged = new NotJudged();
  private final List<Use> uses = new ArrayList<>();
  private final List<MeasuredBatch> measured = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final Map<String, Set<String>> readThen = new TreeMap<>();
  private int judged;

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
    past.findings.addAll(past.notJudged.findings());
    return new Said(
        new Looked(past.uses, Map.of(), past.measured, List.of()),
        past.findings,
        past.judged,
        past.readThen);
  }

  private void judge(List<BatchRecord> records) {
    List<BatchRecord> ofToday = new ArrayList<>();
    Map<String, List<BatchRecord>> byCommit = new LinkedHashMap<>();
    for (BatchRecord record : records) {
      Optional<String> commit = commit(record);
      boolean same = isOfToday(record);
      if (same && (commit.isEmpty() || record.after().isEmpty())) {
        ofToday.add(record);
      } else if (commit.isPresent()) {
        byCommit.computeIfAbsent(commit.get(), none -> new ArrayList<>()).add(record);
      } else {
        leave(record, it -> it.noCommit(record));
      }
    }
    ofToday(ofToday, true);
    if (!byCommit.isEmpty()) {
      ofCommits(byCommit);
    }
  }

  private static Optional<String> commit(BatchRecord record) {
    return record.madeFrom().flatMap(MadeFrom::commit).map(Located::thing);
  }

  private static Optional<Located<String>> fingerprint(BatchRecord record) {
    return record.madeFrom().flatMap(MadeFrom::fingerprint);
  }

  private boolean isOfToday(BatchRecord record) {
    Optional<Located<String>> named = fingerprint(record);
    return named.isPresent()
        && now.has(record.code())
        && now.fingerprint(record.code()).equals(named.get().thing());
  }

  private void leave(BatchRecord record, Consumer<NotJudged> why) {
    why.accept(notJudged);
    uses.addAll(BatchRecordCheck.uses(record));
    readThen.put(record.declared().file().path(), Set.of());
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
      judge(record, state, line);
    }
  }

  private void ofCommits(Map<String, List<BatchRecord>> byCommit) {
    Map<String, Then> states = new PastTexts(today.texts()).of(byCommit);
    OfTodayIn store = OfTodayIn.of(today.texts());
    ReadFolder before = today.folder();
    for (Map.Entry<String, List<BatchRecord>> each : byCommit.entrySet()) {
      Then then = states.getOrDefault(each.getKey(), Then.gone("it is not known", ""));
      if (then.texts().isEmpty()) {
        each.getValue().forEach(record -> gone(record, then));
        continue;
      }
      Texts texts = store.under(then.texts().get(), each.getValue(), today.tables());
      before = ReadFolder.after(Optional.of(before), texts);
      ofCommit(each.getValue(), then, before);
    }
  }

  private void gone(BatchRecord record, Then then) {
    if (isOfToday(record)) {
      ofToday(List.of(record), false);
    } else {
      leave(record, it -> it.gone(record, then.doubt(), then.help()));
    }
  }

  private void ofCommit(List<BatchRecord> records, Then then, ReadFolder folder) {
    Map<LocalDate, PastState> states = new LinkedHashMap<>();
    for (BatchRecord record : records) {
      PastState state =
          states.computeIfAbsent(
              record.day(), day -> new PastState(Shared.of(folder, Days.on(day))));
      Optional<Located<String>> named = fingerprint(record).filter(it -> state.has(record.code()));
      boolean alike =
          named.filter(it -> it.thing().equals(state.fingerprint(record.code()))).isPresent();
      if (!alike && !then.doubt().isEmpty()) {
        gone(record, then);
        continue;
      }
      if (!alike && named.isPresent()) {
        findings.add(unlike(record, named.get(), state.fingerprint(record.code())));
      }
      judge(record, state, true);
    }
  }

  private void judge(BatchRecord record, PastState state, boolean line) {
    Shared shared = state.shared();
    if (!state.has(record.code())) {
      findings.add(
          BatchRecordCheck.noRecipe(record, shared.trees().called())
              .noting("looked for in " + commit(record).map(it -> "commit " + it).orElse("today")));
      uses.addAll(BatchRecordCheck.uses(record));
      return;
    }
    Optional<String> unread = UnreadThen.of(record, today.tables(), shared.tables());
    if (unread.isPresent()) {
      leave(record, it -> it.unclear(record, unread.get()));
      return;
    }
    BatchRecord read = shared.tables().batches().get(record.number());
    Optional<Looked> looked = state.look(read);
    if (looked.isEmpty()) {
      leave(record, it -> it.unclear(record, state.obstacle(record.code())));
      return;
    }
    OfCommit said = new OfCommit(commit(record), record.day());
    List<Finding> all = new ArrayList<>(looked.get().findings());
    if (line) {
      all.addAll(state.follows(read, looked.get()));
    }
    all.forEach(one -> findings.add(said.told(one, record.declared())));
    uses.addAll(looked.get().uses());
    measured.addAll(looked.get().measured());
    readThen.put(record.declared().file().path(), said(shared, record));
    judged++;
  }

  private static Set<String> said(Shared shared, BatchRecord record) {
    String path = record.declared().file().path();
    Set<String> said = new HashSet<>();
    for (Finding one : shared.folder().findings()) {
      if (isOfIngredient(one) && one.span().file().path().equals(path)) {
        said.add(one.headline());
      }
    }
    return said;
  }

  /** Whether it is said of a name of an ingredient, which hangs on the library. */
  private static boolean isOfIngredient(Finding one) {
    return one.code().text().equals("data-unknown-ingredient");
  }

  private static Finding unlike(BatchRecord record, Located<String> named, String there) {
    return Finding.warning(
            UNLIKE,
            named.place(),
            record.number()
                + " names the fingerprint "
                + named.thing()
                + ", the files of commit "
                + commit(record).orElse("")
                + " give "
                + there)
        .noting("it is judged by that commit")
        .helping(
            "hold both against the sheet: one of them was miscopied, or the sheet was made of files"
                + " that were not committed, or with other data of the plugin");
  }
}
