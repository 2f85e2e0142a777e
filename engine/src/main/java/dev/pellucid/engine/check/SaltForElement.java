package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.Trait;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Kind;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * The weight of a salt taken for the weight of its element, in either of two places.
 *
 * <p>In {@code supply}: the figure times the part that the salt holds comes within 1 % of the
 * minimum, so that 58.8 mg/kg of zinc from a sulphate of 34 % stands where 20 mg/kg were wanted.
 *
 * <p>In {@code contents}: a salt or oxide tells more of one element than any of them can hold. The
 * richest in use is zinc oxide with 65.38 of 81.38 g/mol, 80.3 % (IUPAC standard atomic weights);
 * 98 % is its purity.
 */
final class SaltForElement implements Rule {
  private static final Code CODE = new Code("salt-for-element");
  private static final double RICHEST = 0.81;
  private static final double CLOSE = 0.01;
  private static final String ASH = "crude-ash";

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    if (recipe.feed().isPresent()) {
      supplies(recipe, recipe.feed().get(), out);
      salts(recipe, recipe.feed().get(), out);
    }
  }

  private static void supplies(RuleContext recipe, ComputedFeed feed, Consumer<Finding> out) {
    List<Supplied> supplied = Supplied.to(feed.recipe());
    if (!supplied.isEmpty()) {
      Minima minima = new Minima(feed);
      for (Supplied one : supplied) {
        supply(recipe, minima, one, out);
      }
    }
  }

  private static void salts(RuleContext recipe, ComputedFeed feed, Consumer<Finding> out) {
    Set<String> seen = new HashSet<>();
    for (Row row : feed.rows()) {
      if (isSalt(row.ingredient()) && seen.add(row.ingredient().name())) {
        contents(recipe, row.ingredient(), out);
      }
    }
  }

  private static boolean isSalt(Ingredient one) {
    return one.traits().contains(Trait.SALT) || one.traits().contains(Trait.TRACE_SALT);
  }

  private static void supply(
      RuleContext recipe, Minima minima, Supplied one, Consumer<Finding> out) {
    Ingredient source = recipe.tables().ingredients().get(one.supply().from());
    Nutrient nutrient = one.supply().nutrient();
    if (source == null || !isSalt(source) || nutrient.unit().kind() != Kind.SHARE) {
      return;
    }
    double holds = holds(source, nutrient.name()).map(Content::low).orElse(1.0);
    Optional<Limit> minimum = minima.of(nutrient);
    if (minimum.isPresent() && holds < RICHEST) {
      double least = minima.asFed(minimum.get());
      if (least > 0 && Math.abs(one.amount() * holds / least - 1) < CLOSE) {
        out.accept(ofSupply(one, source, minimum.get(), holds));
      }
    }
  }

  private static Optional<Content> holds(Ingredient source, String nutrient) {
    return source.contents().stream()
        .flatMap(block -> Optional.ofNullable(block.byNutrient().get(nutrient)).stream())
        .findFirst();
  }

  private static Finding ofSupply(Supplied one, Ingredient source, Limit minimum, double holds) {
    String nutrient = one.supply().nutrient().name();
    String least = minimum.writtenInForce().asWritten();
    return Finding.warning(
            CODE,
            one.supply().written().amount().span(),
            nutrient
                + " "
                + one.supply().written().amount().asWritten()
                + " is just what "
                + least
                + " of it weighs as "
                + source.name())
        .labelled("told in " + nutrient + ", not in " + source.name())
        .seeing("minimum written", minimum.origin().span())
        .noting(source.name() + " is " + Figures.plain(holds * 100) + " % " + nutrient)
        .helping(
            "if "
                + least
                + " was meant, write that: the premix weighs as much "
                + source.name()
                + " as it takes")
        .about(new About(nutrient, About.Side.NONE, List.of(one.premix().code(), source.name())));
  }

  private static void contents(RuleContext recipe, Ingredient salt, Consumer<Finding> out) {
    for (Ingredient.ContentBlock block : salt.contents()) {
      for (Map.Entry<String, Content> one : block.byNutrient().entrySet()) {
        if (one.getValue().low() > RICHEST && isElement(recipe, one.getKey())) {
          out.accept(ofContent(salt, one.getKey(), one.getValue()));
        }
      }
    }
  }

  private static boolean isElement(RuleContext recipe, String nutrient) {
    Optional<Nutrient> one = recipe.tables().nutrients().named(nutrient);
    return one.isPresent() && one.get().partOf().filter(ASH::equals).isPresent();
  }

  private static Finding ofContent(Ingredient salt, String element, Content content) {
    return Finding.warning(
            CODE,
            content.place(),
            salt.name()
                + " tells "
                + content.asWritten()
                + " of "
                + element
                + ", no salt or oxide holds more than "
                + Figures.plain(RICHEST * 100)
                + " %")
        .helping(
            "write how much "
                + element
                + " is in it, from its certificate; the purity of the salt is another figure")
        .about(new About(element, About.Side.NONE, List.of(salt.name())));
  }
}
