package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.NewShare;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.quantity.Share;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import dev.pellucid.text.TextEdit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The shares that a record gives its batch in place of those of the recipe, held against it: each
 * names a line of an ingredient, once, stays within the bounds that the recipe tells, and all
 * together are what they were. A line that tells no bounds moves by half at most, as a help of the
 * check does.
 */
final class RebalancedShares {
  static final Code OFF_RECIPE = new Code("rebalanced-off-recipe");
  static final Code TOTAL_OFF = new Code("rebalanced-total-off");

  /** Enough digits that a share is the figure that was written. */
  private static final MathContext WRITTEN = new MathContext(12);

  private final ResolvedRecipe recipe;
  private final BatchRecord record;
  private final List<Finding> findings = new ArrayList<>();

  /** By the index of the line. */
  private final SortedMap<Integer, NewShare> shares = new TreeMap<>();

  RebalancedShares(ResolvedRecipe recipe, BatchRecord record) {
    this.recipe = recipe;
    this.record = record;
    record.rebalanced().ifPresent(told -> told.shares().forEach(this::take));
    if (findings.isEmpty() && !shares.isEmpty()) {
      total();
    }
  }

  /** What is wrong with them; none where they can be taken. */
  List<Finding> findings() {
    return findings;
  }

  /** They as edits of the text of the recipe; the rest takes what they leave by itself. */
  List<TextEdit> edits() {
    List<TextEdit> edits = new ArrayList<>();
    shares.forEach(
        (index, share) -> {
          Line line = recipe.lines().get(index);
          if (!line.rest() && percent(share).compareTo(line.designed()) != 0) {
            edits.add(new TextEdit(line.figure(), percent(share).toString()));
          }
        });
    return edits;
  }

  /** A share as it was written. */
  static Share percent(NewShare share) {
    return new Share(BigDecimal.valueOf(share.share()).movePointRight(2).round(WRITTEN));
  }

  private void take(NewShare share) {
    Optional<Line> line =
        recipe.lines().stream().filter(one -> one.material().isCalled(share.line())).findFirst();
    if (line.isEmpty()) {
      findings.add(unknown(share));
      return;
    }
    NewShare before = shares.putIfAbsent(line.get().index(), share);
    if (before != null) {
      findings.add(
          Finding.error(OFF_RECIPE, share.name(), share.line() + " gets two shares in this batch")
              .seeing("the other one", before.place())
              .helping("keep one of the two"));
      return;
    }
    against(line.get(), share).ifPresent(findings::add);
  }

  private Finding unknown(NewShare share) {
    List<String> lines = recipe.lines().stream().map(line -> line.material().name()).toList();
    return Finding.error(OFF_RECIPE, share.name(), share.line() + " is no line of " + recipe.code())
        .helping(
            Meant.question(NearNames.of(share.line(), lines))
                .orElse("a batch is re-balanced with the lines of its recipe alone: take it out"));
  }

  private Optional<Finding> against(Line line, NewShare share) {
    if (line.material().single().isEmpty()) {
      return percent(share).compareTo(line.designed()) == 0
          ? Optional.empty()
          : Optional.of(ofDose(line, share));
    }
    double part = percent(share).part();
    if (!RebalancedBounds.allow(line, part)) {
      return Optional.of(outside(line, share, part));
    }
    return keepsStep(line, part) ? Optional.empty() : Optional.of(offStep(line, share));
  }

  private static boolean keepsStep(Line line, double part) {
    return line.step().isEmpty() || isWhole(part / line.step().get().part());
  }

  private static boolean isWhole(double steps) {
    return Math.abs(steps - Math.rint(steps)) <= 1e-7;
  }

  private Finding ofDose(Line line, NewShare share) {
    String name = line.material().name();
    return Finding.error(
            OFF_RECIPE,
            share.place(),
            name + " is not moved for one batch: its share is " + line.designed())
        .noting("what a premix brings, and what is worked in again, stays as the recipe has it")
        .seeing("share written", line.figure())
        .helping("take " + name + " out of the shares of this batch");
  }

  private Finding outside(Line line, NewShare share, double part) {
    String name = line.material().name();
    RebalancedBounds.Ends ends = RebalancedBounds.of(line);
    Finding finding =
        Finding.error(
                OFF_RECIPE,
                share.place(),
                name + " is " + percent(share) + " in this batch, and the recipe " + ends.words())
            .seeing(line.within().isPresent() ? "within written" : "share written", ends.place());
    Optional<Double> meant = TenTimes.moved(part, ends.low(), ends.high());
    return finding.helping(
        meant.isPresent()
            ? Meant.question(Figures.plain(meant.get(), Unit.PERCENT))
            : "stay within it, take other lots, or have the recipe itself changed");
  }

  private static Finding offStep(Line line, NewShare share) {
    String step = line.step().orElseThrow().written().asWritten();
    return Finding.error(
            OFF_RECIPE,
            share.place(),
            line.material().name()
                + " is "
                + percent(share)
                + " in this batch, and the recipe moves it by "
                + step)
        .seeing("step written", line.step().orElseThrow().written().span())
        .helping("write a whole multiple of " + step);
  }

  /** What the other lines leave to the rest, or all lines where the recipe has none. */
  private void total() {
    Share more = Share.ZERO;
    for (Line line : recipe.lines()) {
      NewShare share = shares.get(line.index());
      if (share != null && !line.rest()) {
        more = more.plus(percent(share)).minus(line.designed());
      }
    }
    Optional<Line> rest = recipe.rest();
    if (rest.isPresent()) {
      ofRest(rest.get(), rest.get().designed().minus(more));
    } else if (more.compareTo(Share.ZERO) != 0) {
      findings.add(
          totalOff(
              "with the lines that stay, the shares of this batch come to " + whole(more),
              (more.isPositive() ? "lower a line by " : "raise a line by ") + size(more)));
    }
  }

  private void ofRest(Line rest, Share left) {
    String name = rest.material().name();
    NewShare told = shares.get(rest.index());
    if (told != null && percent(told).compareTo(left) != 0) {
      Share off = percent(told).minus(left);
      findings.add(
          totalOff(
                  "with " + name + " the shares of this batch come to " + whole(off),
                  name + " is the rest: leave it out, or write " + left)
              .seeing("rest written", rest.figure()));
    } else if (told == null && !RebalancedBounds.allow(rest, left.part())) {
      findings.add(
          totalOff(
                  "the shares of this batch leave "
                      + left
                      + " for "
                      + name
                      + ", and the recipe "
                      + RebalancedBounds.of(rest).words(),
                  "move other lines so that the rest stays within that")
              .seeing("rest written", rest.figure()));
    }
  }

  private Finding totalOff(String headline, String help) {
    return Finding.error(
            TOTAL_OFF, record.rebalanced().orElseThrow().shares().get(0).name(), headline)
        .helping(help);
  }

  private static String whole(Share more) {
    return Share.WHOLE.plus(more)
        + ", which is "
        + size(more)
        + (more.isPositive() ? " too much" : " too little");
  }

  private static String size(Share share) {
    return share.isNegative() ? Share.ZERO.minus(share).toString() : share.toString();
  }
}
