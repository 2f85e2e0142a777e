package dev.pellucid.engine.resolve;

import dev.pellucid.engine.quantity.Share;
import dev.pellucid.syntax.Range;
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
    Span name,
    Span figure) {

  /**
   * The kg on top of a batch.
   *
   * @param weighings how often the line is weighed out for it
   */
  public double onTopKg(double batchKg, int weighings) {
    return onTop.part() * batchKg + kgPerWeighing * weighings;
  }

  /** Whether more of it is weighed than its share, for what is lost on the way. */
  public boolean hasOverage() {
    return onTop.isPositive() || kgPerWeighing > 0;
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
        name,
        figure);
  }

  /** Whether anything is weighed on top. */
  public boolean hasOnTop() {
    return onTop.isPositive() || kgPerWeighing > 0;
  }

  /**
   * The freedom that a line leaves for its share: {@code within 2 to 4 %}.
   *
   * @param low a part of one
   * @param high a part of one
   */
  public record Within(double low, double high, Range written) {
    static Optional<Within> of(Optional<Range> written) {
      if (written.isEmpty()) {
        return Optional.empty();
      }
      Range range = written.get();
      return Optional.of(new Within(range.lowBase(), range.highBase(), range));
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
