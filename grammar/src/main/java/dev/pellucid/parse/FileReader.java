package dev.pellucid.parse;

import dev.pellucid.finding.Finding;
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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.antlr.v4.runtime.ParserRuleContext;
import org.jspecify.annotations.Nullable;

/** The lines of one file in turn: the opening line, the head, and the sections in any order. */
final class FileReader {
  private final SourceFile source;
  private final FileKind kind;
  private final Tokens tokens;
  private final List<Line> lines;
  private final Pieces pieces;
  private final LineReader reader;
  private final HeadLines head;
  private final Sections sections;
  private @Nullable Opening opening;
  private @Nullable Span openingPlace;
  private @Nullable OpenSection<?> current;

  /** What an indented line belongs to: the section that is current, or the head. */
  private Part part;

  /** Which line is read. */
  private int at;

  private boolean skipping;
  private boolean skipped;

  FileReader(SourceFile source, FileKind kind, Tokens tokens, Blemishes blemishes) {
    this.source = source;
    this.kind = kind;
    this.tokens = tokens;
    this.lines = Line.of(tokens, source);
    this.pieces = new Pieces(source, tokens);
    this.reader = new LineReader(kind, tokens, pieces, blemishes);
    this.head = new HeadLines(kind, reader, pieces);
    this.sections = new Sections(reader, pieces);
    this.part = head;
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
      at = i;
      line(lines.get(i), i == 0);
    }
    Structure.checkWhole(kind, source, sections, skipped, pieces);
    return file();
  }

  private FeedFile file() {
    Optional<Opening> read = Optional.ofNullable(opening);
    return switch (kind) {
      case RECIPE -> sections.recipe(source, read, head.lines(HeadLine.OfRecipe.class));
      case PREMIX -> sections.premix(source, read, head.lines(HeadLine.OfPremix.class));
      case PROFILE -> sections.profile(source, read, head.lines(HeadLine.OfProfile.class));
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
    String word = tokens.text(line.from());
    if (isOpeningWord(word)) {
      if (line.indented()) {
        pieces.say(Structure.indentExtra(source, span(line), word));
      }
      openingLine(line);
    } else if (line.length() > 1 && Structure.isNear(word, kind.word())) {
      pieces.say(Structure.openingWord(tokens.span(line.from()), word, kind));
      tokens.readAs(line.from(), OpeningWords.type(kind));
      openingLine(line);
    } else {
      pieces.say(Structure.openingMissing(kind, tokens.span(line.from())));
      line(line, false);
    }
  }

  private void openingLine(Line line) {
    if (openingPlace != null) {
      pieces.say(Structure.openingTwice(span(line), openingPlace));
      return;
    }
    openingPlace = span(line);
    ParserRuleContext fitting = reader.read(LineRule.OPENING, Place.OPENING, line);
    if (fitting != null) {
      Opening read = opening((OpeningContext) fitting);
      opening = reader.isSound() ? read : null;
    }
  }

  private Opening opening(OpeningContext context) {
    Word keyword = pieces.word(context.keyword);
    Word name = pieces.word(context.name);
    Opening read =
        new Opening(
            keyword,
            name,
            context.title == null ? Optional.empty() : Optional.of(pieces.quoted(context.title)),
            pieces.span(context));
    boolean ofThisKind = context.keyword.getType() == OpeningWords.type(kind);
    Structure.checkOpening(read, ofThisKind, kind, source, pieces);
    return read;
  }

  private void indented(Line line) {
    Optional<SectionWord> heading =
        line.length() == 1 ? headingInDisguise(tokens.text(line.from())) : Optional.empty();
    if (heading.isEmpty()) {
      Optional<SectionWord> lost = lostHeading(line);
      if (lost.isPresent()) {
        pieces.say(Structure.headingLost(lost.get(), span(line), source));
        heading(lost.get(), span(line));
      }
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
    boolean inProcess = current != null && current.word() == SectionWord.PROCESS;
    Optional<SectionWord> exact = SectionWord.of(word);
    return exact
        .or(() -> Structure.nearSection(word, kind, this::isNearTooManyNames))
        .filter(meant -> kind.has(meant) && !standsElsewhere(meant))
        .filter(meant -> !(inProcess && meant == SectionWord.COAT));
  }

  /** Below a section a lone {@code oat} is an ingredient, in the head it can only be coat. */
  private boolean isNearTooManyNames(SectionWord word) {
    return current != null && word.word().length() < 5;
  }

  /**
   * The section whose heading is lost above a line: nothing from here to the next heading fits
   * where it stands, and all of it fits a section that the file does not have. It begins behind an
   * empty line, as sections do.
   */
  private Optional<SectionWord> lostHeading(Line line) {
    if (skipping || !isBehindGap(line) || fitsHere(line)) {
      return Optional.empty();
    }
    List<Line> block = new ArrayList<>();
    for (int i = at; i < lines.size() && lines.get(i).indented(); i++) {
      block.add(lines.get(i));
    }
    return inOrderFromHere()
        .filter(word -> kind.has(word) && !standsElsewhere(word))
        .filter(word -> block.stream().allMatch(one -> reader.fits(one, LineRule.of(word))))
        .filter(word -> block.stream().noneMatch(this::fitsHere))
        .findFirst();
  }

  /** Sections in the order in which files have them, those behind the current one first. */
  private Stream<SectionWord> inOrderFromHere() {
    return Stream.concat(
        Stream.of(SectionWord.values()).filter(word -> isBehindCurrent(word)),
        Stream.of(SectionWord.values()).filter(word -> !isBehindCurrent(word)));
  }

  private boolean isBehindCurrent(SectionWord word) {
    return current == null || word.compareTo(current.word()) > 0;
  }

  /** Whether an empty line stands above a line, or above the comments that stand above it. */
  private boolean isBehindGap(Line line) {
    if (at == 0 || !isFarFromLineBefore(line)) {
      return false;
    }
    int above = source.position(tokens.start(line.from())).line() - 1;
    while (above > 0 && source.line(above).strip().startsWith("#")) {
      above--;
    }
    return above > 0 && source.line(above).isBlank();
  }

  /** Whether more than one line end stands between; nearly every line is refused here. */
  private boolean isFarFromLineBefore(Line line) {
    String text = source.text();
    int ends = 0;
    for (int i = tokens.end(lines.get(at - 1).last()); i < tokens.start(line.from()); i++) {
      char c = text.charAt(i);
      ends += c == '\n' || c == '\r' ? 1 : 0;
    }
    return ends > 1;
  }

  private void content(Line line) {
    if (!skipping) {
      part.read(line);
    }
  }

  private void columnOne(Line line) {
    String joined = joined(line);
    Optional<SectionWord> word = SectionWord.of(joined);
    if (word.isPresent() && line.length() == 1) {
      heading(word.get(), span(line));
    } else if (line.length() > 1 && isOpeningWord(tokens.text(line.from()))) {
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
    OpenSection<?> earlier = sections.find(word);
    if (earlier != null) {
      pieces.say(Structure.sectionTwice(word, span, earlier.heading()));
      earlier.lacksSomething();
      open(earlier);
    } else {
      open(sections.open(word, span));
    }
  }

  private void open(OpenSection<?> section) {
    current = section;
    part = section;
  }

  private void skip() {
    sectionLacksSomething();
    skipping = true;
    skipped = true;
  }

  private void sectionLacksSomething() {
    if (current != null) {
      current.lacksSomething();
    }
  }

  /** Column 1 holds neither a section word nor an opening line. */
  private void strayInColumnOne(Line line, String joined) {
    Optional<SectionWord> near = Structure.nearSection(joined, kind, this::standsElsewhere);
    Optional<SectionWord> first =
        SectionWord.of(tokens.text(line.from()))
            .filter(word -> line.length() > 1 && kind.has(word));
    if (near.isPresent()) {
      pieces.say(Structure.sectionMisspelt(span(line), span(line), near.get(), kind));
      heading(near.get(), span(line));
    } else if (line.length() > 1 && fitsHere(line)) {
      pieces.say(Structure.indentMissing(source, span(line)));
      sectionLacksSomething();
    } else if (first.isPresent()) {
      pieces.say(Structure.headingExtra(first.get(), rest(line)));
      heading(first.get(), tokens.span(line.from()));
      sectionLacksSomething();
    } else if (line.length() == 1 && joined.chars().allMatch(Character::isLetter)) {
      pieces.say(Structure.sectionUnknown(span(line), kind));
      skip();
    } else {
      pieces.say(Structure.indentMissing(source, span(line)));
      sectionLacksSomething();
    }
  }

  private boolean fitsHere(Line line) {
    return reader.fits(line, current == null ? LineRule.HEAD : LineRule.of(current.word()));
  }

  private boolean standsElsewhere(SectionWord word) {
    for (Line line : lines) {
      if (!line.indented() && line.length() == 1 && tokens.text(line.from()).equals(word.word())) {
        return true;
      }
    }
    return sections.has(word);
  }

  private static boolean isOpeningWord(String word) {
    for (FileKind kind : FileKind.values()) {
      if (kind.word().equals(word)) {
        return true;
      }
    }
    return false;
  }

  private String joined(Line line) {
    if (line.length() == 1) {
      return tokens.text(line.from());
    }
    StringBuilder joined = new StringBuilder();
    for (int i = line.from(); i < line.to(); i++) {
      joined.append(tokens.text(i));
    }
    return joined.toString();
  }

  private Span span(Line line) {
    return tokens.span(line.from(), line.last());
  }

  private Span rest(Line line) {
    return tokens.span(line.from() + 1, line.last());
  }
}
