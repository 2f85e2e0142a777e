package dev.pellucid.engine.resolve;

import dev.pellucid.engine.quantity.Share;
import dev.pellucid.measure.Closeness;
import dev.pellucid.syntax.Amount;
import dev.pellucid.syntax.Range;
import dev.pellucid.syntax.ShareLine;
import dev.pellucid.text.Span;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * A line of {@code mix} or {@code coat}. All shares are of everything weighed, before overage and
 * without process water.
 *
 * @param index its place among all lines of the recipe
 * @param designed the share as written, or what {@code rest} comes to before overage
 * @param share the share in the feed: with stability overage, the {@code rest} line less that of
 *     the others
 * @param onTop handling overage, weighed on top of 100 % and expected to be lost
 * @param kgPerWeighing handling overage that does not grow with the batch: as much each time the
 *     line is weighed out
 * @param rest whether the line is the {@code rest}
 * @param within the freedom of its share, where it tells one
 * @param step of what its share is a whole multiple, where it tells so; the {@code rest} has none
 * @param name where the subject stands
 * @param figure where the share stands
 */
public record Line(
    int index,
    Place place,
    Material material,
    Share designed,
    Share share,
    Share onTop,
    double kgPerWeighing,
    boolean rest,
    Optional<Within> within,
    Optional<Step> step,
    Span name,
    Span figure) {

  /**
   * The kg on top of a batch.
   *
   * @param weighings how often the line is weighed out for it
   */
  public double onTopKg(double batchKg, int weighings) {
    return onTop.part() * batchKg + (isTaken() ? kgPerWeighing * weighings : 0);
  }

  /** Whether more of it is weighed than its share, for what is lost on the way. */
  public boolean hasOverage() {
    return hasOnTop();
  }

  /** The same line of a recipe in which so many percent of this one are all there is. */
  Line scaled(int place, BigDecimal whole) {
    return new Line(
        place,
        this.place,
        material,
        Share.ratio(designed.percent(), whole),
        Share.ratio(share.percent(), whole),
        Share.ratio(onTop.percent(), whole),
        kgPerWeighing,
        rest,
        within,
        step,
        name,
        figure);
  }

  /** The same line with the shares of another reading of it. */
  Line withSharesOf(Line other) {
    return new Line(
        index,
        place,
        material,
        other.designed,
        other.share,
        other.onTop,
        other.kgPerWeighing,
        rest,
        within,
        step,
        name,
        figure);
  }

  /** The same line of another material, as of one lot of it. */
  public Line of(Material other) {
    return new Line(
        index,
        place,
        other,
        designed,
        share,
        onTop,
        kgPerWeighing,
        rest,
        within,
        step,
        name,
        figure);
  }

  /** Whether anything is weighed on top. */
  public boolean hasOnTop() {
    return onTop.isPositive() || (kgPerWeighing > 0 && isTaken());
  }

  /** Whether there is any of it: a line may stand at zero, to be taken up again later. */
  public boolean isTaken() {
    return share.isPositive() || onTop.isPositive();
  }

  /** Whether its share is a whole multiple of its step; so is one without a step. */
  public boolean keepsStep() {
    if (step.isEmpty()) {
      return true;
    }
    double steps = designed.part() / step.get().part();
    return Math.abs(steps - Math.rint(steps)) <= Closeness.PART * Math.max(1, steps);
  }

  /** Whether its own bounds allow a share; all are allowed where it tells none. */
  public boolean allows(double part) {
    if (within.isEmpty()) {
      return true;
    }
    Within free = within.get();
    return (free.orNone() && part == 0)
        || !(Closeness.isBelow(part, free.low()) || Closeness.isAbove(part, free.high()));
  }

  /**
   * The least that its bounds and its step allow, none left aside; a part of one. Only of a line
   * with bounds.
   */
  public double lowest() {
    double low = within.orElseThrow().low();
    return step.isEmpty() ? low : Closeness.up(low / step.get().part()) * step.get().part();
  }

  /** The most that its bounds and its step allow; a part of one. Only of a line with bounds. */
  public double highest() {
    double high = within.orElseThrow().high();
    return step.isEmpty() ? high : Closeness.down(high / step.get().part()) * step.get().part();
  }

  /**
   * The freedom that a line leaves for its share: {@code within 2 to 4 % or none}.
   *
   * @param low a part of one
   * @param high a part of one
   * @param orNone whether it may stand at zero too, below the low end
   */
  public record Within(double low, double high, boolean orNone, Range written) {
    static Optional<Within> of(ShareLine line) {
      if (line.within().isEmpty()) {
        return Optional.empty();
      }
      ShareLine.Within within = line.within().get();
      Range range = within.range();
      return Optional.of(
          new Within(range.lowBase(), range.highBase(), within.orNone().isPresent(), range));
    }

    /** As written, {@code or none} with it. */
    public String asWritten() {
      return orNone ? written.asWritten() + " or none" : written.asWritten();
    }

    /** Whether a share may be none where that is below the low end. */
    public boolean skips() {
      return orNone && low > 0;
    }
  }

  /**
   * What a share moves by: it is a whole multiple of this, as of a bag or a scoop.
   *
   * @param part a part of one, above zero
   */
  public record Step(double part, Amount written) {
    /** Exactly. */
    public Share share() {
      return Lines.exact(written);
    }

    static Optional<Step> of(ShareLine line) {
      if (line.step().isEmpty()) {
        return Optional.empty();
      }
      Amount size = line.step().get().size();
      return Optional.of(new Step(size.base(), size));
    }
  }

  /** Where the line goes in. */
  public enum Place {
    /** Through the mixer. */
    MIX,
    /** On the kernel, after the dryer. */
    COAT
  }
}
