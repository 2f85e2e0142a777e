package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.DataFileKind;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Related;
import dev.pellucid.text.PastPath;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is said of a record that is held against a commit: places in files of that commit bear its
 * name, and the finding itself stands in the record, which is of today.
 *
 * @param commit as the record names it; empty where it names none, and nothing is to be marked
 * @param day by which it was judged
 */
record OfCommit(Optional<String> commit, LocalDate day) {

  /**
   * A finding as it is told.
   *
   * @param otherwise a place in the record
   */
  Finding told(Finding found, Span otherwise) {
    boolean ofToday = isOfToday(found.span());
    List<Related> related = new ArrayList<>();
    for (Related one : found.related()) {
      related.add(new Related(one.text(), marked(one.span())));
    }
    if (!ofToday) {
      related.add(new Related("written", marked(found.span())));
    }
    List<String> notes = new ArrayList<>(found.notes());
    notes.add(
        "judged by "
            + commit.map(it -> "commit " + it).orElse("the files that it was made from")
            + ", as of "
            + day);
    return new Finding(
        found.code(),
        found.severity(),
        found.headline(),
        ofToday ? found.span() : otherwise,
        ofToday ? found.label() : "",
        related,
        notes,
        found.helps(),
        List.of(),
        found.about());
  }

  private Span marked(Span span) {
    return commit.isEmpty() || isOfToday(span)
        ? span
        : new Span(
            new SourceFile(PastPath.of(commit.get(), span.file().path()), span.file().text()),
            span.start(),
            span.end());
  }

  /** Lots and records of batches are those of today, whatever a record is held against. */
  static boolean isOfToday(Span span) {
    return isOfToday(span.file().path());
  }

  static boolean isOfToday(String path) {
    return DataFileKind.of(path)
        .filter(kind -> kind == DataFileKind.LOTS || kind == DataFileKind.BATCHES)
        .isPresent();
  }
}
