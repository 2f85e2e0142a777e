package dev.pellucid.engine.data;

import dev.pellucid.engine.data.MeantContent.Written;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Meant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** One figure of a list that falls out of its order, or far from its neighbours. */
final class ListSlips {
  private final String what;
  private final double most;
  private final Remarks remarks;

  /**
   * @param what "a die"
   * @param most of what is looked at; what is larger is another sort of thing
   */
  ListSlips(String what, double most, Remarks remarks) {
    this.what = what;
    this.most = most;
    this.remarks = remarks;
  }

  /**
   * @param bases what was read of each, in its order; nothing where it could not be read
   */
  void look(List<Scalar> written, List<Double> bases) {
    List<Scalar> told = new ArrayList<>();
    List<Double> figures = new ArrayList<>();
    for (int i = 0; i < bases.size(); i++) {
      if (bases.get(i) > 0 && bases.get(i) < most) {
        told.add(written.get(i));
        figures.add(bases.get(i));
      }
    }
    double[] all = new double[figures.size()];
    for (int i = 0; i < all.length; i++) {
      all[i] = figures.get(i);
    }
    OneShifted shifted = new OneShifted(all, false);
    OptionalInt index = shifted.index();
    if (index.isPresent()) {
      say(told, index.getAsInt(), shifted.shift());
    }
  }

  private void say(List<Scalar> told, int at, double shift) {
    Scalar odd = told.get(at);
    StringBuilder others = new StringBuilder();
    for (int i = 0; i < told.size(); i++) {
      if (i != at) {
        others.append(others.isEmpty() ? "" : ", ").append(told.get(i).text());
      }
    }
    Optional<Written> read = Written.of(odd.text());
    remarks.add(
        Finding.warning(
                Common.CODE,
                odd.span(),
                what + " of " + odd.text() + " is out of line with the others, " + others)
            .helping(
                read.isPresent()
                    ? Meant.question(read.get().times(shift).words())
                    : "look for a slipped decimal point"));
  }
}
