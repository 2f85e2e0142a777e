package dev.pellucid.engine.workspace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.SheetTexts;
import dev.pellucid.engine.compare.Comparison;
import dev.pellucid.engine.compare.FindingsMoved;
import dev.pellucid.engine.compare.Found;
import dev.pellucid.engine.compare.RecipeChange;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.goal.CheckGoal;
import dev.pellucid.engine.goal.CompareGoal;
import dev.pellucid.engine.goal.Sheet;
import dev.pellucid.engine.goal.SheetsGoal;
import dev.pellucid.engine.goal.Version;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Fingerprint;
import dev.pellucid.text.PrintedPaths;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Of any two states a comparison says no less than the difference of their two checks, each read
 * afresh, and names every feed and premix whose sheet or label is printed otherwise.
 */
class ComparedPairsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final int EACH_BUILD = 30;
  private static final int MOST_EDITS = 4;

  @TempDir Path empty;

  static Stream<Integer> seeds() {
    return IntStream.range(0, Integer.getInteger("pellucid.pairs", EACH_BUILD)).boxed();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void saysNoLessThanTheChecks(int seed) throws IOException {
    SortedMap<String, String> base = EditedFolder.texts();
    Editor editor = new Editor(seed, base);
    Random random = new Random(seed);
    List<Edit> edits = new ArrayList<>();
    SortedMap<String, String> first = edited(base, random.nextInt(MOST_EDITS), editor, edits);
    edits.clear();
    SortedMap<String, String> then = edited(first, 1 + random.nextInt(MOST_EDITS), editor, edits);
    // As often a change as one that is taken back.
    boolean back = random.nextBoolean();
    Texts was = texts(back ? then : first);
    Texts is = texts(back ? first : then);
    Comparison comparison =
        CompareGoal.of(was, is, PrintedPaths.BELOW_FOLDER, DAY, "compare.html").comparison();
    Map<String, String> paths = renamed(was, is, comparison);
    Map<String, Integer> before = counts(was, paths);
    Map<String, Integer> after = counts(is, Map.of());
    assertEquals(beyond(after, before), told(comparison, true, Map.of()), edits + " new");
    assertEquals(beyond(before, after), told(comparison, false, paths), edits + " gone");
    papers(was, is, comparison, edits);
  }

  private static SortedMap<String, String> edited(
      SortedMap<String, String> folder, int many, Editor editor, List<Edit> edits) {
    SortedMap<String, String> edited = folder;
    for (int i = 0; i < many; i++) {
      Edit edit = editor.next(edited);
      edits.add(edit);
      edited = edit.on(edited);
    }
    return edited;
  }

  private Texts texts(SortedMap<String, String> folder) throws IOException {
    return Texts.at(empty).over(folder);
  }

  /** How often each finding is said, by what it is known again. */
  private static Map<String, Integer> counts(Texts texts, Map<String, String> paths) {
    Map<String, Integer> counts = new TreeMap<>();
    for (Finding finding : CheckGoal.check(texts, DAY).findings()) {
      String path = finding.span().file().path();
      String known =
          finding.severity().word() + "|" + Fingerprint.of(finding, paths.getOrDefault(path, path));
      counts.merge(known, 1, Integer::sum);
    }
    return counts;
  }

  private static Map<String, Integer> beyond(
      Map<String, Integer> these, Map<String, Integer> others) {
    Map<String, Integer> beyond = new TreeMap<>();
    these.forEach(
        (known, count) -> {
          int more = count - others.getOrDefault(known, 0);
          if (more > 0) {
            beyond.put(known, more);
          }
        });
    return beyond;
  }

  private static Map<String, Integer> told(
      Comparison comparison, boolean fresh, Map<String, String> paths) {
    List<FindingsMoved> all = new ArrayList<>();
    comparison.changes().forEach(one -> all.add(one.findings()));
    comparison.premixes().forEach(one -> all.add(one.findings()));
    comparison.files().forEach(one -> all.add(one.findings()));
    Map<String, Integer> told = new TreeMap<>();
    for (FindingsMoved moved : all) {
      for (Found one : fresh ? moved.fresh() : moved.gone()) {
        String known =
            String.join(
                "|",
                one.severity().word(),
                one.code(),
                paths.getOrDefault(one.path(), one.path()),
                one.subject(),
                one.side());
        told.merge(known, 1, Integer::sum);
      }
    }
    return told;
  }

  /** Paths of recipes and premixes now, by those before, where they are not the same. */
  private static Map<String, String> renamed(Texts was, Texts is, Comparison comparison) {
    Map<String, String> formerly = new HashMap<>();
    for (RecipeChange change : comparison.changes()) {
      change.formerly().ifPresent(code -> formerly.put(code, change.code()));
    }
    Map<String, String> paths = new HashMap<>();
    for (String kind : List.of(".recipe", ".premix")) {
      Map<String, String> now = byStem(is.ending(kind), kind);
      byStem(was.ending(kind), kind)
          .forEach(
              (code, path) -> {
                String then = now.get(formerly.getOrDefault(code, code));
                if (then != null && !then.equals(path)) {
                  paths.put(path, then);
                }
              });
    }
    return paths;
  }

  /** Of recipes of one code the first counts, of premixes the last. */
  private static Map<String, String> byStem(List<String> paths, String kind) {
    Map<String, String> byStem = new TreeMap<>();
    for (String path : paths) {
      String stem = new SourceFile(path, "").stem();
      if (kind.equals(".premix")) {
        byStem.put(stem, path);
      } else {
        byStem.putIfAbsent(stem, path);
      }
    }
    return byStem;
  }

  private static void papers(Texts was, Texts is, Comparison comparison, List<Edit> edits) {
    Set<String> told = new TreeSet<>();
    comparison.changes().forEach(one -> told.add(one.code()));
    comparison.premixes().forEach(one -> told.add(one.code()));
    Map<String, String> before = sheets(was);
    sheets(is)
        .forEach(
            (code, sheet) -> {
              if (before.containsKey(code) && !sheet.equals(before.get(code))) {
                assertTrue(
                    told.contains(code), edits + " print " + code + " anew, told are " + told);
              }
            });
  }

  /** Without lots and records of batches: which lots a sheet names is not compared. */
  private static Map<String, String> sheets(Texts texts) {
    List<String> records =
        texts.paths().stream()
            .filter(path -> path.startsWith("lots/") || path.startsWith("batches/"))
            .toList();
    Map<String, String> sheets = new TreeMap<>();
    Version version = Version.committed("1a2b3c4");
    for (Sheet sheet : new SheetsGoal(texts.without(records), DAY, version).run().sheets()) {
      sheets.put(
          sheet.code(),
          SheetTexts.withoutFingerprint(sheet.text())
              + sheet.label().map(label -> label.text()).orElse(""));
    }
    return sheets;
  }
}
