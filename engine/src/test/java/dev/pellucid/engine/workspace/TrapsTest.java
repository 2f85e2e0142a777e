package dev.pellucid.engine.workspace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import dev.pellucid.engine.workspace.Said.Taken;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Edits on which something hangs that is easily forgotten: each is seen, and what a kept folder
 * then says is what a fresh one says. Where little hangs on it, little is checked again.
 */
class TrapsTest {
  private static final String CG36 = "recipes/CG-36.recipe";
  private static final String CG40 = "recipes/CG-40.recipe";
  private static final String MAIZE = "ingredients/maize.yaml";
  private static final List<String> ALL = List.of("A-1", "CG-36", "CG-40");

  @TempDir Path empty;
  private SortedMap<String, String> base = new TreeMap<>();

  @BeforeEach
  void folder() throws IOException {
    base = EditedFolder.texts();
  }

  /** The recipes that are checked again after the last of some edits, which must be seen. */
  private List<String> again(Edit... edits) throws IOException {
    Said said = new Said(empty);
    SortedMap<String, String> folder = base;
    Kept<Taken> kept = said.fresh(folder);
    String before = "";
    for (Edit edit : edits) {
      before = Said.of(kept);
      said.made();
      folder = edit.on(folder);
      kept = Said.later(kept, folder);
    }
    String after = Said.of(kept);
    List<String> made = said.made();
    assertNotEquals(before, after, "nothing came of the edit");
    assertEquals(Optional.empty(), said.difference(base, List.of(edits)));
    return made;
  }

  /** A record of a batch may name any ingredient, so a recipe with one hangs on all of them. */
  private Edit noRecords() {
    SortedMap<String, Optional<String>> gone = new TreeMap<>();
    base.keySet().stream()
        .filter(path -> path.startsWith("batches/"))
        .forEach(path -> gone.put(path, Optional.empty()));
    return new Edit("remove all records", gone);
  }

  private Edit change(String path, String old, String fresh) {
    String text = base.getOrDefault(path, "");
    assertNotEquals(text, text.replace(old, fresh), old + " is not in " + path);
    return Edit.write("change", path, text.replace(old, fresh));
  }

  @Test
  void anIngredientOfTheSameNameHasOtherContents() throws IOException {
    assertEquals(ALL, again(change(MAIZE, "crude-protein: 8.75", "crude-protein: 9.75")));
  }

  @Test
  void aPlantConcernsThoseThatNameItAlone() throws IOException {
    Edit edit = change("plant/works.yaml", "shrink: 2 %", "shrink: 3 %");
    assertEquals(List.of("CG-40"), again(noRecords(), edit));
  }

  @Test
  void theUsualPlantConcernsAllThatIsMadeThere() throws IOException {
    assertEquals(ALL, again(change("plant/shed.yaml", "shrink: 1.5 %", "shrink: 2.5 %")));
  }

  @Test
  void anotherPlantBecomesTheUsualOne() throws IOException {
    assertEquals(ALL, again(change("pellucid.yaml", "plant: shed", "plant: works")));
  }

  @Test
  void thePlantThatWasMissingIsThere() throws IOException {
    Edit gone =
        new Edit("remove", new TreeMap<>(Map.of("plant/works.yaml", Optional.<String>empty())));
    String works = base.getOrDefault("plant/works.yaml", "");
    Edit back = Edit.write("bring back", "plant/works.yaml", works);
    assertEquals(List.of("CG-40"), again(noRecords(), gone, back));
  }

  @Test
  void anIngredientConcernsThoseThatHoldItAlone() throws IOException {
    Edit edit = change("ingredients/retinyl-acetate.yaml", "vitamin-a: ", "vitamin-a: 1");
    assertEquals(List.of("CG-36", "CG-40"), again(noRecords(), edit));
  }

  @Test
  void aRecipeConcernsItselfAndThoseThatWorkItIn() throws IOException {
    assertEquals(
        List.of("CG-36", "CG-40"),
        again(change(CG36, "18.00 %      within", "17.50 %      within")));
    assertEquals(List.of("CG-40"), again(change(CG40, "19.00 %", "18.50 %")));
  }

  @Test
  void aSourceOfReworkThatBreaksIsToMendFirst() throws IOException {
    assertEquals(List.of("CG-36", "CG-40"), again(change(CG36, "fish-meal  ", "no-such-meal  ")));
  }

  @Test
  void aSourceOfReworkThatIsGoneOrComesBackIsSeen() throws IOException {
    assertEquals(List.of("CG-40"), again(Edit.remove(CG36)));
    Edit back = Edit.write("bring back", CG36, base.getOrDefault(CG36, ""));
    assertEquals(List.of("CG-36", "CG-40"), again(Edit.remove(CG36), back));
  }

  @Test
  void whatIsLikeAWrongNameHangsOnAllNames() throws IOException {
    Edit slip = change(CG40, "  maize     ", "  maiz      ");
    Edit like = Edit.write("add", "ingredients/maiz1.yaml", base.getOrDefault(MAIZE, ""));
    assertEquals(List.of("CG-40"), again(noRecords(), slip, like));
  }

  @Test
  void aNameThatComesIsSeenByThoseThatMissedIt() throws IOException {
    Edit gone = Edit.remove(MAIZE);
    assertEquals(ALL, again(gone, Edit.write("bring back", MAIZE, base.getOrDefault(MAIZE, ""))));
  }

