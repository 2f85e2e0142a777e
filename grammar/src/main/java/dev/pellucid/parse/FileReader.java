package dev.pellucid.parse;

import dev.pellucid.finding.Finding;
import dev.pellucid.parse.generated.FeedLines;
import dev.pellucid.parse.generated.FeedLines.OpeningContext;
import dev.pellucid.slip.Place;
import dev.pellucid.syntax.FeedFile;
import dev.pellucid.syntax.FileKind;
import dev.pellucid.syntax.HeadLine;
import dev.pellucid.syntax.Opening;
import dev.pellucid.syntax.SectionWord;
import dev.pellucid.syntax.Word;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.WritableToken;

/** The lines of one file in turn: the opening line, the head, and the sections in any order. */
final class FileReader {
  private final SourceFile source;
  private final FileKind kind;
  private final LineTokens tokens;
  private final List<Line> lines;
  private final Pieces pieces;
  private final LineReader reader;
  private final HeadLines head;
  private final Sections sections;
  private Optional<Opening> opening = Optional.empty();
  private Optional<Span> openingPlace = Optional.empty();
  private Optional<OpenSection<?>> current = Optional.empty();
  private boolean skipping;
  private boolean skipped;

  FileReader(SourceFile source, FileKind kind, Blemishes blemishes) {
    this.source = source;
    this.kind = kind;
    this.tokens = new LineTokens(source);
    this.lines = Line.of(tokens, source);
    this.pieces = new Pieces(source);
    this.reader = new LineReader(kind, tokens, pieces, blemishes);
    this.head = new HeadLines(kind, pieces);
    this.sections = new Sections(reader, pieces);
  }

  List<Finding> findings() {
    return pieces.findings();
  }

  FeedFile read() {
    if (lines.isEmpty()) {
      pieces.say(Structure.empty(kind, source));
      return file();
    }
    for (int i = 0; i < lines.size(); i++) {
      line(lines.get(i), i == 0);
    }
    Structure.checkWhole(kind, source, sections, skipped, pieces);
    return file();
  }

  private FeedFile file() {
    return switch (kind) {
      case RECIPE -> sections.recipe(source, opening, head.lines(HeadLine.OfRecipe.class));
      case PREMIX -> sections.premix(source, opening, head.lines(HeadLine.OfPremix.class));
      case PROFILE -> sections.profile(source, opening, head.lines(HeadLine.OfProfile.class));
    };
  }

  private void line(Line line, boolean first) {
    if (first) {
      firstLine(line);
    } else if (line.indented()) {
      indented(line);
    } else {
      columnOne(line);
    }
  }

  private void firstLine(Line line) {
    String word = text(line.from());
    if (isOpeningWord(word)) {
      if (line.indented()) {
        pieces.say(Structure.indentExtra(source, span(line), word));
      }
      openingLine(line);
    } else if (line.length() > 1 && Structure.isNear(word, kind.word())) {
      pieces.say(Structure.openingWord(tokenSpan(line.from()), word, kind));
      ((WritableToken) tokens.token(line.from())).setType(OpeningWords.type(kind));
      openingLine(line);
    } else {
      pieces.say(Structure.openingMissing(kind, tokenSpan(line.from())));
      line(line, false);
    }
  }

  private void openingLine(Line line) {
    if (openingPlace.isPresent()) {
      pieces.say(Structure.openingTwice(span(line), openingPlace.get()));
      return;
    }
    openingPlace = Optional.of(span(line));
    opening = reader.read(Place.OPENING, line, FeedLines::opening, this::opening);
  }

  private Opening opening(OpeningContext context) {
    Word keyword = pieces.word(context.keyword);
    Word name = pieces.word(context.name);
    Opening read =
        new Opening(
            keyword,
            name,
            Optional.ofNullable(context.title).map(pieces::quoted),
            pieces.span(context));
    boolean ofThisKind = context.keyword.getType() == OpeningWords.type(kind);
    Structure.openingFinding(read, ofThisKind, kind, source).ifPresent(pieces::remark);
    return read;
  }

  private void indented(Line line) {
    Optional<SectionWord> heading =
        line.length() == 1 ? headingInDisguise(text(line.from())) : Optional.empty();
    if (heading.isEmpty()) {
      content(line);
      return;
    }
    Span word = span(line);
    pieces.say(
        heading.get().word().equals(word.text())
            ? Structure.indentExtra(source, word, word.text())
            : Structure.sectionMisspelt(word, Structure.withIndent(word), heading.get(), kind));
    heading(heading.get(), word);
  }

