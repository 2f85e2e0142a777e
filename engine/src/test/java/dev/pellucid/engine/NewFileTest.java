package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.folder.Bundled;
import dev.pellucid.engine.form.Form;
import dev.pellucid.engine.goal.CheckReport;
import dev.pellucid.engine.goal.FolderLayout;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.engine.goal.NewReport;
import dev.pellucid.finding.Finding;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.io.FileUtils;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each new file says what a person must still give, and nothing else; filled in, it passes. */
class NewFileTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  private static final Pattern USUAL =
      Pattern.compile("([a-z0-9-]+): ____ \\S+  # usually ([0-9.]+) to [0-9.]+ ");

  @TempDir Path root = Path.of("");

  @BeforeEach
  void copy() throws IOException {
    FileUtils.copyDirectory(
        Example.OWN.toFile(), root.toFile(), file -> !file.getName().equals("target"));
  }

  private FolderState folder() {
    return FolderState.at(root).over(Bundled.ofThisVersion());
  }

  private NewReport asked(Map<String, String> typed) throws IOException {
    return Pellucid.newFile(folder(), DAY, typed);
  }

  private Form written(Map<String, String> typed) throws IOException {
    NewReport report = asked(typed);
    assertEquals("", report.problem().orElse(""));
    assertFalse(report.write(root).isEmpty());
    return report.form().orElseThrow();
  }

  /** The lines of a file of which a check says that something is to be given, and no more. */
  private List<Integer> told(String path) throws IOException {
    CheckReport before = checked(path);
    List<Integer> lines = new ArrayList<>();
    for (Finding finding : before.shown()) {
      assertEquals(path, finding.span().file().path(), finding::headline);
      assertTrue(finding.code().text().endsWith("to-be-given"), finding::headline);
      assertTrue(finding.headline().endsWith(" is still to be given"), finding::headline);
      assertFalse(finding.helps().isEmpty(), finding::headline);
      lines.add(finding.span().from().line());
    }
    return lines;
  }

  private CheckReport checked(String path) throws IOException {
    assertTrue(Files.exists(root.resolve(path)), path);
    return Pellucid.check(folder(), DAY);
  }

  private static List<Integer> marked(String text) {
    List<Integer> lines = new ArrayList<>();
    List<String> all = text.lines().toList();
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).split("#", 2)[0].contains("____")) {
        lines.add(i + 1);
      }
    }
    return lines;
  }

  /** What is marked is told and nothing else. */
  private Form exactlyTold(int least, Map<String, String> typed) throws IOException {
    Form form = written(typed);
    assertEquals(marked(form.text()), told(form.path()).stream().sorted().toList());
    assertEquals(marked(form.text()).size(), form.toGive());
    assertTrue(form.toGive() >= least, form::text);
    return form;
  }

  /** Writes figures into the places of marks, line by line. */
  private void filled(Form form, Map<String, String> figures) throws IOException {
    StringBuilder text = new StringBuilder();
    for (String line : form.text().lines().toList()) {
      String filled = line;
      if (line.split("#", 2)[0].contains("____")) {
        String key =
            figures.keySet().stream()
                .filter(one -> line.strip().replaceAll(" +", " ").startsWith(one))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no figure for " + line));
        for (String figure : String.valueOf(figures.get(key)).split(" ", -1)) {
          filled = filled.replaceFirst("____", figure);
        }
      }
      text.append(filled).append('\n');
    }
    Files.writeString(root.resolve(form.path()), text);
  }

  private void nothingIsTold() throws IOException {
    CheckReport report = Pellucid.check(folder(), DAY);
    assertEquals(
        List.of(),
        report.shown().stream()
            .map(one -> one.span().file().path() + ": " + one.headline())
            .toList());
  }

  /** With figures as long as the mark it lies as the goal format would lay it. */
  private void isLaidOut(Form form) throws IOException {
    Files.writeString(root.resolve(form.path()), form.text().replace("____", "12.5"));
    FolderLayout layout = FolderLayout.of(root);
    assertEquals(List.of(), layout.changes().stream().map(FolderLayout.Change::laidOut).toList());
    assertFalse(layout.leftAlone().contains(form.path()));
  }

  @Test
  void aRecipeLikeOneThatIsThere() throws IOException {
    Form form = exactlyTold(20, Map.of("recipe", "KG-34", "like", "KG-33"));
    assertEquals("carp/KG-34.recipe", form.path());
    assertTrue(form.text().contains("  meets     carp-grower\n"), form::text);
    Map<String, String> figures = figuresOf("carp/KG-33.recipe", form);
    filled(form, figures);
    CheckReport report = Pellucid.check(folder(), DAY);
    assertEquals(List.of(), report.shown().stream().map(Finding::headline).toList());
    isLaidOut(form);
  }

  /** Figures of a file for the same lines of a form. */
  private Map<String, String> figuresOf(String path, Form form) throws IOException {
    Map<String, String> figures = new TreeMap<>(Comparator.reverseOrder());
    for (String line : form.text().lines().toList()) {
      int mark = line.indexOf("____");
      if (mark >= 0) {
        String key = line.substring(0, mark).strip().replaceAll(" +", " ");
        String there =
            Files.readString(root.resolve(path))
                .lines()
                .map(one -> one.strip().replaceAll(" +", " "))
                .filter(one -> one.startsWith(key + " "))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no line " + key));
        List<String> words = List.of(there.substring(key.length()).strip().split(" ", -1));
        figures.put(
            key, words.get(1).equals("to") ? words.get(0) + " " + words.get(2) : words.get(0));
      }
    }
    return figures;
  }

  /** Nothing but what comes with the plugin, and prices. */
  private void withoutFeeds() throws IOException {
    for (String folder :
        List.of("carp", "catfish", "trout", "shrimp", "premixes", "batches", "practice")) {
      FileUtils.deleteDirectory(root.resolve(folder).toFile());
    }
    String settings = Files.readString(root.resolve("pellucid.yaml"));
    Files.writeString(
        root.resolve("pellucid.yaml"), settings.substring(0, settings.indexOf("# So that")));
  }

  private List<Integer> toldOf(Form form) throws IOException {
    return Pellucid.check(folder(), DAY).shown().stream()
        .filter(one -> one.span().file().path().equals(form.path()))
        .map(one -> one.span().from().line())
        .sorted()
        .toList();
  }

  @Test
  void aRecipeOfASpeciesThatHasNone() throws IOException {
    withoutFeeds();
    Form form = written(Map.of("recipe", "NEW-1", "species", "rainbow-trout"));
    assertEquals("rainbow-trout/NEW-1.recipe", form.path());
    assertEquals(marked(form.text()), toldOf(form));
    assertTrue(form.text().contains("rest\n"), form::text);
    assertTrue(form.text().contains("  meets     trout-"), form::text);
  }

  @Test
  void aPremixWhereThereIsNone() throws IOException {
    withoutFeeds();
    Form form = written(Map.of("premix", "MIN-1"));
    assertEquals(marked(form.text()), toldOf(form));
    assertTrue(form.text().contains("mg/kg   from zinc-sulphate\n"), form::text);
    isLaidOut(form);
  }

  @ParameterizedTest
  @CsvSource({"MIN-WW", "VIT-WW", "VIT-TR"})
  void aPremixLikeOneThatIsThere(String model) throws IOException {
    Form form = exactlyTold(9, Map.of("premix", "NEW-2", "like", model));
    filled(form, figuresOf("premixes/" + model + ".premix", form));
    nothingIsTold();
    isLaidOut(form);
  }

  @ParameterizedTest
  @CsvSource({
    "oilseed-meals",
    "cereals",
    "fish-meals",
    "fish-oils",
    "phosphates",
    "trace-salts",
    "vitamins",
    "roots"
  })
  void anIngredientOfAGroup(String group) throws IOException {
    exactlyTold(5, Map.of("ingredient", "lupin-meal", "group", group));
  }

  @Test
  void anIngredientThatIsFilledIn() throws IOException {
    Form form = exactlyTold(8, Map.of("ingredient", "lupin-meal", "group", "oilseed-meals"));
    Map<String, String> figures = new LinkedHashMap<>();
    figures.put("- source", "workshop");
    figures.put("moisture", "10.5");
    figures.put("crude-protein", "34");
    figures.put("crude-fat", "9");
    figures.put("crude-fibre", "14");
    figures.put("crude-ash", "4");
    Matcher usual = USUAL.matcher(form.text());
    while (usual.find()) {
      BigDecimal twice = new BigDecimal(usual.group(2)).multiply(BigDecimal.valueOf(2));
      figures.putIfAbsent(usual.group(1), twice.toPlainString());
    }
    assertTrue(figures.size() > 15, figures::toString);
    figures.putAll(Map.of("free-gossypol", "1", "hydrocyanic-acid", "5"));
    String source = Files.readString(root.resolve("sources.yaml"));
    Files.writeString(
        root.resolve("sources.yaml"),
        source + "workshop:\n  standing: own-analysis\n  cite: Analysis of our own\n");
    List<String> given = new ArrayList<>();
    for (String line : form.text().lines().toList()) {
      boolean known = figures.keySet().stream().anyMatch(line.strip()::startsWith);
      given.add(known ? line : line.replaceFirst("____ \\S+", "none"));
    }
    filled(form.with(String.join("\n", given) + "\n"), figures);
    nothingIsTold();
  }

  @Test
  void aLot() throws IOException {
    Form form = exactlyTold(5, Map.of("lot", "MZ-115", "of", "maize"));
    filled(
        form,
        Map.of(
            "best-before",
            "2027-06-01",
            "quantity",
            "3000",
            "inspection",
            "passed",
            "supplier",
            "Quern"));
    nothingIsTold();
  }

  @Test
  void aBatchWithTheLotsThatItsSheetNames() throws IOException {
    Form form = exactlyTold(0, Map.of("batch", "CG-36"));
    assertEquals("batches/CG-36-2026-11-25-1.yaml", form.path());
    assertTrue(form.text().contains("size: 60 kg\n"), form::text);
    assertTrue(form.text().contains("{line: maize, lot: MZ-114}"), form::text);
    assertTrue(form.text().contains("no lot of "), form::text);
    Form second = exactlyTold(0, Map.of("batch", "CG-36"));
    assertEquals("batches/CG-36-2026-11-25-2.yaml", second.path());
  }

  @Test
  void aFileThatComesWithThePlugin() throws IOException {
    Form form = exactlyTold(0, Map.of("own", "practice/bounds.yaml"));
    assertEquals("practice/bounds.yaml", form.path());
    assertEquals(Bundled.ofThisVersion().text("practice/bounds.yaml").orElseThrow(), form.text());
  }

  @Test
  void nothingIsWrittenOver() throws IOException {
    NewReport report = asked(Map.of("lot", "MZ-115", "of", "maize"));
    Files.writeString(root.resolve("lots/MZ-115.yaml"), "mine");
    assertEquals(List.of(), report.write(root));
    assertEquals("mine", Files.readString(root.resolve("lots/MZ-115.yaml")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "recipe=cg-36 | cannot be the code of a recipe",
        "recipe=CG-36 | is there already, in catfish/CG-36.recipe",
        "recipe=MIN-WW | is there already, in premixes/MIN-WW.premix",
        "recipe=NEW-1 | -Dpellucid.species is to say the species",
        "recipe=NEW-1,species=common-crap | did you mean common-carp?",
        "recipe=NEW-1,like=CG-3 | is no recipe here",
        "premix=new | cannot be the code of a premix",
        "premix=VIT-WW | is there already",
        "premix=NEW-2,like=VIT | is no premix here",
        "ingredient=Lupin Meal | cannot be the name of an ingredient",
        "ingredient=maize | comes with the plugin",
        "ingredient=sunflower-meal-38 | is there already, in ingredients/sunflower-meal-38.yaml",
        "ingredient=lupin-meal | -Dpellucid.group is to say the group",
        "ingredient=lupin-meal,group=oilseed-meal | did you mean oilseed-meals?",
        "lot=../x,of=maize | cannot be the number of a lot",
        "lot=mz-114,of=maize | is there already, in lots/2026-11.yaml",
        "lot=MZ-115,of=mais | is no ingredient here",
        "batch=CG-37 | is no recipe here",
        "own=practice/bound.yaml | did you mean practice/bounds.yaml",
        "own=sources.yaml | adds to that of the plugin",
        "own=practice/sequence.yaml | is there already",
        "own=../pellucid.yaml | is no file that comes with the plugin here",
        "recipe=A,lot=B | one thing at a time; write one of",
        "day=x | nothing is asked for; write one of"
      })
  void whatCannotBeIsSaid(String typed, String said) throws IOException {
    Map<String, String> asked = new TreeMap<>();
    for (String one : typed.split(",", -1)) {
      asked.put(one.split("=", 2)[0], one.split("=", 2)[1]);
    }
    NewReport report = asked(asked);
    String problem = report.problem().orElse("");
    assertTrue(problem.contains(said), problem);
    assertTrue(report.form().isEmpty());
  }
}
