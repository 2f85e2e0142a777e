package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Practice;
import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.engine.data.Practice.PracticeBound;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;

/** Holds one figure after the other against the bounds of practice and words what is outside. */
public final class OutsidePractice {
  private final Code code;
  private final Practice practice;
  private final Consumer<Finding> out;

  public OutsidePractice(Code code, Practice practice, Consumer<Finding> out) {
    this.code = code;
    this.practice = practice;
    this.out = out;
  }

  /**
   * Says nothing where practice has no such bound.
   *
   * @param what begins the sentence: {@code "the mix is dried at"}
   * @param low the low end of the figure, in the base of its kind
   * @param high the high end; the same for a single figure
   * @param words turns a base figure into words
   */
  public void hold(
      BoundOf which,
      Span span,
      String what,
      double low,
      double high,
      DoubleFunction<String> words) {
    Optional<PracticeBound> bound = practice.bound(which);
    if (bound.isEmpty()) {
      return;
    }
    boolean over = Closeness.isAbove(high, bound.get().high());
    if (over || Closeness.isBelow(low, bound.get().low())) {
      double figure = over ? high : low;
      out.accept(finding(which, span, what + " " + words.apply(figure), bound.get(), over));
    }
  }

  /** Whether practice bounds such a figure, and this one is outside. */
  boolean isOutside(BoundOf which, double figure) {
    Optional<PracticeBound> bound = practice.bound(which);
    return bound.isPresent()
        && (Closeness.isBelow(figure, bound.get().low())
            || Closeness.isAbove(figure, bound.get().high()));
  }

  private Finding finding(
      BoundOf which, Span span, String told, PracticeBound bound, boolean over) {
    return Finding.warning(code, span, told + ", practice is " + bound.asWritten())
        .seeing("source of the bound", bound.source().declared())
        .noting(
            bound.source().cite().isEmpty()
                ? "the bound is " + bound.source().reliability().inWords()
                : "the bound is "
                    + bound.source().reliability().inWords()
                    + ": "
                    + bound.source().cite())
        .helping(
            (over ? "lower it" : "raise it")
                + ", or change "
                + which.word()
                + " in practice/bounds.yaml if your plant works otherwise")
        .about(new About(which.word(), over ? About.Side.MAX : About.Side.MIN, List.of()));
  }
}
