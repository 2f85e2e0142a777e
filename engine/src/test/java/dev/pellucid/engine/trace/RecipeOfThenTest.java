package dev.pellucid.engine.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.folder.Past;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.goal.AskedOn;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.engine.goal.RecallReport;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A line that a recipe lost after a batch of it was made, and that the record leaves out. */
class RecipeOfThenTest {
  private static final String RECIPE =
      "recipe FE-1 \"Feed\"\n  status draft\n\nmix\n  maize 90 %%\n  %s rest\n";

  @TempDir Path today = Path.of("");
  @TempDir Path then = Path.of("");

  private static void text(Path folder, String path, String text) throws IOException {
    Path file = folder.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  @BeforeEach
  void folders() throws IOException {
    text(then, "fish/FE-1.recipe", RECIPE.formatted("salt"));
    text(today, "fish/FE-1.recipe", RECIPE.formatted("limestone"));
    text(today, "ingredients/maize.yaml", "name: Maize\n");
    text(today, "ingredients/salt.yaml", "name: Salt\n");
    text(today, "ingredients/limestone.yaml", "name: Limestone\n");
    text(
        today,
        "lots/all.yaml",
        """
        lots:
          - {number: SA-1, ingredient: salt, received: 2026-11-01, quantity: 25 kg}
          - {number: LI-1, ingredient: limestone, received: 2026-11-01, quantity: 25 kg}
          - {number: MZ-1, ingredient: maize, received: 2026-11-01, quantity: 2500 kg}
        """);
    text(
        today,
        "batches/FE-1-2026-11-05-1.yaml",
        """
        size: 100 kg
        made-from: {commit: abc1234}
        weighed: [{line: maize, lot: MZ-1, weight: 90 kg}]
        """);
  }

  /** Knows one commit at most. */
  private record OneCommit(String commit, Texts folder) implements Past {
    @Override
    public boolean isKept() {
      return true;
    }

    @Override
    public Map<String, Then> at(Collection<String> commits, Predicate<String> read) {
      Map<String, Then> all = new HashMap<>();
      for (String one : commits) {
        all.put(one, one.equals(commit) ? Then.of(folder) : Then.gone("it is not there", ""));
      }
      return all;
    }

    @Override
    public History history(String place) {
      return History.NONE;
    }
  }

  private RecallReport recall(String known, String lot) throws IOException {
    FolderState state = FolderState.at(today).knowing(new OneCommit(known, Texts.at(then)));
    return Pellucid.recall(
        state, PrintedPaths.BELOW_FOLDER, AskedOn.today(LocalDate.of(2026, 11, 29)), lot, "");
  }

  private static List<String> found(RecallReport report) {
    return report.list().orElseThrow().answer().batches().stream()
        .map(one -> one.batch().number())
        .toList();
  }

  @Test
  @DisplayName("its recipe of then is asked for what the record leaves out")
  void found() throws IOException {
    assertEquals(List.of("FE-1-2026-11-05-1"), found(recall("abc1234", "SA-1")));
    assertEquals(List.of(), found(recall("abc1234", "LI-1")));
    assertEquals(List.of(), recall("abc1234", "SA-1").list().orElseThrow().unsearched());
  }

  @Test
  @DisplayName("where it cannot be had, that of today is asked and the list says so")
  void notHad() throws IOException {
    RecallReport report = recall("0000000", "LI-1");
    assertEquals(List.of("FE-1-2026-11-05-1"), found(report));
    List<String> told = report.list().orElseThrow().unsearched();
    assertEquals(1, told.size());
    assertTrue(
        told.get(0).startsWith("the recipe of the day on which FE-1-2026-11-05-1"), told.get(0));
  }
}
