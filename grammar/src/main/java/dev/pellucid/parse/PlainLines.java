package dev.pellucid.parse;

import dev.pellucid.parse.generated.FeedLines.BoundContext;
import dev.pellucid.parse.generated.FeedLines.LabelLineContext;
import dev.pellucid.parse.generated.FeedLines.OverageLineContext;
import dev.pellucid.parse.generated.FeedLines.ShareLineContext;
import dev.pellucid.parse.generated.FeedLines.SharePhraseContext;
import dev.pellucid.parse.generated.FeedLines.SupplyLineContext;
import dev.pellucid.parse.generated.FeedLines.TargetContext;
import dev.pellucid.syntax.Amount;
import dev.pellucid.syntax.Bound;
import dev.pellucid.syntax.LabelLine;
import dev.pellucid.syntax.OverageLine;
import dev.pellucid.syntax.OverageLine.Extra;
import dev.pellucid.syntax.OverageLine.Target;
import dev.pellucid.syntax.Range;
import dev.pellucid.syntax.ShareLine;
import dev.pellucid.syntax.ShareLine.OrNone;
import dev.pellucid.syntax.ShareLine.Share;
import dev.pellucid.syntax.ShareLine.StepSize;
import dev.pellucid.syntax.ShareLine.Within;
import dev.pellucid.syntax.SupplyLine;
import dev.pellucid.syntax.Word;
import java.util.List;
import java.util.Optional;

/** The lines of mix, coat, carrier, supply, overage and label. */
final class PlainLines {
  private static final List<String> PURPOSES = List.of("handling", "stability");

  private final Pieces pieces;
  private final Bounds bounds;

  PlainLines(Pieces pieces, Bounds bounds) {
    this.pieces = pieces;
    this.bounds = bounds;
  }

  ShareLine share(ShareLineContext context) {
    Share share =
        context.rest != null
            ? new Share.Rest(pieces.span(context.rest))
            : new Share.Stated(pieces.amount(context.stated, Expected.SHARE));
    Once<Within> within = new Once<>("within", pieces);
    Once<StepSize> step = new Once<>("step", pieces);
    for (SharePhraseContext phrase : context.phrases) {
      if (phrase.within != null) {
        within.put(within(phrase), pieces.span(phrase));
      } else {
        step.put(step(phrase), pieces.span(phrase));
      }
    }
    return new ShareLine(
        pieces.word(context.subject),
        context.rework != null,
        share,
        within.value(),
        step.value(),
        pieces.span(context));
  }

  private Within within(SharePhraseContext context) {
    Range range = pieces.range(context.within, Expected.WITHIN);
    Optional<OrNone> orNone =
        context.none == null
            ? Optional.empty()
            : Optional.of(new OrNone(pieces.span(context.none)));
    return new Within(range, orNone, pieces.span(context));
  }

  private StepSize step(SharePhraseContext context) {
    Amount size = pieces.amount(context.step, Expected.STEP);
    if (size.figure().signum() == 0) {
      pieces.say(Complaints.stepZero(size));
    }
    return new StepSize(size, pieces.span(context));
  }

  SupplyLine supply(SupplyLineContext context) {
    return new SupplyLine(
        pieces.word(context.nutrient),
        pieces.amount(context.figure, Expected.SUPPLY),
        pieces.word(context.from),
        pieces.span(context));
  }

  OverageLine overage(OverageLineContext context) {
    Word purpose = pieces.word(context.purpose);
    if (!PURPOSES.contains(purpose.text())) {
      pieces.say(Complaints.unknownWord("the purpose of an overage", purpose, PURPOSES));
    }
    return new OverageLine(target(context.lines), extra(context), purpose, pieces.span(context));
  }

  private Target target(TargetContext context) {
    return context.share == null
        ? new Target.Named(pieces.word(context.name))
        : new Target.LinesBelow(
            pieces.amount(context.share, Expected.LINES_BELOW), pieces.span(context));
  }

  private Extra extra(OverageLineContext context) {
    if (context.weighing == null) {
      return new Extra.OfLine(pieces.amount(context.extra, Expected.EXTRA));
    }
    Amount mass = pieces.amount(context.extra, Expected.EXTRA_PER_WEIGHING);
    return new Extra.PerWeighing(mass, pieces.span(context.extra.start, context.weighing));
  }

  LabelLine label(LabelLineContext context) {
    Word nutrient = pieces.word(context.nutrient);
    Optional<Amount> declared =
        context.declared == null
            ? Optional.empty()
            : Optional.of(pieces.amount(context.declared, Expected.NUTRIENT));
    Bounds.OnLine guaranteed = bounds.onLine(Expected.NUTRIENT, false);
    for (BoundContext bound : context.guaranteed) {
      guaranteed.add(bound);
    }
    List<Bound> read = guaranteed.bounds();
    return new LabelLine(nutrient, declared, read, pieces.span(context));
  }
}
