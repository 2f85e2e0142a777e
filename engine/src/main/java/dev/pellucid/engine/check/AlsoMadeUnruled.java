package dev.pellucid.engine.check;

import dev.pellucid.engine.data.AlsoMade;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.data.Plant.Besides;
import dev.pellucid.engine.data.SequenceRow;
import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * An approved feed of a plant that also makes something of which nothing may get into it, while no
 * row of {@code practice/sequence.yaml} says what comes between. It is told where the plant says
 * so, in the same words for each such feed, so that a folder tells it once.
 */
final class AlsoMadeUnruled implements Rule {
  private static final Code CODE = new Code("also-made-unruled");

  /** What mills flush with. */
  private static final List<String> USUAL = List.of("wheat-middlings", "wheat", "maize");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<Plant> plant = recipe.recipe().plant();
    if (plant.isEmpty() || plant.get().alsoMakes().isEmpty() || !recipe.recipe().isApproved()) {
      return;
    }
    for (Besides besides : plant.get().alsoMakes()) {
      look(recipe, plant.get(), besides, out);
    }
  }

  private static void look(RuleContext recipe, Plant plant, Besides besides, Remarks out) {
    ResolvedRecipe feed = recipe.recipe();
    boolean someRow = false;
    for (SequenceRow row : recipe.tables().practice().sequence()) {
      if (row.besides().isPresent() && row.besides().get() == besides.what()) {
        someRow = true;
        if (row.isFor(feed.species())) {
          return;
        }
      }
    }
    out.accept(
        finding(
            plant, besides, someRow ? feed.species() : Optional.empty(), with(recipe.tables())));
  }

  /** What other rows flush with; else some ingredient that is at hand. */
  private static String with(FeedTables tables) {
    for (SequenceRow row : tables.practice().sequence()) {
      if (row.flush().isPresent()) {
        return row.flush().get().with().name();
      }
    }
    for (String usual : USUAL) {
      if (tables.ingredients().containsKey(usual)) {
        return usual;
      }
    }
    return tables.ingredients().isEmpty() ? "maize" : tables.ingredients().firstKey();
  }

  private static Finding finding(
      Plant plant, Besides besides, Optional<Species> species, String with) {
    AlsoMade what = besides.what();
    String feeds =
        species.isPresent()
            ? "feed for " + species.get().title()
            : "the approved feeds of this folder";
    return Finding.error(
            CODE,
            besides.place(),
            plant.title()
                + " also makes "
                + what.words()
                + ", and practice/sequence.yaml has no row to say what must be done between"
                + " it and "
                + feeds)
        .helping(
            "add a row: {after: {made: "
                + what.word()
                + "}, flush: {quantity: 50 kg, with: "
                + with
                + ", to: \"waste, never into feed\"},"
                + " because: \"...\", source: ...}, with what your mill does")
        .helping(
            "or add it with never: yes in place of flush, where a feed must never follow "
                + what.words())
        .helping(whoDecides(what));
  }

  private static String whoDecides(AlsoMade what) {
    return switch (what) {
      case MEDICATED -> "ask the veterinarian and the authority how the line is cleaned";
      case COCCIDIOSTATS -> "ask the authority how much may be carried over, and how it is proven";
      case RUMINANT ->
          "ask the authority whether ruminant feed may be made on this line at all beside feed"
              + " that holds processed animal protein";
    };
  }
}
