package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.judge.LawMargin;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * A limit of the law that the feed keeps on average, and fewer batches than the folder asks for
 * keep it, since lots differ. One that the rounding of the batch breaks on average is left to
 * {@link RoundingBreaksLimit}.
 */
final class LawWithoutMargin implements Rule {
  private static final Code CODE = new Code("law-without-margin");

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
    if (recipe.feed().isEmpty()) {
      return;
    }
    double keptIn = recipe.tables().settings().lawKeptIn();
    for (LimitStatus status : recipe.limits()) {
      Optional<LawMargin> margin = LawMargin.of(status);
      if (margin.isPresent()
          && !margin.get().isEnough(keptIn)
          && !isBrokenByRounding(recipe, status)) {
        out.accept(finding(recipe, recipe.feed().get(), margin.get(), keptIn));
      }
    }
  }

  private static boolean isBrokenByRounding(RuleContext recipe, LimitStatus status) {
    Optional<WeighedBatch> batch = recipe.floor().batch();
    Optional<Verdict> rounded =
        batch.isPresent() ? batch.get().asRounded(status.verdict()) : Optional.empty();
    return rounded.isPresent() && !rounded.get().keeps();
  }

  private static Finding finding(
      RuleContext recipe, ComputedFeed feed, LawMargin margin, double keptIn) {
    Limit limit = margin.limit();
    String about = limit.subject().text();
    LotSpread spread = LotSpread.of(feed, recipe.tables(), limit);
    Optional<LotSpread.Part> widest = spread.widest();
    Span span = widest.isPresent() ? widest.get().most().line().name() : MoistureTarget.place(feed);
    Finding finding =
        Finding.warning(CODE, span, headline(recipe, margin, keptIn))
            .seeing("limit written", limit.origin().span());
    if (widest.isPresent()) {
      finding =
          finding
              .labelled(label(widest.get(), about))
              .noting(
                  "the spread of "
                      + about
                      + " in "
                      + widest.get().ingredient()
                      + " "
                      + widest.get().basis().words());
    }
    finding = finding.noting(inFeed(margin, keptIn));
    if (margin.reading().spreadUnknown()) {
      finding = finding.noting("some of it tells no spread, so there may be more such batches");
    }
    return help(finding, recipe, feed, margin, keptIn)
        .about(new About(about, side(limit), path(widest)));
  }

  private static String headline(RuleContext recipe, LawMargin margin, double keptIn) {
    Limit limit = margin.limit();
    LimitWords words = new LimitWords(limit);
    boolean max = limit.side() == Bound.Side.MAX;
    String law = recipe.tables().settings().jurisdiction().map(j -> " (" + j + ")").orElse("");
    return percent(margin.beyond(), 1 - keptIn)
        + " of batches would be "
        + (max ? "over" : "below")
        + " the "
        + limit.writtenInForce().asWritten()
        + " of "
        + limit.subject().text()
        + words.terms()
        + " that the law"
        + law
        + (max ? " allows" : " asks")
        + "; on average it is "
        + words.besideBound(margin.reading().withoutUntold())
        + words.unit();
  }

  private static String label(LotSpread.Part widest, String about) {
    String of = widest.most().path().size() > 1 ? widest.ingredient() + " in it " : "";
    return of + "makes " + about + " differ most between batches";
  }

  private static String inFeed(LawMargin margin, double keptIn) {
    LimitWords words = new LimitWords(margin.limit());
    Verdict asked = margin.askedIn(keptIn).verdict();
    boolean max = margin.limit().side() == Bound.Side.MAX;
    return "one standard deviation between batches is "
        + words.figure(margin.reading().deviation())
        + words.unit()
        + ", so "
        + Figures.plain(keptIn, Unit.PERCENT)
        + " of batches stay "
        + (max ? "at or below " : "at or above ")
        + words.besideBound(margin.reading().withoutUntold() + asked.margin())
        + words.unit();
  }

  private static Finding help(
      Finding finding, RuleContext recipe, ComputedFeed feed, LawMargin margin, double keptIn) {
    Verdict broken = margin.askedIn(keptIn).verdict();
    Finding told = finding;
    Optional<Change> fix = broken.keeps() ? Optional.empty() : Fix.smallest(recipe, feed, broken);
    if (fix.isPresent()) {
      told = told.helping(fix.get().words());
    }
    Optional<String> supply =
        broken.keeps() ? Optional.empty() : SupplyFix.words(recipe, feed, broken);
    if (supply.isPresent()) {
      told = told.helping((fix.isPresent() ? "or " : "") + supply.get());
    }
    boolean changes = fix.isPresent() || supply.isPresent();
    return told.helping(
        (changes ? "or have" : "have")
            + " more lots analysed, and write their mean ± spread and the number of analyses into"
            + " the ingredient");
  }

  private static About.Side side(Limit limit) {
    return limit.side() == Bound.Side.MIN ? About.Side.MIN : About.Side.MAX;
  }

  private static List<String> path(Optional<LotSpread.Part> widest) {
    return widest.isPresent() ? widest.get().most().path() : List.of();
  }

  private static String percent(double part, double beside) {
    int decimals = part < 0.1 ? 1 : 0;
    return Figures.apart(part * 100, beside * 100, decimals).value() + " %";
  }
}
