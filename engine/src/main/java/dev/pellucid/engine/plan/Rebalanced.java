package dev.pellucid.engine.plan;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * That a batch is made by other shares than its recipe has, for the lots that go into it.
 *
 * @param by who answers for them; empty where nobody has signed
 * @param because the reason; may be empty
 * @param lots that were measured, by their numbers
 * @param moved the lines that have another share, in the order of the recipe
 */
public record Rebalanced(
    LocalDate day, String by, String because, List<String> lots, List<Moved> moved) {
  public Rebalanced {
    lots = List.copyOf(lots);
    moved = List.copyOf(moved);
  }

  /**
   * A line.
   *
   * @param recipe its share by the recipe, in percent
   * @param batch its share in this batch, in percent
   */
  public record Moved(String name, String title, double recipe, double batch) {}

  /**
   * What a record tells.
   *
   * @param recipe as it is written
   * @param ordered with the shares of the batch
   * @param lots of the batch that were measured
   */
  public static Rebalanced of(
      BatchRecord.Rebalanced told,
      ResolvedRecipe recipe,
      ResolvedRecipe ordered,
      List<String> lots) {
    List<Moved> moved = new ArrayList<>();
    for (Line line : recipe.lines()) {
      Line now = ordered.lines().get(line.index());
      if (now.designed().compareTo(line.designed()) != 0) {
        moved.add(
            new Moved(
                line.material().name(),
                WeighList.title(line.material()),
                line.designed().kgPer100(),
                now.designed().kgPer100()));
      }
    }
    return new Rebalanced(
        told.signed().day(), told.signed().by(), told.signed().because(), lots, moved);
  }

  /** The line of a name, where it has another share. */
  public Optional<Moved> line(String name) {
    return moved.stream().filter(one -> one.name().equals(name)).findFirst();
  }

  /** Why a sheet of it is not to be used yet. */
  List<String> draftBecause() {
    return by.isEmpty()
        ? List.of("its shares are not those of the recipe, and nobody has signed for them")
        : List.of();
  }
}
