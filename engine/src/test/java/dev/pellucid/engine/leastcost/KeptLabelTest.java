package dev.pellucid.engine.leastcost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.judge.LabelVerdict;
import dev.pellucid.engine.label.BagLabel;
import dev.pellucid.engine.label.BagLabel.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

class KeptLabelTest {
  private static final Wishes KEEP = Changed.wishes(Set.of(), OptionalDouble.empty(), 0, true);

  private final Changed example = Changed.example();

  /** But for the amounts of additives, which move a little with the mass of the feed. */
  @Test
  void theLabelIsTheSameText() {
    int changed = 0;
    for (String path : example.recipes()) {
      Advice advice = example.advice(path, KEEP);
      changed += advice.change().isSome() ? 1 : 0;
      RuleContext before = example.recipe(path);
      RuleContext after = example.with(advice).recipe(path);
      assertEquals(words(before), words(after), path);
      assertEquals(outcomes(before), outcomes(after), path);
      assertEquals(List.of(), advice.care().labelAnew(), path);
    }
    assertTrue(changed > 10);
  }

  private static List<String> words(RuleContext recipe) {
    List<String> words = new ArrayList<>();
    for (Statement one : BagLabel.statements(recipe.feed().orElseThrow(), recipe.tables())) {
      words.add(one.toString().replaceAll("[0-9.]+ (?:mg|g|IU)/kg", "#"));
    }
    return words;
  }

  private static List<LabelVerdict.Outcome> outcomes(RuleContext recipe) {
    return recipe.judgement().claims().stream().map(LabelVerdict::outcome).toList();
  }

  @Test
  void withoutItEachReasonIsTold() {
    Advice advice = example.advice("carp/KF-29.recipe", Wishes.NONE);
    assertTrue(
        advice
            .care()
            .labelAnew()
            .contains("the order of ingredients changes: Wheat bran comes before Wheat"),
        () -> advice.care().labelAnew().toString());
    assertTrue(advice.care().labelAnew().stream().anyMatch(it -> it.startsWith("crude-ash is ")));
    RuleContext after = example.with(advice).recipe("carp/KF-29.recipe");
    List<LabelVerdict.Outcome> now = outcomes(after);
    assertFalse(now.equals(outcomes(example.recipe("carp/KF-29.recipe"))));
  }

  @Test
  void whatGoesOutIsTold() {
    Advice advice =
        example.advice(
            "carp/KG-33.recipe",
            Changed.wishes(Set.of("catfish-trimmings-meal"), OptionalDouble.empty(), 0, false));
    assertTrue(
        advice.care().labelAnew().stream().anyMatch(it -> it.endsWith(" goes out")),
        () -> advice.standing() + " " + advice.why() + advice.care().labelAnew());
  }
}
