package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Bound;
import dev.pellucid.text.Span;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** A figure on the wrong side of its limit: points at the line that brings most of it. */
final class BrokenLimit implements Rule {
  private final Code code;
  private final Bound.Side side;

  BrokenLimit(String code, Bound.Side side) {
    this.code = new Code(code);
    this.side = side;
  }

  @Override
  public Code code() {
    return code;
  }

  @Override
  public void look(Inspection recipe, Consumer<Finding> out) {
    recipe
        .feed()
        .ifPresent(
            feed ->
                recipe.verdicts().stream()
                    .filter(verdict -> verdict.limit().side() == side && !verdict.keeps())
                    .forEach(verdict -> out.accept(finding(feed, verdict))));
  }

  private Finding finding(ComputedFeed feed, Verdict verdict) {
    Limit limit = verdict.limit();
    Optional<Row> most = most(feed, verdict);
    Span span = most.map(row -> row.line().name()).orElse(feed.recipe().declared());
    Bound.Limit written = limit.writtenInForce();
    Figures.Pair figures =
        Figures.apart(shown(verdict.judged(), written), shown(limit.inForce(), written), 1);
    String unit = unit(written);
    String law = limit.origin().kind() == Limit.Kind.LAW ? "legal " : "";
    String what = side == Bound.Side.MIN ? "minimum" : "maximum";
    String batches =
        limit.inBatches().isPresent()
            ? " in " + Figures.plain(limit.inBatches().getAsDouble() * 100) + " % of batches"
            : "";
    String headline =
        limit.subject().text()
            + " is "
            + figures.value()
            + unit
            + limit.basis().words()
            + batches
            + ", the "
            + law
            + what
            + " is "
            + figures.other()
            + unit;
    Finding finding = Finding.error(code, span, headline).seeing("limit written", place(limit));
    List<String> path = most.map(Row::path).orElse(List.of());
    About.Side about = side == Bound.Side.MIN ? About.Side.MIN : About.Side.MAX;
    return help(finding, limit, most).about(new About(limit.subject().text(), about, path));
  }

  private Finding help(Finding finding, Limit limit, Optional<Row> most) {
    if (limit.origin().kind() == Limit.Kind.LAW) {
      return finding.helping("law cannot be waived: change the recipe");
    }
    String line = most.map(row -> row.line().material().name()).orElse("the line that brings it");
    return side == Bound.Side.MIN
        ? finding.helping("raise " + line + " or another line that brings more of it")
        : finding.helping("lower " + line + " or another line that brings much of it");
  }

  private static Span place(Limit limit) {
    return limit.waiver().map(waiver -> waiver.span()).orElse(limit.origin().span());
  }

  private static double shown(double base, Bound.Limit written) {
    return written instanceof Bound.Limit.Measured measured
        ? measured.amount().unit().fromBase(base)
        : base;
  }

  private static String unit(Bound.Limit written) {
    return written instanceof Bound.Limit.Measured measured
        ? " " + measured.amount().unitAsWritten().text()
        : "";
  }

  private static Optional<Row> most(ComputedFeed feed, Verdict verdict) {
    Subject subject = verdict.limit().subject();
    Subject.Nutrients sum =
        subject instanceof Subject.Ratio ratio
            ? ratio.over()
            : subject instanceof Subject.Nutrients nutrients ? nutrients : null;
    if (sum == null) {
      return subject instanceof Subject.Inclusion inclusion
          ? feed.rows().stream()
              .filter(row -> dev.pellucid.engine.compute.Readings.isOneOf(row, inclusion.names()))
              .max(Comparator.comparingDouble(Row::kg))
          : Optional.empty();
    }
    return feed.rows().stream()
        .max(
            Comparator.comparingDouble(
                row ->
                    sum.nutrients().stream()
                        .mapToDouble(n -> row.amount(verdict.end(), n.index()))
                        .sum()));
  }
}
