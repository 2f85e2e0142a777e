package dev.pellucid.engine.yaml;

import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import dev.pellucid.text.Unseen;
import java.util.List;

/** What can be wrong with the text of a data file before its meaning is asked, in our words. */
public final class YamlFindings {
  static final Code TOO_LARGE = new Code("yaml-too-large");
  static final Code TOO_DEEP = new Code("yaml-too-deep");
  static final Code TAB = new Code("yaml-tab");
  static final Code CONTROL = new Code("yaml-control-character");
  static final Code MISSING_SPACE = new Code("yaml-missing-space");
  static final Code MISSING_COLON = new Code("yaml-missing-colon");
  static final Code COLON_IN_TEXT = new Code("yaml-colon-in-text");
  static final Code HASH_IN_TEXT = new Code("yaml-hash-in-text");
  static final Code RESERVED = new Code("yaml-reserved-start");
  static final Code DUPLICATE_KEY = new Code("yaml-duplicate-key");
  static final Code ALIAS = new Code("yaml-alias");
  static final Code TAG = new Code("yaml-tag");
  static final Code SECOND_DOCUMENT = new Code("yaml-second-document");
  static final Code OPEN_QUOTE = new Code("yaml-open-quote");
  static final Code OPEN_BRACKET = new Code("yaml-open-bracket");
  static final Code INDENTATION = new Code("yaml-indentation");
  static final Code OVER_LINES = new Code("yaml-over-lines");
  static final Code UNREADABLE = new Code("yaml-unreadable");

  private YamlFindings() {}

  /** Every code of this room. */
  public static List<Code> codes() {
    return List.of(
        TOO_LARGE,
        TOO_DEEP,
        TAB,
        CONTROL,
        MISSING_SPACE,
        MISSING_COLON,
        COLON_IN_TEXT,
        HASH_IN_TEXT,
        RESERVED,
        DUPLICATE_KEY,
        ALIAS,
        TAG,
        SECOND_DOCUMENT,
        OPEN_QUOTE,
        OPEN_BRACKET,
        INDENTATION,
        OVER_LINES,
        UNREADABLE);
  }

  static Finding tooLarge(SourceFile file) {
    return Finding.error(
            TOO_LARGE, file.beginning(), "the file is longer than 1 MiB and is not read")
        .helping("split it into smaller files of the same folder");
  }

  static Finding tooDeep(Span span, int deepest) {
    return Finding.error(
            TOO_DEEP, span, "lists and blocks lie more than " + deepest + " deep in one another")
        .helping("no data file needs more than five; look for a bracket too many");
  }

  static Finding tab(Span span) {
    return Finding.error(TAB, span, "a tab stands where only spaces may indent")
        .helping("indent with spaces, two for each step");
  }

  static Finding control(Span span, int c) {
    return Finding.error(
            CONTROL, span, "a character that cannot be seen stands here, " + Unseen.named(c))
        .helping("delete it; it often comes along when text is copied from a PDF or a web page")
        .fixing(span, "");
  }

  static Finding escaped(Span escape, int c) {
    return Finding.error(
            CONTROL,
            escape,
            escape.text() + " stands for a character that cannot be seen, " + Unseen.named(c))
        .helping("write text without it; no name or note needs such a character");
  }

  static Finding missingSpace(Span span, String written) {
    String key = written.substring(0, Math.max(0, written.indexOf(':')));
    return Finding.error(
            MISSING_SPACE, span, "a space is missing after the colon of " + Excerpt.of(key))
        .helping("write \"" + key + ": \" and then the value");
  }

  static Finding missingColon(Span line) {
    return Finding.error(MISSING_COLON, line, "this line has no key and colon before its text")
        .helping("write the key, a colon, a space and the value")
        .helping("text that goes on from the line above belongs on that line");
  }

  static Finding colonInText(Span colon, Span value) {
    return Finding.error(
            COLON_IN_TEXT, colon, "a colon and a space inside text that has no quotes round it")
        .helping(
            value.equals(colon) || value.text().indexOf('"') >= 0
                ? "put the whole text in quotes"
                : "put the whole text in quotes: \"" + value.text() + "\"");
  }

  static Finding hashInText(Span hash, Span before) {
    return Finding.error(
            HASH_IN_TEXT,
            hash,
            "YAML would cut the text off at this # and keep only " + Excerpt.of(before.text()))
        .helping("for a comment write two spaces before the # and one after it")
        .helping("if it belongs to the text, put the whole text in quotes");
  }

  static Finding reserved(Span span) {
    String sign = span.text().substring(0, 1);
    return Finding.error(RESERVED, span, "text cannot begin with " + sign + " without quotes")
        .helping("put it in quotes: \"" + span.text().replace("\"", "") + "\"");
  }

  static Finding duplicateKey(Scalar key, Scalar earlier) {
    return Finding.error(
            DUPLICATE_KEY, key.span(), Excerpt.of(key.text()) + " stands twice in this block")
        .seeing("first written", earlier.span())
        .helping("keep one of the two lines");
  }

  static Finding alias(Span span) {
    return Finding.error(
            ALIAS, span, "marks that repeat other parts of a file (&, * and <<) are not read here")
        .helping("write the values out where they belong")
        .helping("if it is text, put it in quotes");
  }

  static Finding tag(Span span) {
    return Finding.error(TAG, span, "marks of type (!) are not read here")
        .helping("delete the mark; the unit behind a figure says what it is")
        .helping("if it is text, put it in quotes");
  }

  static Finding secondDocument(Span span) {
    return Finding.error(SECOND_DOCUMENT, span, "a second document begins here, and one is read")
        .helping("delete the line --- above, or move what follows to a file of its own");
  }

  static Finding openQuote(Span span) {
    return Finding.error(
            OPEN_QUOTE, span, "the quote that opens here is not closed as it should be")
        .helping("close it on the same line")
        .helping("between \" and \" write \\\\ for a backslash");
  }

  static Finding openBracket(Span opened, Span problem) {
    return Finding.error(OPEN_BRACKET, opened, "the bracket that opens here is not closed in order")
        .seeing("it goes wrong", problem)
        .helping("close it with ] or }, and put a comma between the parts");
  }

  static Finding indentation(Span line) {
    return Finding.error(INDENTATION, line, "this line is not indented like the lines it goes with")
        .helping("lines of one block begin in one column, and a block two spaces further in");
  }

  static Finding overLines(Span span) {
    return Finding.error(OVER_LINES, span, "this text goes on over more than one line")
        .helping("write it on one line, or write >- after the colon and indent the text below");
  }

  static Finding unreadable(Span span) {
    return Finding.error(UNREADABLE, span, "the file cannot be read as YAML from here on")
        .helping(
            "look at the colons, dashes, quotes and indentation of this line and the one above");
  }
}
