package dev.pellucid.engine.workspace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.finding.Finding;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Changes of many lines are looked for in the first recipes that need one, in the order of their
 * paths, in a folder that is read once and in one that is kept.
 */
class FirstSolvedTest {
  private static final String RECIPE = "catfish/CG-36.recipe";
  private static final Days DAY = Days.on(LocalDate.of(2026, 11, 25));

  /** So many copies more than there are recipes in which one is looked for. */
  private static final int MORE = 3;

  @Test
  void theFirstByTheirPathsAreSolved() throws IOException {
    Texts example = Texts.at(Example.whole()).held();
    List<String> besides = new ArrayList<>(example.paths());
    besides.removeIf(
        path ->
            !path.endsWith(".figures")
                && !path.endsWith(".recipe")
                && !path.startsWith("batches/")
                && !path.startsWith("lots/"));
    String text = example.read(RECIPE, new ArrayList<>()).orElseThrow().text();
    String broken = text.replace("min 34 %     in", "min 60 %     in");
    Map<String, String> many = new TreeMap<>();
    for (int i = 10; i < 10 + Streamed.SOLVED + MORE; i++) {
      String code = "CG-" + i + "S";
      many.put("catfish/" + code + ".recipe", broken.replace("recipe CG-36", "recipe " + code));
    }
    Texts folder = example.without(besides).over(many);

    List<String> once =
        Streamed.check(Shared.of(ReadFolder.of(folder), DAY), FirstSolvedTest::helps);
    Kept<String> kept = Kept.of(folder, DAY, Kept.Route.CHECK, FirstSolvedTest::helps);
    assertEquals(once, kept.all());
    assertEquals(Streamed.SOLVED, solved(once));
    assertTrue(once.get(Streamed.SOLVED).contains("no change of one line or two"));

    // Where the first is put right, one more comes among the first.
    Map<String, String> fixed = new TreeMap<>(many);
    String first = fixed.keySet().iterator().next();
    fixed.computeIfPresent(first, (path, was) -> was.replace("min 60 %     in", "min 34 %     in"));
    Texts later = example.without(besides).over(fixed);
    Kept<String> next = kept.with(later);
    List<String> fresh =
        Streamed.check(Shared.of(ReadFolder.of(later), DAY), FirstSolvedTest::helps);
    assertEquals(fresh, next.all());
    assertEquals(Streamed.SOLVED, solved(fresh));
    assertTrue(fresh.get(Streamed.SOLVED).contains("no change of shares"));
  }

  private static int solved(List<String> helps) {
    int solved = 0;
    for (String help : helps) {
      solved += help.contains("no change of shares") ? 1 : 0;
    }
    return solved;
  }

  private static String helps(Checked recipe) {
    List<String> helps = new ArrayList<>();
    for (Finding finding : recipe.findings()) {
      helps.addAll(finding.helps());
    }
    return String.join("; ", helps);
  }
}
