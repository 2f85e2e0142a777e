package dev.pellucid.engine.check;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.text.Choices;
import dev.pellucid.text.TextEdit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * More or less of some lines, proven to meet what it is for and to break nothing.
 *
 * @param moved each line that changes, the rest too
 * @param meets how many broken limits it meets
 * @param relabels what the label must say after it, where that changes: {@code crude-fat 8.1 %}
 */
record Change(List<Moved> moved, int meets, List<String> relabels) {
  /** Of so many lines it is told what makes up for what. */
  private static final int FEW = 3;

  Change {
    moved = List.copyOf(moved);
    relabels = List.copyOf(relabels);
  }

  Change relabelled(List<String> words) {
    return new Change(moved, meets, words);
  }

  /** More, or where negative less, of a line, in points. */
  record Moved(Line line, BigDecimal points) {
    private String words() {
      return Figures.fixed(Math.abs(points.doubleValue()), points.scale())
          + " points "
          + (points.signum() > 0 ? "more " : "less ")
          + line.material().name();
    }
  }

  /** The shares as they are to be written; the rest takes what they leave by itself. */
  List<TextEdit> edits() {
    List<TextEdit> edits = new ArrayList<>();
    for (Moved one : moved) {
      if (!one.line().rest()) {
        BigDecimal share = one.line().designed().percent().add(one.points());
        edits.add(new TextEdit(one.line().figure(), share.toPlainString() + " %"));
      }
    }
    return edits;
  }

  /** {@code 2.0 points more maize in place of wheat would meet it}. */
  String words() {
    return amounts()
        + meeting(meets)
        + (relabels.isEmpty() ? "" : "; then write " + Choices.all(relabels) + " on the label");
  }

  /** {@code would meet it}, or how many broken limits. */
  static String meeting(int limits) {
    String what = limits == 2 ? "both broken limits" : "all " + limits + " broken limits";
    return " would meet " + (limits == 1 ? "it" : what);
  }

  /** The same without what comes of it. */
  String amounts() {
    List<Moved> more = new ArrayList<>();
    List<Moved> less = new ArrayList<>();
    boolean withRest = false;
    for (Moved one : moved) {
      (one.points().signum() > 0 ? more : less).add(one);
      withRest |= one.line().rest();
    }
    if (moved.size() > FEW || less.size() > 1 && !withRest) {
      return each(more, less);
    }
    if (more.size() == 1 && more.get(0).line().rest()) {
      return words(less) + ", made up by " + more.get(0).line().material().name() + ",";
    }
    if (less.size() == 1) {
      return words(more) + " in place of " + less.get(0).line().material().name();
    }
    List<Moved> told = new ArrayList<>();
    List<Moved> rest = new ArrayList<>();
    for (Moved one : moved) {
      (one.line().rest() ? rest : told).add(one);
    }
    return words(told) + ", made up by " + rest.get(0).line().material().name() + ",";
  }

  /** {@code 1.2 points more maize, 0.8 more soybean-oil and 2.0 less wheat}, the rest too. */
  private static String each(List<Moved> more, List<Moved> less) {
    List<String> words = new ArrayList<>();
    for (List<Moved> some : List.of(more, less)) {
      some.sort(Comparator.comparing((Moved one) -> one.points().abs()).reversed());
      for (Moved one : some) {
        words.add(words.isEmpty() ? one.words() : one.words().replace(" points ", " "));
      }
    }
    return Choices.all(words);
  }

  private static String words(List<Moved> some) {
    String words = some.get(0).words();
    return some.size() == 1 ? words : words + " and " + some.get(1).words();
  }
}
