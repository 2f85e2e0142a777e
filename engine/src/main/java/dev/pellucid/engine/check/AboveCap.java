package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Ingredient.Cap;
import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;

/**
 * More of an ingredient than the species takes well; a cap for the species beats one of a group.
 */
final class AboveCap implements Rule {
  private static final Code CODE = new Code("above-cap");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    recipe
        .feed()
        .ifPresent(feed -> feed.recipe().species().ifPresent(species -> look(feed, species, out)));
  }

  private static void look(ComputedFeed feed, Species species, Consumer<Finding> out) {
    Map<String, List<Row>> byIngredient = new TreeMap<>();
    for (Row row : feed.rows()) {
      if (!row.ingredient().caps().isEmpty()) {
        byIngredient
            .computeIfAbsent(row.ingredient().name(), name -> new java.util.ArrayList<>())
            .add(row);
      }
    }
    for (List<Row> rows : byIngredient.values()) {
      double share = rows.stream().mapToDouble(Row::kg).sum() / 100;
      cap(rows.get(0), species)
          .filter(cap -> Closeness.isAbove(share, cap.most()))
          .ifPresent(cap -> out.accept(finding(rows, species, share, cap)));
    }
  }

  private static Optional<Cap> cap(Row row, Species species) {
    return row.ingredient().caps().stream()
        .filter(cap -> species.is(cap.species()))
        .min(
            Comparator.<Cap>comparingInt(cap -> cap.species().equals(species.name()) ? 0 : 1)
                .thenComparingDouble(Cap::most));
  }

  private static Finding finding(List<Row> rows, Species species, double share, Cap cap) {
    Row largest = rows.get(0);
    for (Row row : rows) {
      largest = row.kg() > largest.kg() ? row : largest;
    }
    String name = largest.ingredient().name();
    Figures.Pair figures = Figures.apart(share * 100, cap.most() * 100, 1);
    return Finding.warning(
            CODE,
            largest.line().name(),
            name
                + " is at "
                + figures.value()
                + " %, the cap for "
                + species.name()
                + " is "
                + figures.other()
                + " %")
        .labelled(cap.because())
        .seeing("cap written", cap.place())
        .noting("the cap is " + cap.source().reliability().inWords())
        .helping("lower " + name + ", or change the cap on purpose")
        .about(new About(name, About.Side.MAX, largest.path()));
  }
}
