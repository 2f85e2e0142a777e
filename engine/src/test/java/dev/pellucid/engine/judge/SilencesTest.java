package dev.pellucid.engine.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.pellucid.engine.check.SmallFolder;
import dev.pellucid.engine.compute.Composition;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an ingredient does not tell, and only what matters for the recipe. */
class SilencesTest {
  private static final String HEAD = "  species  european-seabass\nmix\n  one  100 %\n";

  @TempDir Path root = Path.of("");
  private SmallFolder folder;

  /** A marine fish, which cannot make taurine, and a poison that is judged where it is told. */
  @BeforeEach
  void aMarineFish() throws IOException {
    folder =
        new SmallFolder(root)
            .with(
                "nutrients/9-more.yaml",
                """
                taurine:
                  title: Taurine
                  unit: "%"
                  stability: stable
                mercury:
                  title: Mercury
                  unit: mg/kg
                  judged: where-told
                  stability: stable
                epa:
                  title: EPA
                  unit: "%"
                  part-of: crude-fat
                  stability: stable
                dha:
                  title: DHA
                  unit: "%"
                  part-of: crude-fat
                  stability: stable
                long-chain:
                  title: EPA and DHA
                  unit: "%"
                  formula: epa + dha
                  source: handbook
                """)
            .with(
                "species/european-seabass.yaml",
                """
                name: European seabass
                groups: [marine-fish]
                habits: [sinking]
                needs-told: [taurine]
                """);
  }

  private void one(String contents, String more) throws IOException {
    folder.with(
        "ingredients/one.yaml",
        "name: One\ngroups: []\nform: meal\ncontents:\n  - source: workshop\n    moisture: 10 %\n    "
            + contents.replace(", ", "\n    ")
            + "\n"
            + more);
  }

  private static String caps(String rows) {
    return "caps:\n" + rows;
  }

  private static String cap(String species, String max) {
    return "  - {species: "
        + species
        + ", max: "
        + max
        + ", because: nobody saw harm, source: workshop}\n";
  }

  private static String digested(String coefficients) {
    return "digestibility:\n  - {source: workshop, " + coefficients + "}\n";
  }

  /** Each silence in a word or two, in order. */
  private List<String> silences() throws IOException {
    Shared shared = Shared.of(ReadFolder.of(Texts.at(root)), Days.on(LocalDate.of(2026, 11, 25)));
    Ingredient one = Objects.requireNonNull(shared.tables().ingredients().get("one"));
    ResolvedRecipe recipe = Streamed.judged(shared, "A-1.recipe").recipe().orElseThrow().recipe();
    Composition told = new FeedComputer(shared.tables()).composition(one, recipe);
    return Silences.of(one, told, recipe, shared.tables().nutrients()).stream()
        .map(
            silence ->
                silence.<String>byKind(
                    content ->
                        content.nutrient().name() + " for " + content.limit().subject().text(),
                    cap -> "cap for " + cap.species().name(),
                    part -> "digestibility of " + part.whole().name(),
                    need -> need.nutrient().name() + " as needed"))
        .toList();
  }

  @Test
  void allThatIsNotToldInItsOrder() throws IOException {
    one("crude-protein: 40 %", "");
    folder.recipe(HEAD + "limits\n  mercury  max 0.2 mg/kg\n  zinc  max 150 mg/kg\n");
    assertEquals(
        List.of(
            "mercury for mercury",
            "zinc for zinc",
            "cap for european-seabass",
            "digestibility of crude-protein",
            "taurine as needed"),
        silences());
  }

  @Test
  void whatIsToldIsNoSilenceNorIsNone() throws IOException {
    one(
        "crude-protein: 40 %, taurine: 0.1 %, mercury: none, zinc: below 60 mg/kg",
        caps(cap("marine-fish", "none")) + digested("species: marine-fish, crude-protein: 80 %"));
    folder.recipe(HEAD + "limits\n  mercury  max 0.2 mg/kg\n  zinc  max 150 mg/kg\n");
    assertEquals(List.of(), silences());
  }

  @Test
  void figuresOfAnotherSpeciesAreNone() throws IOException {
    one(
        "crude-protein: 40 %, taurine: 0.1 %",
        caps(cap("salmonids", "10 %")) + digested("species: salmonids, crude-protein: 80 %"));
    folder.recipe(HEAD);
    assertEquals(List.of("cap for european-seabass", "digestibility of crude-protein"), silences());
  }

  @Test
  void aMinimumAsksNothingAndTheLowerSumOfARatioDoes() throws IOException {
    one("taurine: none", caps(cap("marine-fish", "none")));
    folder.recipe(HEAD + "limits\n  zinc  min 20 mg/kg\n  lysine : crude-protein  min 5 %\n");
    assertEquals(
        List.of("crude-protein for lysine : crude-protein", "digestibility of crude-protein"),
        silences());
  }

  @Test
  void ofASumThatFollowsWhatIsMissingIsNamedOnce() throws IOException {
    one(
        "crude-fat: 9 %, epa: 1 %, crude-protein: none, taurine: none",
        caps(cap("marine-fish", "none")));
    folder.recipe(HEAD + "limits\n  long-chain  max 3 %\n  long-chain + epa  max 4 %\n");
    assertEquals(List.of("dha for long-chain"), silences());
  }

  @Test
  void whatABoundLeavesNoRoomForIsNotMissing() throws IOException {
    one("crude-fat: none, crude-protein: 1 %, taurine: none", caps(cap("marine-fish", "none")));
    folder.recipe(HEAD + "limits\n  long-chain  max 3 %\n");
    assertEquals(List.of(), silences());
  }

  @Test
  void withoutSpeciesOnlyContentsAreAskedFor() throws IOException {
    one("crude-protein: 40 %", "");
    folder.recipe("mix\n  one  100 %\nlimits\n  mercury  max 0.2 mg/kg\n");
    assertEquals(List.of("mercury for mercury"), silences());
  }
}
