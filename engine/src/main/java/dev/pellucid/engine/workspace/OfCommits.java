package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.folder.Past.Then;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.finding.Finding;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Holds records against their commits, one commit after the other. */
final class OfCommits {
  private final Shared today;
  private final OfTodayIn store;
  private final Verdicts verdicts;
  private final List<Doubted> doubted = new ArrayList<>();

  /** A record whose commit may be had otherwise than it was. */
  record Doubted(BatchRecord record, Then then) {}

  OfCommits(Shared today, OfTodayIn store) {
    this.today = today;
    this.store = store;
    this.verdicts = new Verdicts(today.tables());
  }

  Verdicts verdicts() {
    return verdicts;
  }

  List<Doubted> doubted() {
    return doubted;
  }

  OfCommits of(List<OfOneCommit> commits) {
    ReadFolder before = today.folder();
    for (OfOneCommit one : commits) {
      before =
          ReadFolder.after(
              Optional.of(before), store.under(one.texts(), one.records(), today.tables()));
      judge(one, before);
    }
    return this;
  }

  private void judge(OfOneCommit commit, ReadFolder folder) {
    Map<LocalDate, PastState> states = new LinkedHashMap<>();
    for (BatchRecord record : commit.records()) {
      PastState state =
          states.computeIfAbsent(
              record.day(), day -> new PastState(Shared.of(folder, Days.on(day))));
      Optional<Located<String>> named =
          PastRecords.fingerprint(record).filter(it -> state.has(record.code()));
      boolean alike =
          named.filter(it -> it.thing().equals(state.fingerprint(record.code()))).isPresent();
      if (!alike && !commit.then().doubt().isEmpty()) {
        doubted.add(new Doubted(record, commit.then()));
        continue;
      }
      if (!alike && named.isPresent()) {
        verdicts.find(unlike(record, named.get(), state.fingerprint(record.code())));
      }
      verdicts.judge(record, state, true);
    }
  }

  private static Finding unlike(BatchRecord record, Located<String> named, String there) {
    return Finding.warning(
            PastRecords.UNLIKE,
            named.place(),
            record.number()
                + " names the fingerprint "
                + named.thing()
                + ", the files of commit "
                + Verdicts.commit(record).orElse("")
                + " give "
                + there)
        .noting("it is judged by that commit")
        .helping(
            "hold both against the sheet: one of them was miscopied, or the sheet was made of files"
                + " that were not committed, or with other data of the plugin");
  }
}