  /**
   * No line inside a section is a single word, so one that is, or is near, the word of a section
   * that the file does not have elsewhere was meant as a heading. Short words are near too many
   * names, and a coat step of process may lack the rest.
   */
  private Optional<SectionWord> headingInDisguise(String word) {
    boolean inProcess =
        current.filter(section -> section.word() == SectionWord.PROCESS).isPresent();
    Optional<SectionWord> exact = SectionWord.of(word);
    return exact
        .or(() -> Structure.nearSection(word, kind, this::isNearTooManyNames))
        .filter(meant -> kind.has(meant) && !standsElsewhere(meant))
        .filter(meant -> !(inProcess && meant == SectionWord.COAT));
  }

  /** Below a section a lone {@code oat} is an ingredient, in the head it can only be coat. */
  private boolean isNearTooManyNames(SectionWord word) {
    return current.isPresent() && word.word().length() < 5;
  }

  private void content(Line line) {
    if (skipping) {
      return;
    }
    if (current.isPresent()) {
      current.get().read(line);
    } else {
      reader.read(
          Place.HEAD,
          line,
          FeedLines::headLine,
          context -> {
            head.add(context);
            return context;
          });
    }
  }

  private void columnOne(Line line) {
    String joined = joined(line);
    Optional<SectionWord> word = SectionWord.of(joined);
    if (word.isPresent() && line.length() == 1) {
      heading(word.get(), span(line));
    } else if (line.length() > 1 && isOpeningWord(text(line.from()))) {
      openingLine(line);
    } else {
      strayInColumnOne(line, joined);
    }
  }

  private void heading(SectionWord word, Span span) {
    skipping = false;
    if (!kind.has(word)) {
      pieces.say(Structure.sectionForeign(word, kind, span));
      skip();
      return;
    }
    Optional<OpenSection<?>> earlier = sections.find(word);
    if (earlier.isPresent()) {
      pieces.say(Structure.sectionTwice(word, span, earlier.get().heading()));
      earlier.get().lacksSomething();
      current = earlier;
    } else {
      current = Optional.of(sections.open(word, span));
    }
  }

  private void skip() {
    current.ifPresent(OpenSection::lacksSomething);
    skipping = true;
    skipped = true;
  }

  /** Column 1 holds neither a section word nor an opening line. */
  private void strayInColumnOne(Line line, String joined) {
    Optional<SectionWord> near = Structure.nearSection(joined, kind, this::standsElsewhere);
    Optional<SectionWord> first =
        SectionWord.of(text(line.from())).filter(word -> line.length() > 1 && kind.has(word));
    if (near.isPresent()) {
      pieces.say(Structure.sectionMisspelt(span(line), span(line), near.get(), kind));
      heading(near.get(), span(line));
    } else if (line.length() > 1 && fitsHere(line)) {
      pieces.say(Structure.indentMissing(source, span(line)));
      current.ifPresent(OpenSection::lacksSomething);
    } else if (first.isPresent()) {
      pieces.say(Structure.headingExtra(first.get(), rest(line)));
      heading(first.get(), tokenSpan(line.from()));
      current.ifPresent(OpenSection::lacksSomething);
    } else if (line.length() == 1 && joined.chars().allMatch(Character::isLetter)) {
      pieces.say(Structure.sectionUnknown(span(line), kind));
      skip();
    } else {
      pieces.say(Structure.indentMissing(source, span(line)));
      current.ifPresent(OpenSection::lacksSomething);
    }
  }

  private boolean fitsHere(Line line) {
    return current.isPresent()
        ? reader.fits(line, Sections.rule(current.get().word()))
        : reader.fits(line, FeedLines::headLine);
  }

  private boolean standsElsewhere(SectionWord word) {
    for (Line line : lines) {
      if (!line.indented() && line.length() == 1 && text(line.from()).equals(word.word())) {
        return true;
      }
    }
    return sections.find(word).isPresent();
  }

  private static boolean isOpeningWord(String word) {
    for (FileKind kind : FileKind.values()) {
      if (kind.word().equals(word)) {
        return true;
      }
    }
    return false;
  }

  private String text(int token) {
    Token found = tokens.token(token);
    return source.text().substring(found.getStartIndex(), found.getStopIndex() + 1);
  }

  private String joined(Line line) {
    if (line.length() == 1) {
      return text(line.from());
    }
    StringBuilder joined = new StringBuilder();
    for (int i = line.from(); i < line.to(); i++) {
      joined.append(text(i));
    }
    return joined.toString();
  }

  private Span tokenSpan(int token) {
    return pieces.span(tokens.token(token));
  }

  private Span span(Line line) {
    return pieces.span(tokens.token(line.from()), tokens.token(line.to() - 1));
  }

  private Span rest(Line line) {
    return pieces.span(tokens.token(line.from() + 1), tokens.token(line.to() - 1));
  }
}
