package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.Cap;
import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * More of an ingredient than the species takes well; a cap for the species beats one of a group.
 */
final class AboveCap implements Rule {
  static final Code CODE = new Code("above-cap");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<Species> species = recipe.recipe().species();
    if (recipe.feed().isPresent() && species.isPresent()) {
      look(recipe.feed().get().rows(), species.get(), out);
    }
  }

  private static void look(List<Row> rows, Species species, Remarks out) {
    Map<String, List<Row>> above = new TreeMap<>();
    for (Row row : rows) {
      Optional<Cap> cap = row.ingredient().cap(species);
      boolean capped = cap.isPresent() && cap.get().most().isPresent();
      if (capped
          && Closeness.isAbove(share(rows, row.ingredient()), cap.get().most().getAsDouble())) {
        above.computeIfAbsent(row.ingredient().name(), name -> new ArrayList<>()).add(row);
      }
    }
    for (List<Row> same : above.values()) {
      Ingredient one = same.get(0).ingredient();
      out.accept(finding(same, species, share(rows, one), one.cap(species).orElseThrow()));
    }
  }

  private static double share(List<Row> rows, Ingredient one) {
    double kg = 0;
    for (Row row : rows) {
      kg += row.ingredient().name().equals(one.name()) ? row.kg() : 0;
    }
    return kg / 100;
  }

  private static Finding finding(List<Row> rows, Species species, double share, Cap cap) {
    Row largest = rows.get(0);
    for (Row row : rows) {
      largest = row.kg() > largest.kg() ? row : largest;
    }
    String name = largest.ingredient().name();
    Figures.Pair figures = Figures.apart(share * 100, cap.most().getAsDouble() * 100, 1);
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
