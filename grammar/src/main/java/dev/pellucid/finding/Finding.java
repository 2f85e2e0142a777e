package dev.pellucid.finding;

import dev.pellucid.text.Sentence;
import dev.pellucid.text.Span;
import dev.pellucid.text.TextEdit;
import java.util.ArrayList;
import java.util.List;

/**
 * One thing the tool has to say. Whatever words of a person stand in its sentences, each is one
 * line that can be printed, as {@link Sentence} has it.
 *
 * @param headline one line that is enough on its own, without a full stop; a line end or another
 *     sign without a form, which a name of the data may bring along, becomes a space
 * @param span what is wrong
 * @param label what the excerpt says under the marked stretch; may be empty
 * @param related other places that explain it
 * @param notes further facts, a line each
 * @param helps what a person can do, a line each
 * @param edits the fix as edits, where it is certain
 */
public record Finding(
    Code code,
    Severity severity,
    String headline,
    Span span,
    String label,
    List<Related> related,
    List<String> notes,
    List<String> helps,
    List<TextEdit> edits,
    About about)
    implements Comparable<Finding> {

  public Finding {
    headline = Sentence.of(headline);
    if (headline.isEmpty() || headline.endsWith(".")) {
      throw new IllegalArgumentException("not a headline: " + headline);
    }
    label = Sentence.of(label);
    related = List.copyOf(related);
    notes = sentences(notes);
    helps = sentences(helps);
    edits = List.copyOf(edits);
  }

  public static Finding of(Code code, Severity severity, Span span, String headline) {
    return new Finding(
        code,
        severity,
        headline,
        span,
        "",
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        About.NOTHING);
  }

  public static Finding error(Code code, Span span, String headline) {
    return of(code, Severity.ERROR, span, headline);
  }

  public static Finding warning(Code code, Span span, String headline) {
    return of(code, Severity.WARNING, span, headline);
  }

  public static Finding note(Code code, Span span, String headline) {
    return of(code, Severity.NOTE, span, headline);
  }

  public Finding labelled(String text) {
    return new Finding(code, severity, headline, span, text, related, notes, helps, edits, about);
  }

  public Finding seeing(String text, Span place) {
    return new Finding(
        code,
        severity,
        headline,
        span,
        label,
        plus(related, new Related(text, place)),
        notes,
        helps,
        edits,
        about);
  }

  public Finding noting(String text) {
    return new Finding(
        code, severity, headline, span, label, related, plus(notes, text), helps, edits, about);
  }

  public Finding helping(String text) {
    return new Finding(
        code, severity, headline, span, label, related, notes, plus(helps, text), edits, about);
  }

  public Finding fixing(Span place, String replacement) {
    return new Finding(
        code,
        severity,
        headline,
        span,
        label,
        related,
        notes,
        helps,
        plus(edits, new TextEdit(place, replacement)),
        about);
  }

  public Finding about(About what) {
    return new Finding(code, severity, headline, span, label, related, notes, helps, edits, what);
  }

  /** By file, place, severity, code, headline: the order in which findings are printed. */
  @Override
  public int compareTo(Finding other) {
    int byPlace = span.compareTo(other.span);
    if (byPlace != 0) {
      return byPlace;
    }
    int bySeverity = severity.compareTo(other.severity);
    if (bySeverity != 0) {
      return bySeverity;
    }
    int byCode = code.compareTo(other.code);
    return byCode != 0 ? byCode : headline.compareTo(other.headline);
  }

  private static List<String> sentences(List<String> written) {
    List<String> sentences = new ArrayList<>(written.size());
    for (String one : written) {
      sentences.add(Sentence.of(one));
    }
    return List.copyOf(sentences);
  }

  private static <T> List<T> plus(List<T> list, T more) {
    List<T> longer = new ArrayList<>(list);
    longer.add(more);
    return longer;
  }
}
