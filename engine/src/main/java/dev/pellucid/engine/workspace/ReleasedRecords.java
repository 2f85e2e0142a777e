package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.ClosedRecord;
import dev.pellucid.engine.data.ClosedRecord.Change;
import dev.pellucid.engine.data.DataFileKind;
import dev.pellucid.engine.data.Since.Correction;
import dev.pellucid.engine.folder.Past.History;
import dev.pellucid.engine.folder.Past.Written;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Records of batches held against their own text as it was when the batch was first released: what
 * was weighed, from which lots, and what was read is closed then. A correction that says when, by
 * whom and why makes a note of it. A record may be moved to another place of {@code batches/}, but
 * not go.
 */
final class ReleasedRecords {
  static final Code CODE = new Code("released-changed");

  private static final String PLACE = "batches";

  private final Shared shared;
  private final Texts texts;
  private final List<Finding> findings = new ArrayList<>();

  private ReleasedRecords(Shared shared) {
    this.shared = shared;
    this.texts = shared.texts();
  }

  /** A text in which a batch was released. */
  private record Released(Written written, ClosedRecord record) {}

  static List<Finding> of(Shared shared) {
    ReleasedRecords records = new ReleasedRecords(shared);
    Map<String, String> paths = records.paths();
    if (!paths.isEmpty()) {
      records.look(paths, shared.texts().past().history(PLACE));
    }
    return records.findings;
  }

  /** The path of each record by its number; of two of one number the first. */
  private Map<String, String> paths() {
    Map<String, String> paths = new TreeMap<>();
    for (String path : texts.paths()) {
      if (isRecord(path)) {
        paths.putIfAbsent(Trees.stem(path), path);
      }
    }
    return paths;
  }

  private static boolean isRecord(String path) {
    return DataFileKind.of(path).filter(kind -> kind == DataFileKind.BATCHES).isPresent();
  }

  private void look(Map<String, String> paths, History history) {
    Map<String, List<Written>> byNumber = new TreeMap<>();
    for (Written one : history.written()) {
      if (isRecord(one.path()) && one.text().isPresent()) {
        byNumber.computeIfAbsent(Trees.stem(one.path()), none -> new ArrayList<>()).add(one);
      }
    }
    byNumber.forEach((number, written) -> look(number, written, paths.get(number)));
    if (!history.doubt().isEmpty()) {
      anyReleased().ifPresent(record -> findings.add(notWhole(record, history.doubt())));
    }
  }

  private void look(String number, List<Written> written, @Nullable String path) {
    if (path == null) {
      first(written).ifPresent(then -> findings.add(gone(number, then)));
      return;
    }
    Optional<SourceFile> now = texts.read(path, new ArrayList<>());
    if (now.isPresent() && !areAll(written, now.get().text())) {
      first(written).ifPresent(then -> compare(number, then, now.get()));
    }
  }

  /** Of most records no other text was ever committed, and nothing need be read. */
  private static boolean areAll(List<Written> written, String now) {
    for (Written one : written) {
      if (!one.text().orElse("").equals(now)) {
        return false;
      }
    }
    return true;
  }

  private static Optional<Released> first(List<Written> written) {
    for (Written one : written) {
      String text = one.text().orElse("");
      if (text.contains("released")) {
        ClosedRecord record = ClosedRecord.of(new SourceFile(one.path(), text));
        if (record.isClosed()) {
          return Optional.of(new Released(one, record));
        }
      }
    }
    return Optional.empty();
  }

  private void compare(String number, Released then, SourceFile now) {
    Optional<BatchRecord> record = Optional.ofNullable(shared.tables().batches().get(number));
    for (Change change : ClosedRecord.of(now).since(then.record())) {
      Optional<Correction> why = record.flatMap(it -> correction(it, change));
      findings.add(
          why.isPresent()
              ? corrected(number, change, why.get())
              : changed(number, change, then.written().commit()));
    }
  }

  private static Optional<Correction> correction(BatchRecord record, Change change) {
    LocalDate released = record.release().flatMap(it -> it.day()).orElse(record.day());
    return record.since().corrections().stream()
        .filter(one -> !one.signed().day().isBefore(released))
        .filter(one -> change.isMeant(one.line().map(it -> it.thing()), one.was()))
        .findFirst();
  }

  private static Finding changed(String number, Change change, String commit) {
    return Finding.error(
            CODE,
            change.place(),
            change.what() + " " + words(change) + " since " + number + " was released")
        .noting("it was released in commit " + commit)
        .helping("write it back, if nobody meant to change it")
        .helping("if it was wrong, tell so: corrections: [" + entry(change) + "]");
  }

  private static String words(Change change) {
    if (change.was().isEmpty()) {
      return "was added: " + change.is() + ",";
    }
    return change.is().isEmpty()
        ? "was taken out: " + change.was() + ","
        : "was changed from " + change.was() + " to " + change.is();
  }

  private static String entry(Change change) {
    String line = change.names().get(0).isEmpty() ? change.names().get(1) : change.names().get(0);
    String was = change.was().isEmpty() ? "" : ", was: \"" + change.was().replace('"', '\'') + '"';
    return "{day: ..., by: ..., line: \"" + line.replace('"', '\'') + '"' + was + ", because: ...}";
  }

  private static Finding corrected(String number, Change change, Correction why) {
    return Finding.note(
            CODE,
            change.place(),
            change.what() + " " + words(change) + " since " + number + " was released")
        .seeing(
            "corrected on " + why.signed().day() + " by " + why.signed().by(), why.signed().place())
        .noting("because: " + why.signed().because());
  }

  private Finding gone(String number, Released then) {
    return Finding.warning(
            CODE,
            shared.tables().settings().place(),
            "the record of " + number + " was released, and is no longer in batches/")
        .noting("it was released in commit " + then.written().commit())
        .helping(
            "bring it back: git show "
                + then.written().commit()
                + ":./"
                + then.written().path()
                + "; a record that need not be judged any more says closed: yes");
  }

  private Optional<BatchRecord> anyReleased() {
    return shared.tables().batches().values().stream()
        .filter(it -> it.madeFrom().isPresent())
        .filter(
            it ->
                it.release().filter(r -> r.decision() == BatchRecord.Decision.RELEASED).isPresent())
        .findFirst();
  }

  private static Finding notWhole(BatchRecord record, String doubt) {
    return Finding.note(
        CODE,
        record.declared(),
        "whether records were changed after their release is not known of all: " + doubt);
  }
}
