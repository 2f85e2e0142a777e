package dev.pellucid.maven;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.compare.RecipeChange;
import dev.pellucid.engine.compare.RecipeChange.Cause;
import dev.pellucid.engine.compare.RecipeChange.How;
import dev.pellucid.engine.compare.RecipeChange.Moved;
import dev.pellucid.engine.goal.CompareReport;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.maven.PlantedRepository.State;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Any two of nine commits: exactly the feeds and figures that moved between them. */
class ComparedCommitsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String MAIZE = "ingredients/maize.yaml";
  private static final String PRICES = "prices/2026.yaml";
  private static final String HOUSE = "limits/house.limits";
  private static final String INNER = "premixes/P-IN.premix";

  @TempDir static Path root = Path.of("");
  private static PlantedRepository planted;

  private static final List<FolderState> ARCHIVED = new ArrayList<>();

  @BeforeAll
  static void plant() throws Exception {
    planted = PlantedRepository.in(root);
    for (int i = 0; i < planted.states().size(); i++) {
      ARCHIVED.add(NamedState.of(planted.feeds().toFile(), "s" + i));
    }
  }

  @TestFactory
  List<DynamicTest> betweenAnyTwo() {
    int count = planted.states().size();
    assertEquals(9, count);
    List<DynamicTest> tests = new ArrayList<>();
    for (int from = 0; from < count; from++) {
      for (int to = 0; to < count; to++) {
        int one = from;
        int other = to;
        tests.add(DynamicTest.dynamicTest("s" + from + " to s" + to, () -> between(one, other)));
      }
    }
    return tests;
  }

  @Test
  void layoutAloneAndARevertReportNothing() throws Exception {
    assertTrue(compared(planted.feeds(), "s7", "s8").text().endsWith("; no feed changes\n"));
    assertTrue(compared(planted.feeds(), "s0", "s2").text().endsWith("; no feed changes\n"));
  }

  @Test
  void aLimitRaisedInItsProfileIsNewlyBrokenAndComesFirst() throws Exception {
    List<RecipeChange> changes = compared(planted.feeds(), "s4", "s5").comparison().changes();
    assertEquals(List.of("R-04", "R-03"), changes.stream().map(RecipeChange::code).toList());
    assertEquals(1, changes.get(0).effect().orElseThrow().broken().size());
    assertEquals(List.of(), changes.get(1).effect().orElseThrow().broken());
    assertEquals(
        List.of("crude-protein min 15.0 % -> min 28.0 % (house)"),
        changes.get(1).effect().orElseThrow().bounds());
  }

  @Test
  void aShallowCloneALinkedTreeAndADetachedHeadDo(@TempDir Path elsewhere) throws Exception {
    Path shallow = elsewhere.resolve("shallow");
    PlantedRepository.git(
        elsewhere, "clone", "-q", "--depth", "1", root.toUri().toString(), shallow.toString());
    Path feeds = shallow.resolve("mill/feeds");
    assertTrue(compared(feeds, "HEAD", "").text().endsWith("; no feed changes\n"));
    GitTrouble unknown = assertThrows(GitTrouble.class, () -> compared(feeds, "HEAD~1", ""));
    String said = String.valueOf(unknown.getMessage());
    assertTrue(said.contains("git fetch --unshallow"), said);

    Path linked = elsewhere.resolve("linked");
    PlantedRepository.git(root, "worktree", "add", "-q", "--detach", linked.toString(), "s1");
    CompareReport report = compared(linked.resolve("mill/feeds"), "s0", "");
    assertEquals(
        List.of("R-01"), report.comparison().changes().stream().map(RecipeChange::code).toList());
  }

  @Test
  void aBranchIsHeldAgainstWhereItBegan(@TempDir Path elsewhere) throws Exception {
    Path tree = elsewhere.resolve("branch");
    PlantedRepository.git(root, "worktree", "add", "-q", "-b", "side", tree.toString(), "s3");
    Path feeds = tree.resolve("mill/feeds");
    // The main line went on to s8, and nothing came on the branch.
    assertTrue(compared(feeds, "s8...", "").text().endsWith("; no feed changes\n"));
    assertTrue(compared(feeds, "s8...side", "").text().endsWith("; no feed changes\n"));
    assertEquals(compared(feeds, "s3", "s8").text(), compared(feeds, "side...s8", "").text());
    assertTrue(said(feeds, "s8...side", "s4").contains("leave one of the two out"));
    assertTrue(said(feeds, "none...", "").contains("none is neither a folder nor a revision"));
    PlantedRepository.git(tree, "checkout", "-q", "--orphan", "alone");
    PlantedRepository.git(tree, "commit", "-q", "--allow-empty", "-m", "Begin anew");
    assertTrue(said(feeds, "s8...", "").contains("no history in common"), said(feeds, "s8...", ""));
  }

  private static String said(Path feeds, String from, String to) {
    GitTrouble trouble = assertThrows(GitTrouble.class, () -> compared(feeds, from, to));
    return String.valueOf(trouble.getMessage());
  }

  @Test
  void whatMovesFurtherThanAllowedIsTold() throws Exception {
    CompareReport report = compared(planted.feeds(), "s0", "s1");
    assertEquals(List.of(), beyond(report, 3, 10));
    assertEquals(
        List.of("R-01: cost rises by 2.222 %, allowed is 2 % without a waiver of a limit on cost"),
        beyond(report, 2, 10));
    assertEquals(
        List.of(
            "R-01: crude-protein rises by 5.891 %, allowed is 5 % without a waiver of a limit on"
                + " it"),
        beyond(report, 3, 5));
  }

  private static List<String> beyond(CompareReport report, double cost, double nutrient) {
    return report.beyond(OptionalDouble.of(cost), OptionalDouble.of(nutrient));
  }

  private static CompareReport compared(Path feeds, String from, String to)
      throws IOException, GitTrouble {
    ComparedStates states = ComparedStates.of(new Git(feeds.toFile()), from, to);
    return Pellucid.compare(states.from(), states.to(), DAY, "compare.html");
  }

  private static void between(int from, int to) throws IOException {
    State was = planted.states().get(from);
    State is = planted.states().get(to);
    Map<String, RecipeChange> told = new TreeMap<>();
    Pellucid.compare(ARCHIVED.get(from), ARCHIVED.get(to), DAY, "compare.html")
        .comparison()
        .changes()
        .forEach(change -> told.put(change.code(), change));
    Set<String> expected = new TreeSet<>();
    for (String code : is.shares().keySet()) {
      String before = former(was, code);
      if (changes(was, before, is, code)) {
        expected.add(code);
        assertTrue(told.containsKey(code), code + " is missing of " + told.keySet());
        figures(was, before, is, code, Optional.ofNullable(told.get(code)).orElseThrow());
      }
    }
    assertEquals(expected, told.keySet());
  }

  private static String former(State was, String code) {
    return was.shares().containsKey(code) ? code : code.equals("R-90") ? "R-09" : "R-90";
  }

  private static boolean changes(State was, String before, State is, String code) {
    return !before.equals(code)
        || edited(was, before, is, code)
        || was.cost(before) != is.cost(code)
        || was.protein(before) != is.protein(code)
        || (is.isOfHouse(code) && was.houseMinimum() != is.houseMinimum());
  }

  private static boolean edited(State was, String before, State is, String code) {
    return !Arrays.equals(was.share(before), is.share(code));
  }

  private static void figures(
      State was, String before, State is, String code, RecipeChange change) {
    How how =
        edited(was, before, is, code)
            ? How.EDITED
            : before.equals(code) ? How.BY_DATA : How.RENAMED;
    assertEquals(how, change.how(), code);
    assertEquals(was.cost(before), change.costBefore().orElseThrow(), 1e-12, code);
    assertEquals(is.cost(code), change.costAfter().orElseThrow(), 1e-12, code);
    List<Moved> moved =
        change.effect().stream()
            .flatMap(effect -> effect.moved().stream())
            .filter(one -> one.nutrient().equals("crude-protein"))
            .toList();
    if (was.protein(before) == is.protein(code)) {
      assertEquals(List.of(), moved, code);
    } else {
      assertEquals(1, moved.size(), code);
      assertEquals(was.protein(before) / 100, moved.get(0).before(), 1e-12, code);
      assertEquals(is.protein(code) / 100, moved.get(0).after(), 1e-12, code);
    }
    List<String> because = change.because().stream().map(Cause::path).toList();
    assertEquals(causes(was, before, is, code), because, code);
  }

  /** The data files behind it that differ; its own text only beside another. */
  private static List<String> causes(State was, String before, State is, String code) {
    List<String> causes = new ArrayList<>();
    if (was.maizeProtein() != is.maizeProtein() && is.holdsMaize(code)) {
      causes.add(MAIZE);
    }
    if (was.houseMinimum() != is.houseMinimum() && is.isOfHouse(code)) {
      causes.add(HOUSE);
    }
    boolean edited = edited(was, before, is, code);
    if (edited) {
      causes.add("mash/" + code + ".recipe");
    }
    if (was.lysine() != is.lysine() && is.holdsPremix(code)) {
      causes.add(INNER);
    }
    if (was.wheatPrice() != is.wheatPrice() && is.holdsWheat(code)) {
      causes.add(PRICES);
    }
    return edited && causes.size() == 1 ? List.of() : causes;
  }
}
