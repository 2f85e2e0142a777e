package dev.pellucid.parse;

import dev.pellucid.measure.Calendar;
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
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.Token;

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
    Phrases phrases = new Phrases(left);
    for (LimitPhraseContext phrase : context.phrases) {
      phrases.add(phrase);
    }
    phrases.checkBounds();
    return new LimitLine(
        left,
        phrases.limits.bounds(),
        phrases.basis.value(),
        phrases.origin.value(),
        phrases.confidence.value(),
        pieces.span(context));
  }

  WaiverLine waiver(WaiverLineContext context) {
    Left left = left(context.what);
    Phrases phrases = new Phrases(left);
    for (WaiverPhraseContext phrase : context.phrases) {
      phrases.add(phrase);
    }
    phrases.checkBounds();
    return new WaiverLine(
        left,
        phrases.limits.bounds(),
        phrases.basis.value(),
        phrases.until.value(),
        phrases.by.value(),
        phrases.because.value(),
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
    Left.Nutrients over = new Left.Nutrients(names(context.over), pieces.span(context.over));
    return context.under == null
        ? over
        : new Left.Ratio(
            over, new Left.Nutrients(names(context.under), pieces.span(context.under)), span);
  }

  private List<Word> names(SumContext context) {
    List<Word> names = new ArrayList<>(context.names.size());
    for (WordContext name : context.names) {
      names.add(pieces.word(name));
    }
    return names;
  }

  private static Expected expected(Left left) {
    return left.byKind(
        sum -> Expected.NUTRIENT,
        ratio -> Expected.RATIO,
        inclusion -> Expected.INCLUSION,
        cost -> Expected.COST);
  }

  /** The phrases of one line. */
  private final class Phrases {
    final Left left;
    final Bounds.OnLine limits;
    final Once<Basis> basis = new Once<>("the basis");
    final Once<Word> origin = new Once<>("source");
    final Once<Amount> confidence = new Once<>("the part of the batches");
    final Once<Word> until = new Once<>("until");
    final Once<Quoted> by = new Once<>("by");
    final Once<Quoted> because = new Once<>("because");

    Phrases(Left left) {
      this.left = left;
      Expected expected = expected(left);
      this.limits = bounds.onLine(expected, expected.equals(Expected.RATIO));
    }

    void add(LimitPhraseContext phrase) {
      Span span = pieces.span(phrase);
      if (phrase.limit != null) {
        limits.add(phrase.limit);
      } else if (phrase.on != null) {
        basis.put(basis(phrase.on), span);
      } else if (phrase.source != null) {
        origin.put(pieces.word(phrase.source), span);
      } else {
        confidence.put(pieces.amount(phrase.confidence, Expected.CONFIDENCE), span);
      }
    }

    void add(WaiverPhraseContext phrase) {
      Span span = pieces.span(phrase);
      if (phrase.limit != null) {
        limits.add(phrase.limit);
      } else if (phrase.on != null) {
        basis.put(basis(phrase.on), span);
      } else if (phrase.until != null) {
        until.put(day(phrase.until), span);
      } else if (phrase.by != null) {
        by.put(pieces.quoted(phrase.by), span);
      } else {
        because.put(pieces.quoted(phrase.because), span);
      }
    }

    void checkBounds() {
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

    /** A day that is none stays in the tree as it was written, so that it counts as expired. */
    private Word day(Token token) {
      Word day = pieces.word(token);
      if (!Days.isDay(day.text())) {
        pieces.remark(Complaints.dayForm(day));
      } else if (!Calendar.holds(LocalDate.parse(day.text()))) {
        pieces.say(Complaints.dayOutOfBounds(day));
      }
      return day;
    }
  }

  /** A phrase that may stand once on a line. */
  private final class Once<T> {
    private final String name;
    private Optional<T> value = Optional.empty();
    private Optional<Span> first = Optional.empty();

    Once(String name) {
      this.name = name;
    }

    Optional<T> value() {
      return value;
    }

    void put(T read, Span span) {
      first.ifPresent(place -> pieces.say(Complaints.phraseTwice(name, span, place)));
      value = Optional.of(read);
      first = Optional.of(span);
    }
  }
}
