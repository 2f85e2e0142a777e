package dev.pellucid.engine.check;

import dev.pellucid.engine.judge.Normal;
import dev.pellucid.engine.optimise.Part;
import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import dev.pellucid.text.Span;
import java.util.Optional;

/** What a part of a task asks, in words, and where it is written. */
public final class PartWords {
  private PartWords() {}

  /** {@code crude-protein at least 35 % (need of the fish, catfish-grower)}. */
  public static String of(Part part) {
    return part.byKind(
        kept -> of(kept.of().of()),
        least -> end(least.line(), "at least ", least.points()),
        most -> end(most.line(), "at most ", most.points()),
        moves -> "no more than " + points(moves.points()) + " moved (-Dpellucid.move)");
  }

  /** {@code 1 point}, {@code 2.5 points}. */
  public static String points(double points) {
    return Figures.plain(points) + (points == 1 ? " point" : " points");
  }

  /** Empty for what is asked for this run alone. */
  public static Optional<Span> place(Part part) {
    return part.byKind(
        kept -> place(kept.of().of()),
        least -> Optional.of(place(least.line())),
        most -> Optional.of(place(most.line())),
        moves -> Optional.empty());
  }

  private static String of(Requirement one) {
    return one.byKind(
        PartWords::limit,
        practice ->
            practice.figure().bound().word()
                + side(practice.side())
                + percent(
                    practice.side() == Bound.Side.MIN
                        ? practice.bound().low()
                        : practice.bound().high())
                + " (practice)",
        cap -> cap.ingredient().name() + " at most " + cap.cap().asWritten() + " (its cap)",
        label ->
            label.verdict().claim().nutrient().name()
                + side(label.side())
                + Figures.plain(label.bound(), label.verdict().claim().written().unit())
                + " (the label)",
        order -> order.more() + " no less than " + order.less() + " (their order on the label)",
        stock ->
            stock.ingredient()
                + " at most "
                + Figures.plain(stock.points())
                + " % (all that is in the store)");
  }

  private static String limit(Requirement.OfLimit asked) {
    Limit limit = asked.limit();
    boolean more = limit.inBatches().isEmpty() && asked.deviations() != 0;
    return limit.subject().text()
        + side(limit.side())
        + limit.writtenInForce().asWritten()
        + limit.demand().terms()
        + (more ? " in " + percent(Normal.below(asked.deviations())) + " of batches" : "")
        + " ("
        + kind(limit)
        + ")";
  }

  /** Who asks for a limit: {@code need of the fish, catfish-grower}. */
  static String kind(Limit limit) {
    String by = limit.origin().name();
    return switch (limit.origin().kind()) {
      case NEED -> "need of the fish, " + by;
      case PRACTICE -> "house practice, " + by;
      case LAW -> "law, " + by;
      case GUIDANCE -> "guidance, " + by;
      case RECIPE -> "the recipe itself";
    };
  }

  private static String end(Line line, String side, double points) {
    String why = line.within().isPresent() ? "its within" : "without a within no further";
    return line.material().name() + " " + side + Figures.plain(points) + " % (" + why + ")";
  }

  /** Where the freedom of a line is written, else its share. */
  public static Span place(Line line) {
    return line.within().isPresent() ? line.within().get().written().span() : line.figure();
  }

  private static Optional<Span> place(Requirement one) {
    return one.byKind(
        limit ->
            Optional.of(
                limit.limit().waiver().isPresent()
                    ? limit.limit().waiver().get().span()
                    : limit.limit().origin().span()),
        practice -> Optional.of(practice.bound().source().declared()),
        cap -> Optional.of(cap.cap().place()),
        label -> Optional.of(label.verdict().claim().name()),
        order -> Optional.empty(),
        stock -> Optional.of(stock.line().name()));
  }

  private static String side(Bound.Side side) {
    return side == Bound.Side.MIN ? " at least " : " at most ";
  }

  private static String percent(double part) {
    return Figures.plain(part, Unit.PERCENT);
  }
}
