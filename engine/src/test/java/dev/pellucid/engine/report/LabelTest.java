package dev.pellucid.engine.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Inlined;
import dev.pellucid.engine.label.BagLabel;
import dev.pellucid.engine.label.BagLabel.Statement;
import dev.pellucid.engine.plan.ExamplePlans;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.function.UnaryOperator;
import org.approvaltests.Approvals;
import org.junit.jupiter.api.Test;

class LabelTest {
  private static final ExamplePlans EXAMPLE = ExamplePlans.open();
  private static final String GROWER = "catfish/CG-36.recipe";

  private static BagLabel label(String path, UnaryOperator<String> change) {
    return EXAMPLE.label(path, change).orElseThrow();
  }

  private static List<String> names(BagLabel label, String heading) {
    return label.statements().stream()
        .filter(statement -> statement.heading().equals(heading))
        .map(Statement.Names.class::cast)
        .findFirst()
        .orElseThrow()
        .names();
  }

  @Test
  void asText() {
    Approvals.verify(LabelText.of(label(GROWER, text -> text)));
  }

  @Test
  void asHtml() throws IOException {
    Approvals.verify(Inlined.byName(LabelHtml.of(label("trout/TG-44.recipe", text -> text))));
  }

  @Test
  void everyRecipeHasALabelWithoutAPrice() {
    for (String path : EXAMPLE.recipes()) {
      BagLabel label = label(path, text -> text);
      String both = LabelText.of(label) + LabelHtml.of(label);
      for (String never : new String[] {"EUR", "NaN", "\r", "approved by law", "complies"}) {
        assertFalse(both.contains(never), path + " " + never);
      }
      assertEquals(path.contains("CG-36I"), both.contains(LabelHtml.DRAFT), path);
      String text = LabelText.of(label).replaceAll("\\s+", " ");
      assertTrue(text.contains("must check it against the law of the place"), path);
      assertTrue(LabelText.of(label).lines().allMatch(line -> line.length() <= 64), path);
    }
  }

  @Test
  void ingredientsFallByWeightAndPremixesAreOpened() {
    List<String> names = names(label(GROWER, text -> text), "Composition");
    // 44 %; 21.18 % and the carrier of the premix; 15 %; 14 %.
    assertEquals(
        List.of(
            "Soya (bean) meal, dehulled (produced from genetically modified soya)",
            "Wheat middlings",
            "Fish meal",
            "Maize"),
        names.subList(0, 4));
    assertTrue(names.contains("Calcium carbonate (limestone)"), "the carrier of MIN-WW");
    assertEquals(names.stream().distinct().toList(), names);
    // With the wheat middlings of the recipe down to that of the premix, they go down the list.
    List<String> other =
        names(
            label(
                GROWER,
                text ->
                    text.replace("rest         within 10 to 30 %", "14.95 %")
                        .replace("14.00 %      within 10 to 25 %", "rest")),
            "Composition");
    assertEquals(
        List.of("Maize", "Wheat middlings"),
        other.subList(1, 3),
        "14.95 % and what the premix brings is more than 15 % of fish meal");
  }

  private static List<BagLabel.Group> groups(BagLabel label, String heading) {
    return label.statements().stream()
        .filter(statement -> statement.heading().equals(heading))
        .map(Statement.Groups.class::cast)
        .findFirst()
        .orElseThrow()
        .groups();
  }

  @Test
  void additivesWithAMaximumForAnyAnimalComeFirstWithTheirAmount() {
    BagLabel label = label(GROWER, recipe -> recipe);
    List<BagLabel.Group> groups = groups(label, "Additives per kg");
    assertEquals(
        List.of("Compounds of trace elements", "Vitamins"),
        groups.stream().map(BagLabel.Group::name).toList());
    assertEquals(
        "Zinc sulphate, monohydrate (3b605): zinc 35.4 mg/kg", groups.get(0).names().get(0));
    // Fish have no maximum of vitamin A; poultry and calves have one.
    assertEquals(
        List.of(
            "Retinyl acetate (3a672a): vitamin A 9115 IU/kg",
            "Cholecalciferol (3a671): vitamin D3 1519 IU/kg"),
        groups.get(1).names().subList(0, 2));
    assertTrue(groups.get(1).names().contains("Biotin (3a880): 1.62 mg/kg"), groups.toString());
    assertEquals(
        List.of("Tocopherol extracts from vegetable oils (1b306(i))"),
        groups(label, "Other additives").get(0).names());
  }

  @Test
  void aFreeAminoAcidIsTellingGramsPerKg() {
    List<BagLabel.Group> groups =
        groups(label("trout/TG-44.recipe", recipe -> recipe), "Additives per kg");
    assertEquals(
        "L-lysine monohydrochloride, technically pure (3c322): lysine 3.15 g/kg",
        groups.get(0).names().get(0));
  }

  @Test
  void whatTheLawAsksForWhatIsInComesFirstOfTheCautions() {
    assertEquals(
        List.of("Contains fishmeal - shall not be fed to ruminants."),
        sayings(label(GROWER, recipe -> recipe)));
    assertEquals(
        List.of(
            "Contains fishmeal - shall not be fed to ruminants.",
            "Contains blood products - shall not be fed to ruminants.",
            "Contains non-ruminant processed animal protein - shall not be fed to farmed animals"
                + " except aquaculture and fur animals."),
        sayings(label("trout/TG-44.recipe", recipe -> recipe)));
  }

  private static List<String> sayings(BagLabel label) {
    return label.statements().stream()
        .filter(statement -> statement.heading().equals("Cautions"))
        .map(Statement.Sentences.class::cast)
        .flatMap(statement -> statement.sentences().stream())
        .filter(sentence -> sentence.startsWith("Contains "))
        .toList();
  }

  @Test
  void whoMakesItStandsOnTheBagWithItsAddress() {
    String text = LabelText.of(label(GROWER, recipe -> recipe));
    assertTrue(text.contains("Sallowmere Mill\n"), text);
    assertTrue(text.contains("3 Weir Lane, Sallowmere\n"), text);
    assertTrue(text.contains("XX-0417-F\n"), text);
  }

  @Test
  void daysAreWrittenAsTheRulesAsk() {
    String text = LabelText.of(label(GROWER, recipe -> recipe));
    assertTrue(text.contains("24/01/2027"), text);
    assertTrue(text.contains("25/11/2026"), text);
  }

  @Test
  void aRecipeWithoutALabelGetsNone() {
    assertTrue(
        EXAMPLE.label(GROWER, text -> text.substring(0, text.indexOf("\nlabel\n") + 1)).isEmpty());
  }

  @Test
  void whatARecipeSaysIsNeverMarkup() {
    BagLabel label =
        label(
            GROWER,
            text -> text.replace("African catfish grower, 4 mm", "<script>'A' & B</script>"));
    String html = LabelHtml.of(label);
    assertFalse(html.contains("<script"), html);
    assertTrue(html.contains("&lt;script&gt;&#x27;A&#x27; &amp; B&lt;/script&gt;"), html);
    assertTrue(LabelText.of(label).contains("<script>'A' & B</script>"));
  }

  @Test
  void theSameBytesInAnotherLocaleAndTimeZone() {
    BagLabel label = label(GROWER, text -> text);
    String before = LabelText.of(label) + LabelHtml.of(label);
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
      BagLabel again = label(GROWER, text -> text);
      assertEquals(before, LabelText.of(again) + LabelHtml.of(again));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }
}
