package dev.pellucid.engine.records;

import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * A measured value of a lot that is more than two spreads from the library: perhaps it is not the
 * right material. The spread is that of the library, else the default of practice; where there is
 * none, nothing is asked.
 */
final class UnlikeLibrary {
  static final Code CODE = new Code("lot-unlike-library");
  private static final double SPREADS = 2;
  private static final double GROSS = 2;

  /** What is made to a grade is nearer to it than this; common practice, no source. */
  private static final double GRADE = 0.15;

  private UnlikeLibrary() {}

  /**
   * @param overMaxima which speaks in its place of what is over a maximum
   */
  static void look(FeedTables tables, LotsOverMaxima overMaxima, Consumer<Finding> out) {
    for (Lot lot : tables.lots().values()) {
      Ingredient library = tables.ingredients().get(lot.ingredient());
      for (Nutrient nutrient : tables.nutrients().inOrder()) {
        Optional<Content> here = lot.measured(nutrient.name());
        Optional<Content> there =
            Optional.ofNullable(library).flatMap(one -> LotContents.told(one, nutrient.name()));
        if (here.isPresent() && there.isPresent() && !overMaxima.tells(lot, nutrient.name())) {
          look(tables, lot, nutrient, here.get(), there.get()).ifPresent(out);
        }
      }
    }
  }

  /** Where a lot is measured with twice as much or half as much as its ingredient is told with. */
  static Optional<Span> gross(FeedTables tables, Lot lot) {
    Ingredient library = tables.ingredients().get(lot.ingredient());
    for (Nutrient nutrient : tables.nutrients().inOrder()) {
      Optional<Content> here = lot.measured(nutrient.name());
      Optional<Content> there =
          Optional.ofNullable(library).flatMap(one -> LotContents.told(one, nutrient.name()));
      if (here.isPresent()
          && there.isPresent()
          && (here.get().low() > GROSS * there.get().high()
              || here.get().high() < there.get().low() / GROSS)
          && look(tables, lot, nutrient, here.get(), there.get()).isPresent()) {
        return Optional.of(here.get().place());
      }
    }
    return Optional.empty();
  }

  private static Optional<Finding> look(
      FeedTables tables, Lot lot, Nutrient nutrient, Content here, Content there) {
    OptionalDouble spread = spread(tables, nutrient, there);
    boolean ofGrade = lotIsOfGrade(tables, lot, nutrient, there);
    double off = Math.max(here.low() - there.high(), Math.max(0, there.low() - here.high()));
    if (ofGrade && Closeness.isAbove(off, GRADE * there.high())) {
      return Optional.of(anotherGrade(lot, nutrient, here, there));
    }
    if (spread.isEmpty() || Closeness.isAtMost(off, SPREADS * spread.getAsDouble())) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.warning(
                CODE,
                here.place(),
                "lot "
                    + lot.number()
                    + " holds "
                    + here.asWritten()
                    + " of "
                    + nutrient.name()
                    + ", the library gives "
                    + there.asWritten()
                    + " for "
                    + lot.ingredient())
            .labelled(
                "off by "
                    + Figures.fixed(off / spread.getAsDouble(), 1)
                    + " standard deviations between lots ("
                    + Figures.plain(spread.getAsDouble(), nutrient.unit())
                    + "), two are usual")
            .seeing("content written", there.place())
            .helping(
                "is it the right material? look at sack and sample, and have it analysed again")
            .helping("if most lots are like this, correct the content in the library, or its ±")
            .about(new About(nutrient.name(), About.Side.NONE, List.of(lot.number()))));
  }

  /** Whether an ingredient is an additive of this, and does not tell how its lots vary. */
  private static boolean lotIsOfGrade(
      FeedTables tables, Lot lot, Nutrient nutrient, Content there) {
    Ingredient library = tables.ingredients().get(lot.ingredient());
    return library != null
        && there.spread().isEmpty()
        && there.high() > 0
        && library
            .additive()
            .flatMap(one -> one.nutrient())
            .filter(nutrient.name()::equals)
            .isPresent();
  }

  private static Finding anotherGrade(Lot lot, Nutrient nutrient, Content here, Content there) {
    return Finding.warning(
            CODE,
            here.place(),
            "lot "
                + lot.number()
                + " holds "
                + here.asWritten()
                + " of "
                + nutrient.name()
                + ", "
                + lot.ingredient()
                + " is sold for its "
                + there.asWritten())
        .seeing("content written", there.place())
        .helping("is it another grade or another salt? then it is an ingredient of its own")
        .helping("look at the label of the sack, and weigh none of it in before that is known")
        .about(new About(nutrient.name(), About.Side.NONE, List.of(lot.number())));
  }

  private static OptionalDouble spread(FeedTables tables, Nutrient nutrient, Content there) {
    if (there.spread().isPresent()) {
      return there.spread();
    }
    OptionalDouble share = tables.practice().spread(nutrient.name());
    return share.isPresent() && there.high() > 0
        ? OptionalDouble.of(there.high() * share.getAsDouble())
        : OptionalDouble.empty();
  }
}
