package dev.pellucid.parse;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.FileKind;
import dev.pellucid.syntax.Opening;
import dev.pellucid.syntax.SectionWord;
import dev.pellucid.text.Choices;
import dev.pellucid.text.NearNames;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/** The sentences about how a file is built: its opening line, its sections, its indents. */
final class Structure {
  private Structure() {}

  static Finding empty(FileKind kind, SourceFile source) {
    return error("opening-missing", source.beginning(), "the file is empty")
        .helping("a " + kind.word() + " begins: " + example(kind));
  }

  static Finding openingMissing(FileKind kind, Span span) {
    return error(
            "opening-missing", span, "the file does not begin with its " + kind.word() + " line")
        .helping("write first, in column 1: " + example(kind));
  }

  static Finding openingWord(Span span, String word, FileKind kind) {
    return error("opening-word", span, word + " is not how a file begins")
        .helping("write " + kind.word())
        .fixing(span, kind.word());
  }

  static Finding openingTwice(Span span, Span first) {
    return error("opening-twice", span, "the file begins a second time here")
        .seeing("it began", first)
        .helping("put each recipe, premix and profile in a file of its own");
  }

  /** Says what is wrong with an opening line that could be read. */
  static void checkOpening(
      Opening opening, boolean ofThisKind, FileKind kind, SourceFile source, Pieces pieces) {
    String name = opening.name().text();
    if (!ofThisKind) {
      pieces.remark(openingKind(opening, kind));
    } else if (Character.isUpperCase(name.charAt(0)) == (kind == FileKind.PROFILE)) {
      pieces.remark(nameForm(opening, kind));
    } else if (!name.equals(source.stem())) {
      pieces.remark(nameDiffers(opening, kind, source));
    }
  }

  private static Finding openingKind(Opening opening, FileKind kind) {
    String word = opening.keyword().text();
    return error(
            "opening-kind",
            opening.keyword().span(),
            "a file that ends in "
                + kind.extension()
                + " holds a "
                + kind.word()
                + ", not a "
                + word)
        .helping("rename the file, or begin it with " + kind.word());
  }

  private static Finding nameForm(Opening opening, FileKind kind) {
    String name = opening.name().text();
    boolean profile = kind == FileKind.PROFILE;
    String fixed = profile ? name.toLowerCase(Locale.ROOT) : name.toUpperCase(Locale.ROOT);
    return error(
            "name-form",
            opening.name().span(),
            profile
                ? "the name of a profile is written in small letters, " + name + " is not"
                : "the code of a " + kind.word() + " is written in capitals, " + name + " is not")
        .helping("write " + fixed)
        .fixing(opening.name().span(), fixed);
  }

  private static Finding nameDiffers(Opening opening, FileKind kind, SourceFile source) {
    String name = opening.name().text();
    return error(
            "name-differs-from-file",
            opening.name().span(),
            "the file is called " + source.fileName() + " but holds " + kind.word() + " " + name)
        .helping(
            "rename the file to "
                + name
                + kind.extension()
                + ", or write "
                + source.stem()
                + " here");
  }

  static Finding indentExtra(SourceFile source, Span span, String word) {
    Span indent = source.span(withIndent(span).start(), span.start());
    return error("indent-extra", span, word + " starts in column 1, here it is indented")
        .helping("remove the spaces before it")
        .fixing(indent, "");
  }

  static Finding indentMissing(SourceFile source, Span span) {
    return error("indent-missing", span, "only an opening line or a section starts in column 1")
        .helping("put two spaces before this line")
        .fixing(source.span(span.start(), span.start()), "  ");
  }

  static Finding sectionForeign(SectionWord word, FileKind kind, Span span) {
    return error("section-foreign", span, "a " + kind.word() + " has no section " + word.word())
        .noting("the lines below it were not read")
        .helping("a " + kind.word() + " has " + sections(kind));
  }

  static Finding sectionTwice(SectionWord word, Span second, Span first) {
    return error("section-twice", second, "section " + word.word() + " stands twice")
        .seeing("the first", first)
        .helping("move the lines below into the first and delete this one");
  }

