package dev.pellucid.parse;

import dev.pellucid.parse.generated.FeedLines.BasisContext;
import dev.pellucid.parse.generated.FeedLines.LeftContext;
import dev.pellucid.parse.generated.FeedLines.LimitLineContext;
import dev.pellucid.parse.generated.FeedLines.LimitPhraseContext;
import dev.pellucid.parse.generated.FeedLines.SumContext;
import dev.pellucid.parse.generated.FeedLines.WaiverLineContext;
import dev.pellucid.parse.generated.FeedLines.WaiverPhraseContext;
import dev.pellucid.parse.generated.FeedLines.WordContext;
import dev.pellucid.syntax.Amount;
import dev.pellucid.syntax.Basis;
import dev.pellucid.syntax.Left;
import dev.pellucid.syntax.LimitLine;
import dev.pellucid.syntax.Quoted;
import dev.pellucid.syntax.WaiverLine;
import dev.pellucid.syntax.Word;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;

/** The lines of limits and of waivers: what is limited, then phrases in any order, each once. */
final class LimitLines {
  private final Pieces pieces;
  private final Bounds bounds;

  LimitLines(Pieces pieces, Bounds bounds) {
    this.pieces = pieces;
    this.bounds = bounds;
  }

  LimitLine limit(LimitLineContext context) {
    Left left = left(context.what);
    Bounds.OnLine limits = bounds(context.what);
    Once<Basis> basis = new Once<>("the basis", pieces);
    Once<Word> origin = new Once<>("source", pieces);
    Once<Amount> confidence = new Once<>("the part of the batches", pieces);
    for (LimitPhraseContext phrase : context.phrases) {
      if (phrase.limit != null) {
        limits.add(phrase.limit);
      } else if (phrase.on != null) {
        basis.put(basis(phrase.on), pieces.span(phrase));
      } else if (phrase.source != null) {
        origin.put(pieces.word(phrase.source), pieces.span(phrase));
      } else {
        confidence.put(pieces.amount(phrase.confidence, Expected.CONFIDENCE), pieces.span(phrase));
      }
    }
    checkThereIsOne(limits, left);
    return new LimitLine(
        left,
        limits.bounds(),
        basis.value(),
        origin.value(),
        confidence.value(),
        pieces.span(context));
  }

  WaiverLine waiver(WaiverLineContext context) {
    Left left = left(context.what);
    Bounds.OnLine limits = bounds(context.what);
    Once<Basis> basis = new Once<>("the basis", pieces);
    Once<Word> until = new Once<>("until", pieces);
    Once<Quoted> by = new Once<>("by", pieces);
    Once<Quoted> because = new Once<>("because", pieces);
    for (WaiverPhraseContext phrase : context.phrases) {
      if (phrase.limit != null) {
        limits.add(phrase.limit);
      } else if (phrase.on != null) {
        basis.put(basis(phrase.on), pieces.span(phrase));
      } else if (phrase.until != null) {
        until.put(DayWord.of(phrase.until, pieces), pieces.span(phrase));
      } else if (phrase.by != null) {
        by.put(pieces.quoted(phrase.by), pieces.span(phrase));
      } else {
        because.put(pieces.quoted(phrase.because), pieces.span(phrase));
      }
    }
    checkThereIsOne(limits, left);
    return new WaiverLine(
        left,
        limits.bounds(),
        basis.value(),
        until.value(),
        by.value(),
        because.value(),
        pieces.span(context));
  }

  private Left left(LeftContext context) {
    Span span = pieces.span(context);
    if (context.cost != null) {
      return new Left.Cost(span);
    }
    if (context.inclusion != null) {
      return new Left.Inclusion(names(context.over), span);
    }
    Left.Nutrients over = nutrients(context.over);
    return context.under == null ? over : new Left.Ratio(over, nutrients(context.under), span);
  }

  private Left.Nutrients nutrients(SumContext context) {
    return new Left.Nutrients(names(context), pieces.span(context));
  }

  private List<Word> names(SumContext context) {
    if (context.names.size() == 1) {
      return List.of(pieces.word(context.names.get(0)));
    }
    List<Word> names = new ArrayList<>(context.names.size());
    for (WordContext name : context.names) {
      names.add(pieces.word(name));
    }
    return names;
  }

  /** The bounds of what stands on the left, which says what can bound it. */
  private Bounds.OnLine bounds(LeftContext context) {
    if (context.cost != null) {
      return bounds.onLine(Expected.COST, false);
    }
    if (context.inclusion != null) {
      return bounds.onLine(Expected.INCLUSION, false);
    }
    return context.under == null
        ? bounds.onLine(Expected.NUTRIENT, false)
        : bounds.onLine(Expected.RATIO, true);
  }

  private void checkThereIsOne(Bounds.OnLine limits, Left left) {
    if (limits.bounds().isEmpty()) {
      pieces.say(Complaints.boundMissing(left.text(), left.span()));
    }
  }

  private Basis basis(BasisContext context) {
    Span span = pieces.span(context);
    return context.moisture == null
        ? new Basis.OnDryMatter(span)
        : new Basis.AtMoisture(pieces.amount(context.moisture, Expected.MOISTURE), span);
  }
}
