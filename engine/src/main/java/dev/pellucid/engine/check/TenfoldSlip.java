package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.text.Meant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A premix supplies more than five times the minimum of a nutrient: most often a zero too many or a
 * slipped point. Who means it asks for it, by a higher minimum of the recipe or its profile. The
 * other slip, a zero too few, shows as a broken minimum and is named there ({@link Suspects}): a
 * small supply alone is no slip while the ingredients bring the rest.
 *
 * <p>Five times: common practice, no source.
 */
final class TenfoldSlip implements Rule {
  private static final Code CODE = new Code("tenfold-slip");
  private static final double MOST = 5;

  @Override
  public Code code() {
    return CODE;
  }

  /** The supply is written once; each minimum that it is beyond would say so again. */
  @Override
  public boolean oncePerPlace() {
    return true;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    if (recipe.feed().isPresent()) {
      look(recipe.feed().get(), out);
    }
  }

  /** A premix at another share than its dose is left to {@link PremixOffDose}. */
  private static void look(ComputedFeed feed, Consumer<Finding> out) {
    List<Supplied> supplied = Supplied.to(feed.recipe());
    if (supplied.isEmpty()) {
      return;
    }
    Minima minima = new Minima(feed);
    for (Supplied one : supplied) {
      Optional<Limit> minimum = minima.of(one.supply().nutrient());
      if (minimum.isPresent()) {
        double least = minima.asFed(minimum.get());
        boolean atDose = Closeness.same(one.times(), 1);
        if (atDose && least > 0 && Closeness.isAbove(one.amount(), MOST * least)) {
          out.accept(finding(one, minimum.get(), least));
        }
      }
    }
  }

  /** What a tenth, or ten times, of a figure would be, where that fits the minimum. */
  static Optional<String> meant(Supplied one, double factor, double least) {
    double meant = one.amount() * factor;
    return Closeness.isAtLeast(meant, least) && meant <= MOST * least
        ? Optional.of(Meant.question(one.told(one.supply().amount() * factor)))
        : Optional.empty();
  }

  private static Finding finding(Supplied one, Limit minimum, double least) {
    String nutrient = one.supply().nutrient().name();
    String code = one.premix().code();
    double times = one.amount() / least;
    Finding finding =
        Finding.warning(
                CODE,
                one.supply().written().amount().span(),
                code
                    + " supplies "
                    + nutrient
                    + " "
                    + one.told(one.amount())
                    + ", "
                    + Figures.fixed(times, times < 10 ? 1 : 0)
                    + " times the minimum of "
                    + minimum.writtenInForce().asWritten()
                    + minimum.basis().words())
            .seeing("minimum written", minimum.origin().span());
    Optional<String> meant = meant(one, 0.1, least);
    return (meant.isPresent() ? finding.helping(meant.get()) : finding)
        .helping(
            "if so much is meant, ask for it under limits: "
                + nutrient
                + " min "
                + one.told(one.amount() / MOST))
        .about(new About(nutrient, About.Side.MAX, List.of(code, one.supply().from())));
  }
}
