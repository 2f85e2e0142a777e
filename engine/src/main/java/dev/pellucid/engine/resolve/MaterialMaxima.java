package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.measure.Closeness;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * The maxima to which raw materials are held themselves, before anything is mixed.
 *
 * <p>Goes in: the profiles with lines {@code materials}. A profile is for an ingredient by its name
 * or by a group; one that names it stands in place of those that name its groups, for what both
 * bound. Law and guidance count where they are those of the jurisdiction of the folder.
 */
public final class MaterialMaxima {
  /** Of a folder that bounds no raw material. */
  public static final MaterialMaxima NONE = new MaterialMaxima(Map.of(), Optional.empty());

  private static final int DECIMALS = 1;

  private final Map<String, List<Limit>> byIngredient;
  private final Optional<String> jurisdiction;

  private MaterialMaxima(Map<String, List<Limit>> byIngredient, Optional<String> jurisdiction) {
    this.byIngredient = byIngredient;
    this.jurisdiction = jurisdiction;
  }

  static MaterialMaxima of(FeedTables tables, List<Profile> profiles) {
    Optional<String> jurisdiction = tables.settings().jurisdiction();
    List<Profile> here = new ArrayList<>();
    for (Profile one : profiles) {
      if (!one.kind().bindsByItself()
          || jurisdiction.isPresent() && one.jurisdiction().equals(jurisdiction)) {
        here.add(one);
      }
    }
    Map<String, List<Limit>> byIngredient = new HashMap<>();
    for (Ingredient one : here.isEmpty() ? List.<Ingredient>of() : tables.ingredients().values()) {
      byIngredient.put(one.name(), maxima(one, here));
    }
    return new MaterialMaxima(byIngredient, jurisdiction);
  }

  private static List<Limit> maxima(Ingredient ingredient, List<Profile> profiles) {
    List<Limit> found = new ArrayList<>();
    for (Profile profile : profiles) {
      if (profile.materials().contains(ingredient.name())) {
        add(profile, found, List.of());
      }
    }
    List<Limit> named = List.copyOf(found);
    for (Profile profile : profiles) {
      for (String group : ingredient.groups()) {
        if (profile.materials().contains(group)
            && !profile.materials().contains(ingredient.name())) {
          add(profile, found, named);
          break;
        }
      }
    }
    return List.copyOf(found);
  }

  /**
   * Takes in what a profile asks of the amounts of nutrients.
   *
   * @param but what is bounded already by one that names the ingredient
   */
  private static void add(Profile profile, List<Limit> found, List<Limit> but) {
    for (Limit limit : profile.limits()) {
      boolean fits = limit.side() == Bound.Side.MAX && !limit.subject().addends().isEmpty();
      boolean known = false;
      for (Limit one : but) {
        known |=
            one.subject().text().equals(limit.subject().text())
                && one.origin().kind() == limit.origin().kind();
      }
      if (fits && !known) {
        found.add(limit);
      }
    }
  }

  /** What an ingredient is held to. */
  public List<Limit> of(String ingredient) {
    return byIngredient.getOrDefault(ingredient, List.of());
  }

  /**
   * What a material is over, the least that it holds taken.
   *
   * @param content how much it holds of a nutrient; empty where that is not told
   * @param moisture of it, a share
   */
  public List<Over> over(
      String ingredient, Function<Nutrient, OptionalDouble> content, double moisture) {
    List<Over> over = new ArrayList<>();
    for (Limit limit : of(ingredient)) {
      double sum = 0;
      for (Nutrient nutrient : limit.subject().addends()) {
        sum += content.apply(nutrient).orElse(0);
      }
      double figure = sum * limit.basis().fromAsFed(1 - moisture);
      if (moisture < 1 && Closeness.isAbove(figure, limit.bound())) {
        over.add(new Over(limit, figure, words(limit, figure)));
      }
    }
    return over;
  }

  private String words(Limit limit, double figure) {
    Bound.Limit written = limit.written();
    int decimals = Math.max(DECIMALS, written.figure().scale());
    Figures.Pair pair =
        Figures.apart(written.fromBase(figure), written.fromBase(limit.bound()), decimals);
    return pair.value()
        + written.unitAsWritten()
        + " of "
        + limit.subject().text()
        + limit.demand().terms()
        + ", the "
        + maximum(limit.origin().kind())
        + " of such a material is "
        + pair.other()
        + written.unitAsWritten();
  }

  private String maximum(Limit.Kind kind) {
    String where = jurisdiction.map(one -> " (" + one + ")").orElse("");
    return switch (kind) {
      case LAW -> "legal maximum" + where;
      case GUIDANCE -> "guidance maximum" + where;
      case NEED, PRACTICE, RECIPE -> "maximum";
    };
  }

  /**
   * A maximum that a material is over.
   *
   * @param figure what it holds, on the basis of the limit and in the base of its kind
   * @param words {@code 0.7 mg/kg of mercury at 12 % moisture, the legal maximum (EU) of such a
   *     material is 0.5 mg/kg}
   */
  public record Over(Limit limit, double figure, String words) {
    /** Whether the material may not be used for it, and not only looked at. */
    public boolean isLaw() {
      return limit.origin().kind() == Limit.Kind.LAW;
    }
  }
}
