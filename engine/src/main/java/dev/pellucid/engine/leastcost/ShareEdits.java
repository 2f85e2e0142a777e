package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.text.Span;
import dev.pellucid.text.TextEdit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * New shares as edits of the text: only their digits change, in the unit and with the decimals in
 * which they are written, and the blanks behind them so far that what follows stays where it is. An
 * ingredient that comes in is a new line under the last of its section.
 */
public final class ShareEdits {
  /** Two blanks part the pieces of a line. */
  private static final int PARTED = 2;

  private final ResolvedRecipe recipe;
  private final int decimals;

  /**
   * @param decimals of shares in percent
   */
  ShareEdits(ResolvedRecipe recipe, int decimals) {
    this.recipe = recipe;
    this.decimals = decimals;
  }

  /**
   * The decimals with which the shares of free lines are written, in percent: the most of those in
   * percent, and of all where none is. A step asks for as many as it has.
   */
  public static int decimals(List<Free> free) {
    int most = -1;
    int most0 = 0;
    for (Free one : free) {
      if (one.step() > 0) {
        most = Math.max(most, scale(BigDecimal.valueOf(one.step())));
      }
      if (!one.line().rest() && one.line().designed().isPositive()) {
        String figure = one.line().figure().text();
        int here = Math.max(written(figure), scale(one.line().designed().percent()));
        most = figure.endsWith("kg") ? most : Math.max(most, here);
        most0 = Math.max(most0, here);
      }
    }
    return most >= 0 ? most : most0;
  }

  private static int scale(BigDecimal figure) {
    return Math.max(0, figure.stripTrailingZeros().scale());
  }

  private static int written(String figure) {
    int point = figure.indexOf('.');
    int digits = 0;
    while (point >= 0
        && point + 1 + digits < figure.length()
        && Character.isDigit(figure.charAt(point + 1 + digits))) {
      digits++;
    }
    return figure.endsWith("g/kg") ? (figure.endsWith("mg/kg") ? digits + 4 : digits + 1) : digits;
  }

  /** Of lines whose share is not as it is written; the rest takes what they leave by itself. */
  List<TextEdit> of(List<Free> free, double[] shares) {
    List<TextEdit> edits = new ArrayList<>();
    Map<Place, StringBuilder> more = new EnumMap<>(Place.class);
    for (int i = 0; i < shares.length; i++) {
      Line line = free.get(i).line();
      BigDecimal share =
          BigDecimal.valueOf(shares[i])
              .setScale(
                  Math.max(decimals, scale(line.designed().percent())), RoundingMode.HALF_EVEN);
      boolean comesIn = line.index() >= recipe.lines().size();
      if (comesIn && share.signum() > 0) {
        more.computeIfAbsent(line.place(), none -> new StringBuilder()).append(added(line, share));
      } else if (!comesIn && !line.rest() && share.compareTo(line.designed().percent()) != 0) {
        edits.add(edit(line.figure(), share));
      }
      if (!comesIn && free.get(i).high() <= 0 && share.signum() == 0) {
        orNone(line).ifPresent(edits::add);
      }
    }
    more.forEach((place, text) -> edits.add(new TextEdit(under(last(place)), text.toString())));
    return edits;
  }

  /** What was taken out may come back by itself: {@code within 2 to 10 % or none}. */
  private static Optional<TextEdit> orNone(Line line) {
    Optional<Line.Within> within = line.within();
    if (within.isEmpty() || within.get().orNone() || within.get().low() <= 0) {
      return Optional.empty();
    }
    Span span = within.get().written().span();
    return Optional.of(new TextEdit(new Span(span.file(), span.end(), span.end()), " or none"));
  }

  private TextEdit edit(Span figure, BigDecimal share) {
    String was = figure.text();
    int digits = 0;
    while (digits < was.length()
        && (Character.isDigit(was.charAt(digits)) || was.charAt(digits) == '.')) {
      digits++;
    }
    String unit = was.substring(digits);
    String now = inUnit(share, unit.strip()).toPlainString() + unit;
    String text = figure.file().text();
    int blanks = 0;
    while (figure.end() + blanks < text.length() && text.charAt(figure.end() + blanks) == ' ') {
      blanks++;
    }
    boolean last =
        figure.end() + blanks == text.length() || text.charAt(figure.end() + blanks) < ' ';
    if (last || blanks < PARTED) {
      return new TextEdit(figure, now);
    }
    int left = Math.max(PARTED, blanks + was.length() - now.length());
    return new TextEdit(
        new Span(figure.file(), figure.start(), figure.end() + blanks), now + " ".repeat(left));
  }

  private static BigDecimal inUnit(BigDecimal percent, String unit) {
    return switch (unit) {
      case "g/kg" -> shifted(percent, 1);
      case "mg/kg" -> shifted(percent, 4);
      default -> percent;
    };
  }

  private static BigDecimal shifted(BigDecimal percent, int places) {
    BigDecimal moved = percent.movePointRight(places);
    return moved.scale() < 0 ? moved.setScale(0) : moved;
  }

  /** A line of its own, laid out like the last of its section. */
  private String added(Line line, BigDecimal share) {
    Line after = last(line.place());
    String text = after.name().file().text();
    int start = after.name().start();
    while (start > 0 && text.charAt(start - 1) == ' ') {
      start--;
    }
    String name = " ".repeat(after.name().start() - start) + line.material().name();
    int blanks = Math.max(PARTED, after.figure().start() - start - name.length());
    String newline = text.contains("\r\n") ? "\r\n" : "\n";
    return newline + name + " ".repeat(blanks) + share.toPlainString() + " %";
  }

  /** The end of the line that a line stands on. */
  private static Span under(Line line) {
    String text = line.name().file().text();
    int end = line.figure().end();
    while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
      end++;
    }
    return new Span(line.name().file(), end, end);
  }

  /** The last line of a section; of the other where it has none. */
  private Line last(Place place) {
    Line last = recipe.lines().get(recipe.lines().size() - 1);
    for (Line line : recipe.lines()) {
      last = line.place() == place ? line : last;
    }
    return last;
  }
}