  @Test
  void aLawThatComesHoldsForAllThoughNobodyNamesIt() throws IOException {
    String law =
        base.getOrDefault("law/eu-other-fish.limits", "")
            .replace("eu-other-fish", "eu-more")
            .replace("zinc    ", "phosphorus")
            .replace("150 mg/kg", "100 mg/kg");
    assertEquals(ALL, again(Edit.write("add", "law/eu-more.limits", law)));
  }

  @Test
  void aProfileConcernsThoseThatMeetIt() throws IOException {
    Edit edit = change("limits/catfish-grower.limits", "min 33 %", "min 39 %");
    assertEquals(ALL, again(edit));
  }

  @Test
  void aRemarkOnTopMovesEachPlaceInTheFile() throws IOException {
    String text = base.getOrDefault("limits/catfish-grower.limits", "");
    Edit breaks =
        change(
            CG36, "  fish-meal                   18.00 %", "  fish-meal                   10.00 %");
    Edit remark =
        Edit.write("a remark on top of", "limits/catfish-grower.limits", "# one\n" + text);
    assertEquals(ALL, again(breaks, remark));
  }

  @Test
  void aNutrientThatComesMovesTheIndexOfOthers() throws IOException {
    String minerals = base.getOrDefault("nutrients/4-minerals.yaml", "");
    String more =
        "arsenic:\n  title: Arsenic\n  unit: mg/kg\n  part-of: crude-ash\n  stability: stable\n";
    assertEquals(
        ALL, again(Edit.write("put first in", "nutrients/4-minerals.yaml", more + minerals)));
  }

  @Test
  void aPremixInAPremixIsSeenThroughIt() throws IOException {
    Edit edit = change("premixes/VM-CAT.premix", "100 mg/kg", "150 mg/kg");
    assertEquals(List.of("CG-36", "CG-40"), again(edit));
    Edit outer = change("premixes/VM-ALL.premix", "80 %", "70 %");
    assertEquals(List.of("CG-40"), again(outer));
  }

  @Test
  void aPremixThatBreaksAndOneThatIsGoneAreNotTheSame() throws IOException {
    Edit broken = change("premixes/VM-CAT.premix", "wheat-middlings", "no-such-thing  ");
    assertEquals(List.of("CG-36", "CG-40"), again(broken, Edit.remove("premixes/VM-CAT.premix")));
  }

  @Test
  void whatALotHoldsConcernsTheRecipesWithRecords() throws IOException {
    Edit edit = change("lots/2026-11.yaml", "moisture: 6.0 %", "moisture: 16.0 %");
    assertEquals(List.of("A-1", "CG-36"), again(edit));
  }

  @Test
  void whatABatchLeavesConcernsTheOneThatFollows() throws IOException {
    Edit edit = change("batches/A-1-2026-11-22-1.yaml", "after: CG-36-2026-11-20-1\n", "");
    assertEquals(List.of("A-1", "CG-36"), again(edit));
  }

  @Test
  void aRecordOfARecipeWithoutOneIsSeen() throws IOException {
    Edit record = Edit.write("add", "batches/CG-40-2026-11-23-1.yaml", "size: 60 kg\n");
    assertEquals(ALL, again(record));
  }

  @Test
  void whatIsSaidOnceIsSaidOfTheFirstInTheOrderOfPaths() throws IOException {
    Edit first = Edit.move(CG40, "a/CG-40.recipe", base.getOrDefault(CG40, ""));
    assertEquals(List.of("CG-40"), again(first));
  }

  @Test
  void aFileThatIsEditedAndBroughtBackSaysWhatItSaid() throws IOException {
    Edit away = change(CG36, "44.00 %", "41.00 %");
    Edit back = Edit.write("bring back", CG36, base.getOrDefault(CG36, ""));
    assertEquals(List.of("CG-36", "CG-40"), again(away, back));
  }

  @Test
  void anIngredientThatWasRenamedIsFoundByItsOldName() throws IOException {
    String maize = base.getOrDefault(MAIZE, "");
    Edit moved = Edit.move(MAIZE, "ingredients/corn.yaml", maize);
    Edit formerly = Edit.write("change", "ingredients/corn.yaml", "formerly: [maize]\n" + maize);
    assertEquals(ALL, again(moved, formerly));
  }

  @Test
  void whetherAnyPriceIsThereBearsOnAllThatHaveNone() throws IOException {
    String prices = base.getOrDefault("prices/2026-11.yaml", "");
    String salt = prices.substring(0, prices.indexOf("prices:")) + "prices:\n  salt: 1 EUR/kg\n";
    Edit first = Edit.write("add", "prices/2026-11.yaml", salt);
    assertEquals(ALL, again(Edit.remove("prices/2026-11.yaml"), first));
  }

  @Test
  void aPriceFileThatBreaksMayHoldWhatIsMissing() throws IOException {
    String older = base.getOrDefault("prices/2026-11.yaml", "").replace("2026-11-01", "2026-01-01");
    Edit unpriced = change("prices/2026-11.yaml", "  maize: 0.24 EUR/kg\n", "");
    Edit whole =
        Edit.write("add", "prices/2026-01.yaml", older.replace("  maize: 0.24 EUR/kg\n", ""));
    Edit broken = Edit.write("break", "prices/2026-01.yaml", older.replace("salt: ", "salt: : "));
    assertEquals(ALL, again(unpriced, whole, broken));
  }
}
