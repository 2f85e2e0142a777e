package dev.pellucid.engine.resolve;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.ShareLine;
import dev.pellucid.text.Span;
import java.util.List;

/**
 * What a line says of how its share may move, where that can mean nothing: on the line that takes
 * what the others leave, in a premix, or beside a low end of zero.
 */
final class FreedomOfLine {
  static final Code OF_REST = new Code("rest-is-what-is-left");
  static final Code IN_PREMIX = new Code("freedom-in-premix");
  static final Code SAYS_NOTHING = new Code("none-says-nothing");

  private final List<Finding> findings;

  FreedomOfLine(List<Finding> findings) {
    this.findings = findings;
  }

  /**
   * Looks at one line.
   *
   * @param ofFeed whether it is of a feed; else of a premix
   */
  void look(ShareLine line, boolean ofFeed) {
    if (line.step().isPresent()) {
      step(line, line.step().get(), ofFeed);
    }
    if (line.within().isPresent() && !ofFeed) {
      findings.add(inPremix(line.within().get().span()));
    } else if (line.within().isPresent() && line.within().get().orNone().isPresent()) {
      orNone(line, line.within().get(), line.within().get().orNone().get().span());
    }
  }

  private void step(ShareLine line, ShareLine.StepSize step, boolean ofFeed) {
    if (!ofFeed) {
      findings.add(inPremix(step.span()));
    } else if (isRest(line)) {
      findings.add(
          taken(
                  Finding.error(
                      OF_REST,
                      step.span(),
                      line.subject()
                          + " takes what the other lines leave, so it cannot keep to a step of "
                          + step.size().asWritten()),
                  step.span(),
                  "take the step out")
              .helping(
                  "or give "
                      + line.subject()
                      + " a share, and write rest on a line that may come to any figure"));
    }
  }

  private void orNone(ShareLine line, ShareLine.Within within, Span orNone) {
    boolean fromZero = within.range().low().value().signum() == 0;
    if (isRest(line)) {
      findings.add(
          taken(
                  Finding.error(
                      OF_REST,
                      orNone,
                      line.subject()
                          + " takes what the other lines leave, so it cannot be left out"),
                  orNone,
                  "take or none out")
              .helping(
                  fromZero
                      ? "within "
                          + within.range().asWritten()
                          + " lets it come down to zero already"
                      : "write a low end of 0 where it may come down to zero"));
    } else if (fromZero) {
      findings.add(
          taken(
              Finding.note(
                  SAYS_NOTHING,
                  orNone,
                  "or none says nothing here: within "
                      + within.range().asWritten()
                      + " lets "
                      + line.subject()
                      + " come down to zero already"),
              orNone,
              "take or none out, or write the least that is worth taking as the low end"));
    }
  }

  private static boolean isRest(ShareLine line) {
    return line.share().byKind(stated -> false, rest -> true);
  }

  private static Finding inPremix(Span phrase) {
    return taken(
        Finding.error(
            IN_PREMIX, phrase, phrase.text() + " has its place in a recipe, not in a premix"),
        phrase,
        "take it out: a premix is made as it is written");
  }

  /** With the phrase taken out, and the white space before it. */
  private static Finding taken(Finding finding, Span phrase, String help) {
    String text = phrase.file().text();
    int start = phrase.start();
    while (start > 0 && Character.isWhitespace(text.charAt(start - 1))) {
      start--;
    }
    return finding.helping(help).fixing(phrase.file().span(start, phrase.end()), "");
  }
}
