package dev.pellucid.engine.carryover;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.AlsoMade;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.data.SequenceRow;
import dev.pellucid.engine.data.SequenceRow.Left;
import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.measure.Closeness;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a batch leaves behind, and what it minds when another leaves it: any amount of an ingredient
 * counts, premixes opened; of a nutrient the content of the feed at its richest. What no ingredient
 * tells of a nutrient counts as nothing, since a flush is not asked for on a guess.
 *
 * @param species that the feed is for; empty for a premix
 * @param plant where it is made; what that makes beside comes before it too
 * @param left the rows of practice that it leaves something by, and what that is: {@code
 *     groundnut-cake}, {@code copper 31.2 mg/kg}
 */
public record CarryOver(
    Optional<Species> species, Optional<Plant> plant, Map<SequenceRow, String> left) {
  public CarryOver {
    left = Map.copyOf(left);
  }

  /** Of a feed, or of a premix reckoned like one. */
  public static CarryOver of(ComputedFeed feed, List<SequenceRow> rows) {
    Map<SequenceRow, String> left = new LinkedHashMap<>();
    for (SequenceRow row : rows) {
      leaves(feed, row).ifPresent(words -> left.put(row, words));
    }
    return new CarryOver(feed.recipe().species(), feed.recipe().plant(), left);
  }

  private static Optional<String> leaves(ComputedFeed feed, SequenceRow row) {
    return row.left()
        .byKind(
            held -> ingredients(feed, row),
            marked -> ingredients(feed, row),
            above -> tooMuch(feed, above),
            besides -> Optional.empty());
  }

  private static Optional<String> tooMuch(ComputedFeed feed, Left.Above above) {
    double content = feed.content(Scenario.RICHEST, above.nutrient().index());
    return Closeness.isAbove(content, above.most())
        ? Optional.of(
            above.nutrient().name() + " " + Figures.plain(content, above.nutrient().unit()))
        : Optional.empty();
  }

  private static Optional<String> ingredients(ComputedFeed feed, SequenceRow row) {
    String names =
        feed.rows().stream()
            .filter(one -> one.kgRichest() > 0 && row.isLeftBy(one.ingredient()))
            .map(CarryOver::name)
            .distinct()
            .collect(Collectors.joining(" and "));
    return names.isEmpty() ? Optional.empty() : Optional.of(names);
  }

  private static String name(Row row) {
    return row.ingredient().name();
  }

  /** What it leaves by a row; empty where nothing. */
  public Optional<String> leaves(SequenceRow row) {
    return Optional.ofNullable(left.get(row));
  }

  /** What the plant does not make cannot be before it. */
  private boolean isMadeBeside(SequenceRow row) {
    Optional<AlsoMade> besides = row.besides();
    return besides.isEmpty() || (plant.isPresent() && plant.get().alsoMakes(besides.get()));
  }

  /** Whether it would take harm; not where it holds the same itself. */
  public boolean minds(SequenceRow row) {
    return row.isFor(species) && !left.containsKey(row) && isMadeBeside(row);
  }
}
