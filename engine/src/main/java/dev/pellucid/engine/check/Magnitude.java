package dev.pellucid.engine.check;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Amount;
import dev.pellucid.text.Meant;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** How far figures are apart, and what was probably meant by one that is far off. */
final class Magnitude {
  /** Of feed, where only the size of a figure counts. */
  private static final double DRY = 0.9;

  /** What is meant may be a little outside the figures beside it. */
  private static final double ROOM = 1.5;

  private static final int[] POINT = {-1, 1, -2, 2, -3, 3};

  private Magnitude() {}

  /** The bound of a limit per kg of feed as fed, near enough to compare sizes. */
  static double asFed(Limit limit) {
    return limit.subject().addends().isEmpty()
        ? limit.bound()
        : limit.basis().toAsFed(limit.bound(), DRY);
  }

  /** {@code 10 times}, or {@code a tenth of}. */
  static String times(double figure, double other) {
    double times = figure / other;
    if (times >= 1) {
      return Figures.plain(round(times)) + " times";
    }
    double part = 1 / times;
    if (Math.abs(part - 10) < 0.01) {
      return "a tenth of";
    }
    if (Math.abs(part - 100) < 0.1) {
      return "a hundredth of";
    }
    return Math.abs(part - 5) < 0.01 ? "a fifth of" : "less than a fifth of";
  }

  private static double round(double times) {
    return times < 20 ? Math.rint(times * 10) / 10 : Math.rint(times);
  }

  /** Asks after what was meant, where a unit of the others or a moved point brings it to them. */
  static Finding meant(Finding finding, Limit limit, List<Limit> others) {
    Optional<String> unit = inTheirUnit(limit, others);
    double least = Double.MAX_VALUE;
    double most = 0;
    for (Limit other : others) {
      least = Math.min(least, asFed(other));
      most = Math.max(most, asFed(other));
    }
    Optional<String> meant = unit.isPresent() ? unit : meant(limit, least / ROOM, most * ROOM);
    return meant.isPresent()
        ? finding
            .helping(Meant.question(meant.get()))
            .fixing(LimitWritten.figure(limit), meant.get())
        : finding.helping("fix the figure, or the unit");
  }

  /** The same number in the unit of another limit, where that comes to what the other says. */
  private static Optional<String> inTheirUnit(Limit limit, List<Limit> others) {
    Optional<Amount> own = limit.written().measured();
    if (own.isPresent()) {
      for (Limit other : others) {
        Optional<Amount> its = other.written().measured();
        if (its.isPresent() && its.get().unit() != own.get().unit()) {
          double factor = its.get().unit().toBase(1) / own.get().unit().toBase(1);
          double meant = asFed(limit) * factor;
          if (meant > asFed(other) / ROOM && meant < asFed(other) * ROOM) {
            return Optional.of(own.get().number().text() + " " + its.get().unitAsWritten().text());
          }
        }
      }
    }
    return Optional.empty();
  }

  /** The figure with its point moved as little as brings it into a span. */
  static Optional<String> meant(Limit limit, double low, double high) {
    for (int places : POINT) {
      double moved = asFed(limit) * Math.pow(10, places);
      if (moved >= low && moved <= high) {
        return Optional.of(
            moved(limit.written().figure(), places) + limit.written().unitAsWritten());
      }
    }
    return Optional.empty();
  }

  /** A figure with its point moved. */
  static String moved(BigDecimal figure, int places) {
    BigDecimal moved = figure.scaleByPowerOfTen(places);
    BigDecimal plain = moved.stripTrailingZeros();
    return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
  }
}