  static Finding sectionMisspelt(Span span, Span replaced, SectionWord meant, FileKind kind) {
    return error("section-unknown", span, span.text() + " is not a section of a " + kind.word())
        .noting("the lines below it were read as lines of " + meant.word())
        .helping("write " + meant.word() + " in column 1")
        .fixing(replaced, meant.word());
  }

  static Finding headingLost(SectionWord lost, Span line, SourceFile source) {
    int start = source.text().lastIndexOf('\n', line.start()) + 1;
    return error("heading-lost", line, "the heading " + lost.word() + " is lost above this line")
        .noting("this line and those below it were read as lines of " + lost.word())
        .helping("write " + lost.word() + " above it, in column 1")
        .fixing(source.span(start, start), lost.word() + "\n");
  }

  static Finding sectionUnknown(Span span, FileKind kind) {
    return error("section-unknown", span, span.text() + " is not a section of a " + kind.word())
        .noting("the lines below it were not read")
        .helping("a " + kind.word() + " has " + sections(kind));
  }

  static Finding headingExtra(SectionWord word, Span rest) {
    return error("heading-extra", rest, "the word " + word.word() + " stands alone on its line")
        .helping("put what follows on a line of its own, indented");
  }

  /** Says what a file as a whole lacks, unless lines were skipped that may hold it. */
  static void checkWhole(
      FileKind kind, SourceFile source, Sections sections, boolean skipped, Pieces pieces) {
    for (OpenSection<?> section : sections.opened()) {
      if (section.isBare()) {
        pieces.remark(
            error("section-empty", section.heading(), section.word().word() + " has no lines")
                .helping("write its lines below it, indented, or delete it"));
      }
    }
    if (!skipped) {
      checkNothingLacks(kind, source, sections, pieces);
    }
  }

  private static void checkNothingLacks(
      FileKind kind, SourceFile source, Sections sections, Pieces pieces) {
    boolean mix = sections.has(SectionWord.MIX);
    boolean there =
        switch (kind) {
          case RECIPE -> mix;
          case PREMIX -> mix || sections.has(SectionWord.SUPPLY);
          case PROFILE -> sections.has(SectionWord.LIMITS);
        };
    if (!there) {
      pieces.remark(lacking(kind, source.beginning()));
    }
  }

  private static Finding lacking(FileKind kind, Span place) {
    return switch (kind) {
      case RECIPE ->
          error("mix-missing", place, "the recipe has no mix")
              .helping("write mix in column 1 and below it a line for each ingredient");
      case PREMIX ->
          error("supply-missing", place, "the premix has neither supply nor mix")
              .helping("write supply in column 1 and below it what a kg of feed is to get");
      case PROFILE ->
          error("limits-missing", place, "the profile has no limits")
              .helping("write limits in column 1 and below it a line for each limit");
    };
  }

  static boolean isNear(String word, String meant) {
    return !NearNames.of(word, List.of(meant)).isEmpty();
  }

  /** The one section that a heading was surely meant to be. */
  static Optional<SectionWord> nearSection(
      String heading, FileKind kind, Predicate<SectionWord> taken) {
    List<String> free =
        kind.sections().stream().filter(w -> !taken.test(w)).map(SectionWord::word).toList();
    List<String> near = NearNames.of(heading, free);
    return near.size() == 1 ? SectionWord.of(near.get(0)) : Optional.empty();
  }

  /** From the start of the line to the end of the stretch; a byte order mark stays outside. */
  static Span withIndent(Span span) {
    int lineStart = span.start() - span.from().column() + 1;
    int start = Math.max(lineStart, Tokens.beginning(span.file().text()));
    return span.file().span(start, span.end());
  }

  private static String sections(FileKind kind) {
    return Choices.all(kind.sections().stream().map(SectionWord::word).toList());
  }

  private static String example(FileKind kind) {
    return switch (kind) {
      case RECIPE -> "recipe CG-36 \"Catfish grower, 4 mm\"";
      case PREMIX -> "premix VM-CAT \"Vitamin and mineral premix, catfish\"";
      case PROFILE -> "profile catfish-grower \"African catfish, 50 to 250 g\"";
    };
  }

  private static Finding error(String code, Span span, String headline) {
    return Finding.error(new Code(code), span, headline);
  }
}
