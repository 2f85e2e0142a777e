package dev.pellucid.engine.workspace;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.End;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.finding.Finding;
import dev.pellucid.show.FindingText;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A folder that is kept and edited step by step says what one that is read afresh says, to the last
 * letter of every finding and the last bit of every figure.
 */
class KeptTest {
  private static final Days DAY = Days.on(LocalDate.of(2026, 11, 25));
  private static final int EACH_BUILD = 60;
  private static final int STEPS = 5;

  @TempDir Path empty;
  private SortedMap<String, String> base = new TreeMap<>();

  @BeforeEach
  void folder() throws IOException {
    base = EditedFolder.texts();
  }

  static Stream<Integer> seeds() {
    int many = Integer.getInteger("pellucid.sequences", EACH_BUILD);
    return IntStream.range(0, many).boxed();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void keptIsAsFresh(int seed) throws IOException {
    Editor editor = new Editor(seed, base);
    List<Edit> edits = new ArrayList<>();
    SortedMap<String, String> folder = base;
    for (int i = 0; i < STEPS; i++) {
      Edit edit = editor.next(folder);
      edits.add(edit);
      folder = edit.on(folder);
    }
    Optional<String> difference = difference(edits);
    if (difference.isPresent()) {
      List<Edit> few = shrunk(edits);
      throw new AssertionError(few + "\n" + difference(few).orElse(""));
    }
  }

  /** The fewest edits of these that still show a difference. */
  private List<Edit> shrunk(List<Edit> edits) throws IOException {
    for (int i = 0; i < edits.size(); i++) {
      List<Edit> fewer = new ArrayList<>(edits);
      fewer.remove(i);
      if (difference(fewer).isPresent()) {
        return shrunk(fewer);
      }
    }
    return edits;
  }

  /** What a kept folder says otherwise than a fresh one after some of the edits. */
  private Optional<String> difference(List<Edit> edits) throws IOException {
    SortedMap<String, String> folder = base;
    Kept<Taken> kept = fresh(folder);
    said(kept);
    for (Edit edit : edits) {
      folder = edit.on(folder);
      kept = kept.with(texts(kept.shared().texts(), folder));
      String now = said(kept);
      String anew = said(fresh(folder));
      if (!now.equals(anew)) {
        return Optional.of("kept:\n" + now + "\nfresh:\n" + anew);
      }
    }
    return Optional.empty();
  }

  /** What is compared of a recipe. */
  private record Taken(Summary summary, String bits) {
    static Taken of(Checked recipe) {
      return new Taken(Summary.of(recipe), recipe.feed().map(KeptTest::bits).orElse("none"));
    }
  }

  private Kept<Taken> fresh(SortedMap<String, String> folder) throws IOException {
    return Kept.of(Texts.at(empty).over(folder), DAY, Kept.Route.CHECK, Taken::of);
  }

  /** A later state, in which a text that is the same is the same object. */
  private static Texts texts(Texts earlier, SortedMap<String, String> folder) {
    List<String> gone = new ArrayList<>(earlier.paths());
    gone.removeAll(folder.keySet());
    return earlier.without(gone).over(folder);
  }

  private static String said(Kept<Taken> kept) {
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
        .append(new TreeMap<>(whole.more()))
        .append(whole.faults())
        .toString();
  }

  /** Every content at every end, and the cost, bit by bit. */
  private static String bits(ComputedFeed feed) {
    StringBuilder bits = new StringBuilder();
    for (End end : End.values()) {
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
