package dev.pellucid.engine.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.data.Ingredient.ContentBlock;
import dev.pellucid.measure.Kind;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Water, protein, fat, fibre and ash of each ingredient that comes with the program add up to the
 * whole, as its kind must: what remains is carbohydrate, or nothing within the spread of the
 * analyses, or the product itself, and then its file says so.
 */
class ProximatesTest {

  private static final List<String> FIVE =
      List.of("moisture", "crude-protein", "crude-fat", "crude-fibre", "crude-ash");

  /** What marks the line of a file that says what its sum leaves. */
  private static final String SAYS_WHY = "\n# The sum: ";

  @TempDir static Path empty = Path.of("");

  private static FeedTables tables;

  @BeforeAll
  static void read() throws IOException {
    tables = BundledTables.read(empty);
  }

  /** What the sum of an ingredient must leave, by what it is. */
  enum Closing {
    /** Carbohydrate, of which starch and sugar are a part. */
    PLANT("cereals", "milling-offals", "roots", "oilseed-meals", "protein-concentrates", "yeasts"),
    /** Nothing but what five analyses are off together. */
    ANIMAL("fish-meals", "marine-meals", "animal-meals", "insect-meals"),
    /** Nothing. */
    CLOSED("phosphates", "minerals", "trace-salts", "fish-oils", "plant-oils"),
    /** The product itself, or what carries it. */
    PRODUCT("amino-acids", "vitamins", "additives");

    private final Set<String> groups;

    Closing(String... groups) {
      this.groups = Set.of(groups);
    }

    static Closing of(Ingredient one) {
      List<Closing> kinds = new ArrayList<>();
      for (Closing kind : values()) {
        if (one.groups().stream().anyMatch(kind.groups::contains)) {
          kinds.add(kind);
        }
      }
      assertEquals(1, kinds.size(), one.name());
      return kinds.get(0);
    }
  }

  @Test
  void everyIngredientTellsAllFive() {
    for (Ingredient one : ingredients()) {
      for (String nutrient : FIVE) {
        assertTrue(content(one, nutrient).isPresent(), one.name() + " tells no " + nutrient);
      }
    }
    assertTrue(ingredients().size() > 50);
  }

  @Test
  void noSumIsMoreThanTheWhole() {
    for (Ingredient one : ingredients()) {
      assertTrue(left(one) > -1e-9, one.name() + " leaves " + left(one));
    }
  }

  @Test
  void whatAPlantLeavesIsAtLeastItsStarchAndSugar() {
    for (Ingredient one : of(Closing.PLANT)) {
      double named = held(one, "starch") + held(one, "sugar");
      assertTrue(named <= left(one) + 1e-9, one.name() + " leaves " + left(one));
    }
  }

  @Test
  void whatAnAnimalLeavesLiesWithinTwoSpreadsOfItsAnalyses() {
    for (Ingredient one : of(Closing.ANIMAL)) {
      assertTrue(left(one) <= 2 * spread(one), one.name() + " leaves " + left(one));
    }
  }

  @Test
  void aSaltOrAnOilLeavesNothingOrSaysWhat() {
    for (Ingredient one : of(Closing.CLOSED)) {
      assertEquals(left(one) > 1e-9, saysWhy(one), one.name() + " leaves " + left(one));
    }
  }

  /** Cholesterol and tocopherols are fat as analyses have it, and close like an oil. */
  @Test
  void aProductThatLeavesItselfSaysSo() {
    TreeSet<String> closed = new TreeSet<>();
    for (Ingredient one : of(Closing.PRODUCT)) {
      if (left(one) > 1e-9) {
        assertTrue(saysWhy(one), one.name() + " leaves " + left(one) + " and does not say why");
      } else {
        closed.add(one.name());
      }
    }
    assertEquals(Set.of("cholesterol", "mixed-tocopherols"), closed);
  }

  /** Nothing but water and ash that is foreign to it can stand beside what it is sold for. */
  @Test
  void aProductHasRoomForWhatItIsSoldFor() {
    int sold = 0;
    for (Ingredient one : of(Closing.PRODUCT)) {
      Optional<String> nutrient = one.additive().flatMap(Additive::nutrient);
      if (nutrient.isPresent() && isShare(nutrient.get())) {
        double active = held(one, nutrient.get()) + held(one, "chloride");
        assertTrue(active <= 1 - held(one, "moisture") + 1e-9, one.name());
        sold++;
      }
    }
    assertTrue(sold >= 15, "only " + sold);
  }

  @Test
  void noOtherFileSpeaksOfItsSum() {
    for (Ingredient one : ingredients()) {
      Closing kind = Closing.of(one);
      assertTrue(kind == Closing.CLOSED || kind == Closing.PRODUCT || !saysWhy(one), one.name());
    }
  }

  private static boolean isShare(String nutrient) {
    return tables.nutrients().named(nutrient).orElseThrow().unit().kind() != Kind.ACTIVITY;
  }

  private static Collection<Ingredient> ingredients() {
    return tables.ingredients().values();
  }

  private static List<Ingredient> of(Closing kind) {
    List<Ingredient> found = ingredients().stream().filter(one -> Closing.of(one) == kind).toList();
    assertTrue(found.size() > 4, kind + " has " + found.size());
    return found;
  }

  private static boolean saysWhy(Ingredient one) {
    return one.declared().file().text().contains(SAYS_WHY);
  }

  /** What the five leave of one. */
  private static double left(Ingredient one) {
    return 1 - FIVE.stream().mapToDouble(nutrient -> held(one, nutrient)).sum();
  }

  /** One standard deviation of the sum of the five, a share of the ingredient. */
  private static double spread(Ingredient one) {
    double squares = 0;
    for (String nutrient : FIVE) {
      double usual = tables.practice().spread(nutrient).orElseThrow() * held(one, nutrient);
      squares += Math.pow(content(one, nutrient).orElseThrow().spread().orElse(usual), 2);
    }
    return Math.sqrt(squares);
  }

  /** At the most; none where nothing is told. */
  private static double held(Ingredient one, String nutrient) {
    return content(one, nutrient).map(Content::high).orElse(0.0);
  }

  private static Optional<Content> content(Ingredient one, String nutrient) {
    return one.contents().stream()
        .filter(block -> block.species().isEmpty())
        .map(ContentBlock::byNutrient)
        .map((Map<String, Content> told) -> told.get(nutrient))
        .filter(content -> content != null)
        .findFirst();
  }
}
