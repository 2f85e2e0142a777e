package dev.pellucid.parse;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.parse.generated.FeedLines.HeadLineContext;
import dev.pellucid.parse.generated.FeedLines.ReviewContext;
import dev.pellucid.parse.generated.FeedTokens;
import dev.pellucid.slip.Place;
import dev.pellucid.syntax.FileKind;
import dev.pellucid.syntax.HeadLine;
import dev.pellucid.syntax.Numeral;
import dev.pellucid.syntax.Quoted;
import dev.pellucid.syntax.Word;
import dev.pellucid.text.Choices;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.ParserRuleContext;
import org.jspecify.annotations.Nullable;

/** The lines between the opening line and the first section. */
final class HeadLines implements Part {
  static final Code HEAD_LINE_TWICE = new Code("head-line-twice");
  static final Code HEAD_LINE_FOREIGN = new Code("head-line-foreign");

  static final Code COUNT = new Code("number-of-limits");

  private static final List<String> STATUSES = List.of("draft", "approved", "retired");
  private static final List<String> HABITS = List.of("floating", "sinking", "slow-sinking");
  private static final List<String> WEIGHTS = List.of("weighed", "finished");
  private static final List<String> PROFILE_KINDS = List.of("need", "practice", "law", "guidance");

  private final FileKind kind;
  private final List<String> words;
  private final LineReader reader;
  private final Pieces pieces;
  private final List<HeadLine> lines = new ArrayList<>();
  private final List<Word> seen = new ArrayList<>();

  HeadLines(FileKind kind, LineReader reader, Pieces pieces) {
    this.kind = kind;
    this.words = kind.headWords();
    this.reader = reader;
    this.pieces = pieces;
  }

  /** Those that a kind of file may have; of others a finding has spoken. */
  <L extends HeadLine> List<L> lines(Class<L> kind) {
    List<L> found = new ArrayList<>(lines.size());
    for (HeadLine line : lines) {
      if (kind.isInstance(line)) {
        found.add(kind.cast(line));
      }
    }
    return found;
  }

  @Override
  public void read(Line line) {
    ParserRuleContext fitting = reader.read(LineRule.HEAD, Place.HEAD, line);
    if (fitting != null) {
      add((HeadLineContext) fitting);
    }
  }

  private void add(HeadLineContext context) {
    Word key = pieces.word(context.key);
    checkPlace(context.key.getType(), key);
    HeadLine line = line(context);
    if (reader.isSound()) {
      lines.add(line);
    }
  }

  private void checkPlace(int type, Word key) {
    if (!words.contains(key.text())) {
      pieces.say(
          Finding.error(
                  HEAD_LINE_FOREIGN, key.span(), "a " + kind.word() + " has no line " + key.text())
              .helping("the head of a " + kind.word() + " has " + Choices.all(words)));
    } else if (!repeatable(type)) {
      checkStandsOnce(key);
    }
  }

  private void checkStandsOnce(Word key) {
    for (Word first : seen) {
      if (first.text().equals(key.text())) {
        pieces.say(
            Finding.error(HEAD_LINE_TWICE, key.span(), key.text() + " stands twice in the head")
                .seeing("the first", first.span())
                .helping("keep one of the two lines"));
        return;
      }
    }
    seen.add(key);
  }

  private boolean repeatable(int type) {
    return type == FeedTokens.MEETS
        || type == FeedTokens.MUST
        || type == FeedTokens.MATERIALS
        || (type == FeedTokens.SPECIES && kind == FileKind.PROFILE);
  }

  private HeadLine line(HeadLineContext context) {
    Span span = pieces.span(context);
    return switch (context.key.getType()) {
      case FeedTokens.STATUS ->
          new HeadLine.Status(oneOf("status", STATUSES, context), review(context.behind), span);
      case FeedTokens.SPECIES -> new HeadLine.ForSpecies(pieces.word(context.value), span);
      case FeedTokens.FISH -> new HeadLine.Fish(pieces.range(context.mass, Expected.FISH), span);
      case FeedTokens.HABIT -> new HeadLine.Habit(oneOf("habit", HABITS, context), span);
      case FeedTokens.PLANT -> new HeadLine.AtPlant(pieces.word(context.value), span);
      case FeedTokens.MEETS -> new HeadLine.Meets(pieces.word(context.value), span);
      case FeedTokens.BATCH -> batch(context, span);
      case FeedTokens.DOSE -> new HeadLine.Dose(pieces.amount(context.figure, Expected.DOSE), span);
      case FeedTokens.KIND -> new HeadLine.ProfileKind(oneOf("kind", PROFILE_KINDS, context), span);
      case FeedTokens.JURISDICTION -> new HeadLine.Jurisdiction(pieces.word(context.value), span);
      case FeedTokens.SOURCE -> new HeadLine.FromSource(pieces.word(context.value), span);
      case FeedTokens.HOLDS -> new HeadLine.Holds(count(pieces.numeral(context.count)), span);
      case FeedTokens.MATERIALS -> new HeadLine.OfMaterials(pieces.word(context.value), span);
      case FeedTokens.MUST -> new HeadLine.MustHold(pieces.word(context.value), span);
      default -> throw new IllegalStateException("not a head word: " + context.key.getText());
    };
  }

  private Optional<HeadLine.Review> review(@Nullable ReviewContext written) {
    if (written == null) {
      return Optional.empty();
    }
    Span span = pieces.span(written);
    Quoted by = pieces.quoted(written.by);
    Word day = DayWord.of(written.day, pieces);
    if (kind != FileKind.RECIPE) {
      pieces.say(
          Finding.error(
                  HEAD_LINE_FOREIGN, span, "a " + kind.word() + " does not tell who reviewed it")
              .helping("a recipe does, behind its status; take the words out here"));
    }
    return Optional.of(new HeadLine.Review(by, day, span));
  }

  private HeadLine batch(HeadLineContext context, Span span) {
    Word weight = pieces.word(context.weight);
    check("the weight of a batch", weight, WEIGHTS);
    return new HeadLine.Batch(pieces.amount(context.figure, Expected.BATCH), weight, span);
  }

  private Numeral count(Numeral count) {
    if (count.value().stripTrailingZeros().scale() > 0) {
      pieces.say(
          Finding.error(COUNT, count.span(), count.text() + " is no number of limits")
              .helping("write how many lines of limits there are: holds 9 limits"));
    }
    return count;
  }

  private Word oneOf(String key, List<String> choices, HeadLineContext context) {
    Word word = pieces.word(context.value);
    check(key, word, choices);
    return word;
  }

  private void check(String place, Word word, List<String> choices) {
    if (!choices.contains(word.text())) {
      pieces.say(Complaints.unknownWord(place, word, choices));
    }
  }
}
