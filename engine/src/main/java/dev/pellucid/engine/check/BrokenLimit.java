package dev.pellucid.engine.check;

import dev.pellucid.engine.check.Contributors.Contributor;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.quantity.Certainty;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.OwnSpecies;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.engine.resolve.Waiver;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Bound;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A figure on the wrong side of its limit: points at the line that brings most of it, says where
 * the bound stands and what would fix it. A maximum that only handling overage breaks is left to
 * {@link OverageBreaksMaximum}, one that only an untold content breaks to {@link UnknownContent}, a
 * minimum that only a gap in what the folder tells of heat and storage breaks to {@link
 * UnknownRetention}, protein of the species that is fed to {@link OwnSpeciesProtein}.
 */
final class BrokenLimit implements Rule {
  private static final int NAMED = 3;

  /** The least share that shows with one decimal of a percent. */
  private static final double SHOWS = 0.0005;

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
  public boolean isConsequence() {
    return true;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    if (recipe.feed().isPresent()) {
      look(recipe, recipe.feed().get(), out);
    }
  }

  private void look(RuleContext recipe, ComputedFeed feed, Remarks out) {
    for (LimitStatus status : recipe.limits()) {
      if (status.limit().side() == side
          && status.state() == LimitStatus.State.BROKEN
          && !OwnSpecies.isSubject(status.limit())) {
        out.accept(finding(recipe, feed, status), status);
      }
    }
  }

  private Finding finding(RuleContext recipe, ComputedFeed feed, LimitStatus status) {
    Verdict verdict = status.verdict();
    Limit limit = status.limit();
    Contributors contributors = Contributors.of(feed, verdict);
    Optional<Contributor> largest = contributors.largest();
    Span span = largest.map(one -> one.line().name()).orElse(MoistureTarget.place(feed));
    Finding finding =
        Finding.of(
            code,
            limit.origin().kind().broken(),
            span,
            headline(recipe, verdict.limit(), verdict.shown()));
    if (largest.isPresent() && verdict.reading().value() > 0) {
      finding = finding.labelled(label(verdict, largest.get()));
    }
    finding = finding.seeing("limit written", limit.origin().span());
    if (limit.waiver().isPresent()) {
      finding = finding.seeing("waiver written", limit.waiver().get().span());
    }
    finding = Suspects.named(noting(finding, status, contributors), feed, verdict);
    List<String> path = largest.map(one -> one.most().path()).orElse(List.of());
    About.Side about = side == Bound.Side.MIN ? About.Side.MIN : About.Side.MAX;
    return help(finding, recipe, feed, verdict, largest)
        .about(new About(limit.subject().text(), about, path));
  }

  static String headline(RuleContext recipe, Limit limit, Verdict.Shown shown) {
    LimitWords words = new LimitWords(limit);
    return is(told(limit.subject()), limit, shown.certainty())
        + words.against(recipe, shown.figure(), words.terms());
  }

  /** What is known is told apart from what may be. */
  private static String is(String what, Limit limit, Certainty certainty) {
    boolean min = limit.side() == Bound.Side.MIN;
    boolean ratio = limit.subject().isRatio();
    return switch (certainty) {
      case TOLD -> what + " is ";
      case AT_MOST -> what + " may be as much as ";
      case AT_LEAST ->
          !min
              ? what + " is at least "
              : ratio ? what + " may be as little as " : "of what is given, " + what + " is ";
      case UNSURE -> "of what is given, " + what + " is ";
    };
  }

  private static String told(Subject subject) {
    return subject.byKind(
        Subject.Nutrients::text,
        Subject.Ratio::text,
        inclusion -> "inclusion of " + String.join(" + ", inclusion.names()),
        Subject.Cost::text);
  }

