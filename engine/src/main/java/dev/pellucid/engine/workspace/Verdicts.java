package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.BatchRecord.MadeFrom;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.records.BatchRecordCheck.Looked;
import dev.pellucid.engine.records.RecordFindings;
import dev.pellucid.engine.records.Use;
import dev.pellucid.engine.trend.MeasuredBatch;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** What comes of records that are held against what they were made from, one after the other. */
final class Verdicts {
  private final FeedTables today;
  private final NotJudged notJudged = new NotJudged();
  private final List<Use> uses = new ArrayList<>();
  private final List<MeasuredBatch> measured = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final Map<String, Set<String>> readThen = new TreeMap<>();
  private int judged;

  Verdicts(FeedTables today) {
    this.today = today;
  }

  void add(Verdicts others) {
    notJudged.add(others.notJudged);
    uses.addAll(others.uses);
    measured.addAll(others.measured);
    findings.addAll(others.findings);
    readThen.putAll(others.readThen);
    judged += others.judged;
  }

  PastRecords.Said said() {
    List<Finding> all = new ArrayList<>(findings);
    all.addAll(notJudged.findings());
    return new PastRecords.Said(
        new Looked(uses, Map.of(), measured, List.of()), all, judged, readThen);
  }

  static Optional<String> commit(BatchRecord record) {
    return record.madeFrom().flatMap(MadeFrom::commit).map(Located::thing);
  }

  void find(Finding finding) {
    findings.add(finding);
  }

  /** It has changed since, and names no commit. */
  void noCommit(BatchRecord record) {
    leave(record);
    notJudged.noCommit(record);
  }

  /** What it was made from is not to be had. */
  void gone(BatchRecord record, String doubt, String help) {
    leave(record);
    notJudged.gone(record, doubt, help);
  }

  private void unclear(BatchRecord record, String words) {
    leave(record);
    notJudged.unclear(record, words);
  }

  private void leave(BatchRecord record) {
    uses.addAll(Use.of(record));
    readThen.put(record.declared().file().path(), Set.of());
  }

  /**
   * Holds a record against a state.
   *
   * @param line whether what it follows is judged too
   */
  void judge(BatchRecord record, PastState state, boolean line) {
    Shared shared = state.shared();
    if (!state.has(record.code())) {
      findings.add(
          RecordFindings.noRecipe(record, shared.trees().called())
              .noting("looked for in " + commit(record).map(it -> "commit " + it).orElse("today")));
      uses.addAll(Use.of(record));
      return;
    }
    Optional<String> unread = UnreadThen.of(record, today, shared.tables());
    if (unread.isPresent()) {
      unclear(record, unread.get());
      return;
    }
    BatchRecord read = shared.tables().batches().get(record.number());
    Optional<Looked> looked = read == null ? Optional.empty() : state.look(read);
    if (read == null || looked.isEmpty()) {
      unclear(record, state.obstacle(record.code()));
      return;
    }
    List<Finding> all = new ArrayList<>(looked.get().findings());
    if (line) {
      all.addAll(state.follows(read, looked.get()));
    }
    OfCommit said = new OfCommit(commit(record), record.day());
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
      if (PastRecords.isOfIngredient(one) && one.span().file().path().equals(path)) {
        said.add(one.headline());
      }
    }
    return said;
  }
}
