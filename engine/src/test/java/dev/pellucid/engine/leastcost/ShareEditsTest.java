package dev.pellucid.engine.leastcost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.leastcost.Advice.Standing;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Only digits of shares change, whatever stands around them, and the status. */
class ShareEditsTest {
  private static final String CARP = "carp/KG-33.recipe";

  private final Changed example = Changed.example();

  private static String skeleton(String text) {
    return text.replaceAll("(?m)^( +[a-z][a-z0-9-]+\\s+)[0-9.]+ *(%|g/kg|mg/kg)\\s*", "$1# $2 ")
        .replaceAll(
            "status( +)(?:approved(?: +reviewed +by +\"[^\"]*\" +on +\\S+)?|draft)", "status$1#");
  }

  private Advice changed(Changed folder) {
    Advice advice = folder.advice(CARP, Wishes.NONE);
    assertEquals(Standing.CHEAPER, advice.standing(), advice.why());
    assertEquals(skeleton(folder.text(CARP)), skeleton(advice.change().after()));
    assertTrue(folder.with(advice).recipe(CARP).feed().isPresent());
    return advice;
  }

  @Test
  void alignmentAndCommentsStay() {
    Changed commented =
        example
            .with(CARP, "(fish-meal-65 .*)\n", "$1  # Dutch lot, dear\n")
            .with(CARP, "(wheat-middlings .*)\n", "$1    # bought in bulk\n");
    String after = changed(commented).change().after();
    assertTrue(after.contains("  # Dutch lot, dear\n"));
    for (String line : after.lines().toList()) {
      if (line.contains("within")) {
        assertEquals(44, line.indexOf("within"), line);
      }
    }
  }

  @Test
  void linesEndAsTheyDid() {
    Changed windows = example.as(CARP, example.text(CARP).replace("\n", "\r\n"));
    String after = changed(windows).change().after();
    assertEquals(after.length(), after.replaceAll("(?<!\r)\n", "").length());
  }

  @Test
  void gramsAndMilligramsStay() {
    Changed grams =
        example
            .with(CARP, "fish-meal-65 +5.00 %", "fish-meal-65                 50.0 g/kg  ")
            .with(CARP, "rapeseed-meal +8.00 %", "rapeseed-meal                80000 mg/kg");
    String after = changed(grams).change().after();
    assertTrue(after.matches("(?s).*fish-meal-65 +[0-9]+\\.[0-9] g/kg.*"), after);
    assertTrue(after.matches("(?s).*rapeseed-meal +[0-9]+ mg/kg.*"), after);
  }

  @Test
  void anApprovedRecipeBecomesADraftAndAnyOtherStays() {
    assertTrue(changed(example).change().after().contains("  status    draft\n"));
    Changed draft = example.with(CARP, "status +approved.*", "status    draft");
    assertTrue(changed(draft).change().after().contains("  status    draft\n"));
    Changed none = example.with(CARP, "  status +approved.*\n", "");
    assertFalse(changed(none).change().after().contains("status"));
  }

  @Test
  void theReviewGoesWithTheStatusAndARemarkStays() {
    for (String review : List.of("", "  reviewed  by \"N. N.\"  on  2026-11-19")) {
      Changed told =
          example.with(CARP, "status +approved.*", "status    approved" + review + "  # new");
      assertTrue(changed(told).change().after().contains("  status    draft  # new\n"), review);
    }
  }

  @Test
  void whatIsTakenOutMayComeBack() {
    Changed plain = example.with(CARP, "(catfish-trimmings-meal .*) or none", "$1");
    Advice advice =
        plain.advice(
            CARP,
            Changed.wishes(Set.of("catfish-trimmings-meal"), OptionalDouble.empty(), 0, false));
    String after = advice.change().after();
    assertTrue(
        after.matches("(?s).*catfish-trimmings-meal +0\\.00 % +within 3 to 8 % or none\n.*"),
        () -> advice.standing() + advice.why() + after);
  }

  @Test
  void theRestCannotGo() {
    Advice advice =
        example.advice(CARP, Changed.wishes(Set.of("wheat"), OptionalDouble.empty(), 0, false));
    assertEquals(Standing.NOT_ASKED, advice.standing());
    assertTrue(advice.why().startsWith("wheat is the rest of this recipe and cannot go"));
  }

  @Test
  void anIngredientThatComesInStandsUnderTheLastOfItsSection() {
    Changed dear = example.with(CARP, "(VIT-WW +1.00 %|MIN-WW .*)\n", "$1  # last\n");
    Wishes tried =
        new Wishes(
            Set.of(),
            List.of("sunflower-meal-38"),
            Set.of(),
            OptionalDouble.empty(),
            0,
            false,
            OptionalDouble.empty(),
            false,
            false,
            Optional.empty(),
            false);
    Advice advice = dear.advice(CARP, tried);
    if (advice.change().isSome() && advice.change().after().contains("sunflower-meal-38")) {
      assertTrue(dear.with(advice).recipe(CARP).feed().isPresent());
    }
  }

  @Test
  void aBatchTakesNoMoreThanThereIsInTheStore() {
    Advice free = example.advice("carp/KF-29.recipe", Wishes.NONE);
    Advice bound = example.advice("carp/KF-29.recipe", Changed.fromStock());
    assertTrue(
        bound.standing() == Standing.UNMET
            || bound.costs().orElseThrow().then() >= free.costs().orElseThrow().then() - 1e-12);
  }
}
