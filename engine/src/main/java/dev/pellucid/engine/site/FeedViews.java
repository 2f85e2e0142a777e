package dev.pellucid.engine.site;

import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.compare.FeedFigures;
import dev.pellucid.engine.compare.FigureTaking;
import dev.pellucid.engine.compute.Balance;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.explain.Columns;
import dev.pellucid.engine.judge.Judgement;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.Expectations;
import dev.pellucid.engine.plan.Weighed;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.ResolvedRecipe.BatchBasis;
import dev.pellucid.engine.resolve.ResolvedRecipe.BatchSize;
import dev.pellucid.engine.site.FeedView.Figured;
import dev.pellucid.engine.site.FeedView.Flow;
import dev.pellucid.engine.site.FeedView.FlowKind;
import dev.pellucid.engine.site.FeedView.Line;
import dev.pellucid.measure.Closeness;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Takes down what pages tell of a computed feed. */
public final class FeedViews {
  private final ComputedFeed feed;

  private FeedViews(ComputedFeed feed) {
    this.feed = feed;
  }

  /** The figures of a feed and how it stands with its limits; one not judged has no figure. */
  public static Figured of(ComputedFeed feed, Judgement judgement, FeedTables tables) {
    List<LimitStatus> judged =
        judgement.limits().stream().filter(one -> one.state().isJudged()).toList();
    FeedViews views = new FeedViews(feed);
    FeedFigures taken = FigureTaking.of(feed, judgement, tables);
    return new Figured(
        feed.recipe().batch().map(FeedViews::words).orElse(""),
        BatchPlan.weighing(feed, tables).stream().map(FeedViews::line).toList(),
        Expectations.of(taken.account().limits().values().stream().filter(Held::told).toList()),
        taken,
        views.flow(),
        Columns.of(feed, judged, tables.settings().currency()));
  }

  private static String words(BatchSize size) {
    return size.written().asWritten()
        + (size.basis() == BatchBasis.WEIGHED ? " weighed" : " finished");
  }

  private static Line line(Weighed weighed) {
    return new Line(
        weighed.name(),
        weighed.title(),
        weighed.place() == Place.COAT ? "coat" : "mix",
        plain(BigDecimal.valueOf(weighed.share())),
        weighed.total().kg().toPlainString());
  }

  private static String plain(BigDecimal figure) {
    return figure.signum() == 0 ? "0" : figure.stripTrailingZeros().toPlainString();
  }

  private List<Flow> flow() {
    Balance balance = feed.balances().expected();
    double wet = balance.mix() + balance.waterAdded();
    double steamed = wet + balance.steam();
    double kernelWater = balance.kernel() * balance.kernelMoisture();
    double finishedWater = balance.finished() * balance.moisture();
    List<Flow> flow = new ArrayList<>();
    flow.add(whole("into the mixer", balance.mix(), balance.mix() - balance.dryMatter()));
    comes(flow, "water", balance.waterAdded(), balance.mix());
    comes(flow, "steam taken up", balance.steam(), wet);
    goes(flow, "water that goes off", steamed - balance.kernel(), steamed);
    if (balance.coat() > Closeness.PART) {
      double coated = balance.kernel() + balance.coat();
      flow.add(whole("kernel", balance.kernel(), kernelWater));
      comes(flow, "coat", balance.coat(), balance.kernel());
      goes(flow, "water that goes off after the coat", coated - balance.finished(), coated);
    }
    flow.add(whole("finished feed", balance.finished(), finishedWater));
    double dust = balance.finished() - feed.bagged();
    goes(flow, "dust, fines and start-up", dust, balance.finished());
    double kept = feed.bagged() / balance.finished();
    flow.add(whole("in the bags", feed.bagged(), finishedWater * kept));
    return flow;
  }

  private static Flow whole(String words, double kg, double water) {
    return new Flow(words, kg, 0, water, FlowKind.WHOLE);
  }

  private static void comes(List<Flow> flow, String words, double kg, double before) {
    if (kg > Closeness.PART) {
      flow.add(new Flow(words, kg, before, 0, FlowKind.COMES));
    }
  }

  private static void goes(List<Flow> flow, String words, double kg, double before) {
    if (kg > Closeness.PART) {
      flow.add(new Flow(words, kg, before - kg, 0, FlowKind.GOES));
    }
  }
}
