package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.Particle;
import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.engine.data.Practice.PracticeBound;
import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.quality.Particles;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Range;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * An ingredient of so few grains that chance alone makes the daily meals of the smallest fish
 * differ more than practice allows ({@link Particles}). Silent where the folder tells no particle
 * of the ingredient, no daily meal of the fish or no bound, and for what is no powder: oils and
 * liquids have no grains.
 */
final class TooFewParticles implements Rule {
  private static final Code CODE = new Code("too-few-particles");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public boolean isConsequence() {
    return true;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<PracticeBound> bound = recipe.tables().practice().bound(BoundOf.MIXING_VARIATION);
    Optional<Meal> meal = meal(recipe);
    if (bound.isPresent() && meal.isPresent() && recipe.feed().isPresent()) {
      List<Grains> uneven = uneven(recipe.feed().get(), meal.get(), bound.get());
      if (!uneven.isEmpty()) {
        for (List<Grains> some : byLine(uneven).values()) {
          out.accept(finding(some, meal.get(), bound.get()));
        }
      }
    }
  }

  /**
   * What the smallest fish eats in a day.
   *
   * @param kg of feed
   * @param share of the mass of the fish
   */
  private record Meal(double kg, double share, Range fish, Species.Size size) {}

  private static Optional<Meal> meal(RuleContext recipe) {
    Optional<Range> fish = recipe.recipe().fish();
    Optional<Species> species = recipe.recipe().species();
    if (fish.isEmpty() || species.isEmpty()) {
      return Optional.empty();
    }
    double smallest = fish.get().lowBase();
    for (Species.Size size : species.get().sizes()) {
      if (size.meal().isPresent() && size.lightest() <= smallest && smallest < size.heaviest()) {
        double share = size.meal().getAsDouble();
        return Optional.of(new Meal(smallest * share, share, fish.get(), size));
      }
    }
    return Optional.empty();
  }

  /** An ingredient of the feed and the grains of it in a meal. */
  private record Grains(
      Line line, Ingredient ingredient, Particle particle, double dose, Particles particles) {
    double variation() {
      return particles.leastVariation();
    }
  }

  private static List<Grains> uneven(ComputedFeed feed, Meal meal, PracticeBound bound) {
    List<Grains> uneven = new ArrayList<>();
    List<Row> rows = feed.rows();
    for (int i = 0; i < rows.size(); i++) {
      Ingredient one = rows.get(i).ingredient();
      if (one.particle().isPresent() && !one.form().isLiquid() && isFirst(rows, i)) {
        double kg = kg(rows, one);
        double dose = kg / feed.balances().expected().finished();
        if (dose > 0) {
          Particle particle = one.particle().get();
          Particles particles = Particles.in(meal.kg(), dose, particle.mass());
          if (Closeness.isAbove(particles.leastVariation(), bound.high())) {
            uneven.add(new Grains(most(rows, one).line(), one, particle, dose, particles));
          }
        }
      }
    }
    if (uneven.size() > 1) {
      uneven.sort(
          Comparator.comparingDouble(Grains::variation)
              .reversed()
              .thenComparing(grains -> grains.ingredient().name()));
    }
    return uneven;
  }

  /** Whether no row before it is of the same ingredient. */
  private static boolean isFirst(List<Row> rows, int place) {
    for (int i = 0; i < place; i++) {
      if (isOf(rows.get(i), rows.get(place).ingredient())) {
        return false;
      }
    }
    return true;
  }

  private static boolean isOf(Row row, Ingredient one) {
    return row.ingredient().name().equals(one.name());
  }

  private static double kg(List<Row> rows, Ingredient one) {
    double kg = 0;
    for (Row row : rows) {
      kg += isOf(row, one) ? row.kg() : 0;
    }
    return kg;
  }

  /** The row that brings most of an ingredient. */
  private static Row most(List<Row> rows, Ingredient one) {
    return rows.stream()
        .filter(row -> isOf(row, one))
        .max(Comparator.comparingDouble(Row::kg))
        .orElseThrow();
  }

  private static Map<Integer, List<Grains>> byLine(List<Grains> uneven) {
    return uneven.stream()
        .collect(
            Collectors.groupingBy(one -> one.line().index(), TreeMap::new, Collectors.toList()));
  }

  private static Finding finding(List<Grains> worstFirst, Meal meal, PracticeBound bound) {
    Grains worst = worstFirst.get(0);
    String name = worst.ingredient().name();
    Finding finding =
        Finding.warning(
                CODE,
                worst.line().name(),
                "meals differ in "
                    + name
                    + " by "
                    + percent(worst.variation())
                    + " at the least, practice is "
                    + bound.asWritten())
            .labelled(
                "a day's meal of "
                    + mass(meal.kg())
                    + " holds "
                    + Figures.plain(worst.particles().number())
                    + " grains of "
                    + name)
            .seeing("particle written", worst.particle().place())
            .seeing("daily meal written", meal.size().place());
    if (worstFirst.size() > 1) {
      finding =
          finding.noting(
              "so do "
                  + worstFirst.stream()
                      .skip(1)
                      .map(one -> one.ingredient().name() + " (" + percent(one.variation()) + ")")
                      .collect(Collectors.joining(", ")));
    }
    return help(
        finding.noting("no mixing time and no pre-blend changes the number of grains"),
        worst,
        meal,
        bound);
  }

  private static Finding help(Finding finding, Grains worst, Meal meal, PracticeBound bound) {
    double needed = Particles.neededFor(bound.high()).number();
    double grain = meal.kg() * worst.dose() / needed;
    String ball =
        worst.particle().density().isPresent()
            ? Figures.plain(
                    Particles.diameterOfBall(grain, worst.particle().density().getAsDouble()),
                    Unit.UM)
                + " across"
            : mass(grain);
    double fish = needed * worst.particle().mass() / worst.dose() / meal.share();
    return finding
        .helping("take a grade of " + worst.ingredient().name() + " with grains of at most " + ball)
        .helping(
            "or a product of the same grain, at most "
                + percent(worst.particles().number() / needed)
                + " as strong, and more of it")
        .helping(
            "or feed it to larger fish, of "
                + mass(fish)
                + " and more where they eat the same share a day")
        .about(
            new About(
                worst.ingredient().name(),
                About.Side.MAX,
                List.of(worst.line().material().name())));
  }

  private static String percent(double share) {
    return Figures.plain(share, Unit.PERCENT);
  }

  private static String mass(double kg) {
    return Figures.plain(kg, kg >= 1 ? Unit.KG : kg >= 1e-4 ? Unit.G : Unit.MG);
  }
}
