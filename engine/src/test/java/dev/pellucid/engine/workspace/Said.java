package dev.pellucid.engine.workspace;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.finding.Finding;
import dev.pellucid.show.FindingText;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/** Everything that a folder says, kept and edited, or read afresh. */
final class Said {
  private static final Days DAY = Days.on(LocalDate.of(2026, 11, 25));

  private final Path empty;
  private final Map<String, Integer> made = new ConcurrentHashMap<>();

  /**
   * @param empty a folder without a file
   */
  Said(Path empty) {
    this.empty = empty;
  }

  /** What is compared of a recipe. */
  record Taken(Summary summary, String bits) {}

  private Taken taken(Checked recipe) {
    made.merge(recipe.code(), 1, Integer::sum);
    return new Taken(Summary.of(recipe), recipe.feed().map(Said::bits).orElse("none"));
  }

  /** The recipes that were checked since this was asked last. */
  List<String> made() {
    List<String> codes = List.copyOf(new TreeMap<>(made).keySet());
    made.clear();
    return codes;
  }

  Kept<Taken> fresh(SortedMap<String, String> folder) throws IOException {
    return Kept.of(Texts.at(empty).over(folder), DAY, Kept.Route.CHECK, this::taken);
  }

  /** A later state, in which a text that is the same is the same object. */
  static Kept<Taken> later(Kept<Taken> earlier, SortedMap<String, String> folder) {
    Texts texts = earlier.shared().texts();
    List<String> gone = new ArrayList<>(texts.paths());
    gone.removeAll(folder.keySet());
    return earlier.with(texts.without(gone).over(folder));
  }

  /** What a kept folder says otherwise than a fresh one after one of the edits. */
  Optional<String> difference(SortedMap<String, String> base, List<Edit> edits) throws IOException {
    SortedMap<String, String> folder = base;
    Kept<Taken> kept = fresh(folder);
    of(kept);
    for (Edit edit : edits) {
      folder = edit.on(folder);
      kept = later(kept, folder);
      String now = of(kept);
      String anew = of(fresh(folder));
      if (!now.equals(anew)) {
        return Optional.of("kept:\n" + now + "\nfresh:\n" + anew);
      }
    }
    return Optional.empty();
  }

  /** Every finding, and every figure of every recipe. */
  static String of(Kept<Taken> kept) {
    List<Taken> all = kept.all();
    Whole whole = Whole.of(kept.shared(), all.stream().map(Taken::summary).toList());
    StringBuilder said = new StringBuilder();
    for (Finding finding : whole.findings()) {
      said.append(FindingText.of(finding));
    }
    all.forEach(one -> said.append(one.summary().path()).append(one.bits()).append('\n'));
    return said.append(whole.notChecked())
        .append(whole.unmade())
        .append(whole.batches())
        .append(' ')
        .append(whole.limits())
        .append(whole.faults())
        .toString();
  }

  /** Every content at every end, and the cost, bit by bit. */
  private static String bits(ComputedFeed feed) {
    StringBuilder bits = new StringBuilder();
    for (Scenario end : Scenario.values()) {
      feed.nutrients()
          .inOrder()
          .forEach(one -> bits.append(' ').append(bits(feed.content(end, one.index()))));
    }
    return bits.append(' ').append(bits(feed.costPerKg())).toString();
  }

  private static String bits(double figure) {
    return Long.toHexString(Double.doubleToLongBits(figure));
  }
}
