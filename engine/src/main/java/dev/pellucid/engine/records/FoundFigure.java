package dev.pellucid.engine.records;

import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.syntax.Bound;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What one sample says of one limit.
 *
 * @param figure on the basis of the limit and in the base of its kind; of {@code below X} the end
 *     that keeps the limit
 * @param at the figure of the laboratory, the largest where it is a sum
 * @param step the last digit of what was found, or of the limit where that is finer
 * @param moisture by which it was brought to the basis; absent where none was needed
 */
record FoundFigure(
    Limit limit, double figure, Content at, double step, Optional<SampleMoisture> moisture) {
  private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");

  /** Empty where the sample was not analysed for it, or no laboratory finds it. */
  static Optional<FoundFigure> of(
      Limit limit, Map<String, Content> found, SampleMoisture moisture) {
    boolean max = limit.side() == Bound.Side.MAX;
    return limit
        .subject()
        .byKind(
            sum -> ofSum(limit, sum, found, moisture),
            ratio -> {
              Optional<Total> over = total(ratio.over().nutrients(), found, max);
              Optional<Total> under = total(ratio.under().nutrients(), found, !max);
              return over.isPresent() && under.filter(it -> it.figure() > 0).isPresent()
                  ? Optional.of(ofRatio(limit, ratio, over.get(), under.get()))
                  : Optional.empty();
            },
            inclusion -> Optional.empty(),
            cost -> Optional.empty());
  }

  private static Optional<FoundFigure> ofSum(
      Limit limit, Subject.Nutrients sum, Map<String, Content> found, SampleMoisture moisture) {
    boolean needed =
        !new Basis.AsFed().equals(limit.basis())
            && sum.nutrients().stream().noneMatch(one -> one.name().equals(Nutrients.MOISTURE));
    double factor = needed ? limit.basis().fromAsFed(1 - moisture.share()) : 1;
    return total(sum.nutrients(), found, limit.side() == Bound.Side.MAX)
        .map(
            it ->
                new FoundFigure(
                    limit,
                    it.figure() * factor,
                    it.largest(),
                    Math.min(it.step(), stepOf(limit)),
                    needed ? Optional.of(moisture) : Optional.empty()));
  }

  private static FoundFigure ofRatio(Limit limit, Subject.Ratio ratio, Total over, Total under) {
    return new FoundFigure(
        limit,
        over.figure() / under.figure() * ratio.kind().times(),
        over.largest(),
        stepOf(limit),
        Optional.empty());
  }

  /** Whether it is beyond the limit in the digits in which it was found. */
  boolean isBeyond() {
    double rounded = step > 0 ? Math.round(figure / step) * step : figure;
    return !Judge.keeps(limit.side(), figure, limit.inForce())
        && !Judge.keeps(limit.side(), rounded, limit.inForce());
  }

  /** Several contents of one sample together. */
  private record Total(double figure, Content largest, double step) {}

  /**
   * @param low whether of {@code below X} nothing counts, and not all of it; what was not found of
   *     a sum counts as nothing then too
   */
  private static Optional<Total> total(
      List<Nutrient> nutrients, Map<String, Content> found, boolean low) {
    List<Content> told = new ArrayList<>();
    for (Nutrient nutrient : nutrients) {
      Content one = found.get(nutrient.name());
      if (!nutrient.analysed() || (one == null && !low)) {
        return Optional.empty();
      }
      if (one != null) {
        told.add(one);
      }
    }
    if (told.isEmpty()) {
      return Optional.empty();
    }
    double figure = 0;
    double step = Double.MAX_VALUE;
    Content largest = told.get(0);
    for (Content one : told) {
      figure += low ? one.low() : one.high();
      largest = one.low() > largest.low() ? one : largest;
      step = Math.min(step, stepOf(one.asWritten(), one.high()));
    }
    return Optional.of(new Total(figure, largest, step));
  }

  /** What the last digit of a limit is worth, in the base of its kind. */
  private static double stepOf(Limit limit) {
    return stepOf(limit.writtenInForce().figure().toPlainString(), limit.inForce());
  }

  /** What the last digit of a written figure is worth; without end where none is written. */
  private static double stepOf(String written, double base) {
    Matcher number = NUMBER.matcher(written);
    OptionalDouble step = OptionalDouble.empty();
    if (number.find()) {
      BigDecimal figure = new BigDecimal(number.group());
      if (figure.signum() > 0) {
        double unit = base / figure.doubleValue();
        step = OptionalDouble.of(unit * Math.pow(10, -figure.scale()));
      }
    }
    return step.orElse(Double.MAX_VALUE);
  }
}