  private static String label(Verdict verdict, Contributor largest) {
    Subject subject = verdict.limit().subject();
    String who =
        largest.most().path().size() > 1 ? "with " + largest.most().ingredient().name() + " " : "";
    String supplies = untold(verdict, largest) ? "may supply " : "supplies ";
    return who
        + subject.byKind(
            sum -> supplies + ofFigure(verdict, largest),
            ratio -> "supplies " + percent(largest.part()) + " of the " + ratio.over().text(),
            inclusion -> "is " + ofFigure(verdict, largest),
            cost -> "costs " + ofFigure(verdict, largest));
  }

  private static String ofFigure(Verdict verdict, Contributor largest) {
    LimitWords words = new LimitWords(verdict.limit());
    double value = verdict.shown().figure() - verdict.margin();
    return words.figure(largest.part() * value)
        + " of the "
        + words.figure(value)
        + words.partUnit();
  }

  private static Finding noting(Finding finding, LimitStatus status, Contributors contributors) {
    Verdict verdict = status.verdict();
    Finding told = finding;
    List<Contributor> most = contributors.largestFirst().stream().limit(NAMED).toList();
    if (most.size() > 1) {
      told =
          told.noting(
              "most comes from "
                  + most.stream()
                      .map(c -> c.line().material().name() + " (" + percent(c.part()) + ")")
                      .collect(Collectors.joining(", ")));
    }
    LimitWords words = new LimitWords(verdict.limit());
    Limit limit = verdict.limit();
    double expected = status.expected().value();
    if (!words.figure(expected).equals(words.figure(verdict.shown().figure()))) {
      told =
          told.noting(
              "on target and fresh it is " + words.figure(expected) + words.unit() + " on average");
    }
    if (verdict.reading().unknownShare() >= SHOWS) {
      told = told.noting(unknownPart(verdict));
    }
    Optional<Waiver> waiver = limit.waiver();
    return waiver.isEmpty()
        ? told
        : told.noting("waived until " + waiver.get().until() + " by " + waiver.get().by());
  }

  /** Whether a maximum is broken by a content that the largest contributor does not tell. */
  private static boolean untold(Verdict verdict, Contributor largest) {
    return verdict.limit().side() == Bound.Side.MAX
        && verdict.limit().subject().addends().stream()
            .anyMatch(n -> largest.most().composition().isUnknown(n.index()));
  }

  private static boolean onlyWhereTold(Verdict verdict) {
    List<Nutrient> addends = verdict.limit().subject().addends();
    return !addends.isEmpty() && addends.stream().allMatch(Nutrient::whereTold);
  }

  private static String unknownPart(Verdict verdict) {
    boolean ratio = verdict.limit().subject().isRatio();
    boolean atWorst = verdict.shown().certainty() == Certainty.TOLD;
    boolean nothing = verdict.limit().side() == Bound.Side.MIN || onlyWhereTold(verdict);
    String counted =
        ratio && atWorst
            ? "counts at its worst"
            : ratio || nothing || !atWorst
                ? "counts as nothing"
                : "counts as the most that it can be";
    return percent(verdict.reading().unknownShare())
        + " of the feed is of ingredients that do not give it, and "
        + counted;
  }

  private Finding help(
      Finding finding,
      RuleContext recipe,
      ComputedFeed feed,
      Verdict verdict,
      Optional<Contributor> largest) {
    Finding told = finding;
    if (largest.isPresent() && untold(verdict, largest.get())) {
      String name = largest.get().most().ingredient().name();
      told =
          told.helping(
              "write how much "
                  + verdict.limit().subject().text()
                  + " "
                  + name
                  + " holds, or none; untold it counts as the most that it can be");
    }
    told = LimitHelp.told(told, recipe, feed, verdict, largest);
    return switch (verdict.limit().origin().kind()) {
      case LAW -> told.helping("law cannot be waived: change the recipe");
      case GUIDANCE ->
          told.helping("or have it waived by someone who may, with the reason: guidance is no law");
      case NEED, PRACTICE, RECIPE -> told;
    };
  }

  private static String percent(double part) {
    return Figures.fixed(part * 100, part < 0.1 ? 1 : 0) + " %";
  }
}
