package dev.pellucid.engine.data;

import dev.pellucid.engine.data.FigureReader.Ends;
import dev.pellucid.engine.data.MeantContent.Written;
import dev.pellucid.engine.data.SizeChecks.Row;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Meant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** The rows of sizes that are off by themselves: one figure in them has slipped. */
final class SizeSlips {
  /** The heaviest fish of a row over the lightest, the thickest pellet over the thinnest. */
  private static final double MOST_OF_FISH = 20;

  private static final double MOST_OF_PELLET = 6;
  private static final double LEAST = 1.1;

  private final List<Row> rows;
  private final Remarks remarks;
  private final boolean[] fish;
  private final boolean[] pellet;
  private boolean meals;

  SizeSlips(List<Row> rows, Remarks remarks) {
    this.rows = rows;
    this.remarks = remarks;
    this.fish = new boolean[rows.size()];
    this.pellet = new boolean[rows.size()];
  }

  /** Whether the fish of a row are doubted. */
  boolean fish(int row) {
    return fish[row];
  }

  /** Whether the pellet of a row is doubted. */
  boolean pellet(int row) {
    return pellet[row];
  }

  /** Whether one of the daily meals is. */
  boolean meals() {
    return meals;
  }

  /** Tells them. One row by itself may be of all fish. */
  void look() {
    if (rows.size() < 2) {
      return;
    }
    List<Ends> masses = new ArrayList<>();
    List<Ends> holes = new ArrayList<>();
    for (Row row : rows) {
      masses.add(new Ends(row.size().lightest(), row.size().heaviest()));
      holes.add(new Ends(row.size().thinnest(), row.size().thickest()));
    }
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      fish[i] = isOff(masses.get(i), LEAST, MOST_OF_FISH);
      if (fish[i]) {
        say(row.fish(), fishSentence(row, masses.get(i)), masses, i);
      }
      pellet[i] = isOff(holes.get(i), 1, MOST_OF_PELLET);
      if (pellet[i]) {
        String one =
            "a pellet of "
                + row.pellet().text()
                + " for fish of "
                + row.fish().text()
                + ": the thickest is "
                + times(holes.get(i))
                + " times the thinnest, commonly at most "
                + Figures.plain(MOST_OF_PELLET)
                + " times";
        say(row.pellet(), one, holes, i);
      }
    }
    lookAtMeals();
  }

  private static boolean isOff(Ends ends, double least, double most) {
    return ends.low() > 0 && (ends.high() > ends.low() * most || ends.high() < ends.low() * least);
  }

  private static String fishSentence(Row row, Ends ends) {
    String one = "fish of " + row.fish().text() + " in one row";
    return ends.high() > ends.low() * 2
        ? one
            + ": the heaviest are "
            + times(ends)
            + " times the lightest, commonly at most "
            + Figures.plain(MOST_OF_FISH)
            + " times"
        : one + " are all of one weight";
  }

  private static String times(Ends ends) {
    return Figures.plain(Math.rint(ends.high() / ends.low()));
  }

  private void say(Scalar at, String sentence, List<Ends> all, int row) {
    Optional<String> meant = meant(at, all, row);
    remarks.add(
        Finding.warning(SizeChecks.CODE, at.span(), sentence)
            .helping(
                meant.isPresent()
                    ? Meant.question(meant.get())
                    : "look for a slipped decimal point at one of its ends"));
  }

  /** The range with the point of one end elsewhere, so that it fits between its neighbours. */
  private static Optional<String> meant(Scalar at, List<Ends> all, int row) {
    String[] words = FigureReader.spaced(at).split("\\s+", 3);
    if (words.length < 3) {
      return Optional.empty();
    }
    Optional<Written> high = Written.of(words[2]);
    Optional<Written> low =
        high.isPresent() ? Written.of(words[0] + " " + high.get().unit().symbol()) : high;
    if (low.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    Ends ends = all.get(row);
    boolean wide = ends.high() > ends.low() * 2;
    double up = wide ? 10 : 0.1;
    double down = wide ? 0.1 : 10;
    if (fits(new Ends(ends.low(), ends.high() * down), all, row)) {
      return Optional.of(words[0] + " to " + high.get().times(down).words());
    }
    return fits(new Ends(ends.low() * up, ends.high()), all, row)
        ? Optional.of(number(low.get().times(up)) + " to " + high.get().words())
        : Optional.empty();
  }

  private static String number(Written written) {
    return written.number().stripTrailingZeros().toPlainString();
  }

  private static boolean fits(Ends ends, List<Ends> all, int row) {
    boolean after = row == 0 || follows(all.get(row - 1), ends);
    return after
        && ends.high() > ends.low()
        && (row == all.size() - 1 || follows(ends, all.get(row + 1)));
  }

  private static boolean follows(Ends less, Ends more) {
    return less.low() <= more.low()
        && less.high() <= more.high()
        && more.low() <= less.high() * 1.001;
  }

  private void lookAtMeals() {
    List<Row> told = new ArrayList<>();
    for (Row row : rows) {
      if (row.eaten().isPresent()) {
        told.add(row);
      }
    }
    double[] eaten = new double[told.size()];
    for (int i = 0; i < eaten.length; i++) {
      eaten[i] = told.get(i).eaten().orElse(0);
    }
    OneShifted shifted = new OneShifted(eaten, true);
    OptionalInt index = shifted.index();
    if (index.isPresent()) {
      meals = true;
      say(told, index.getAsInt(), shifted.shift());
    }
  }

  private void say(List<Row> told, int at, double shift) {
    Row row = told.get(at);
    Row other = told.get(at == 0 ? 1 : at - 1);
    Optional<Scalar> written = row.meal();
    Optional<Scalar> beside = other.meal();
    if (written.isEmpty() || beside.isEmpty()) {
      return;
    }
    Finding finding =
        Finding.warning(
                SizeChecks.CODE,
                written.get().span(),
                "fish of "
                    + row.fish().text()
                    + " eat "
                    + written.get().text()
                    + " of their weight a day, those of "
                    + other.fish().text()
                    + " "
                    + beside.get().text())
            .seeing("the other row", beside.get().span());
    Optional<Written> read = Written.of(written.get().text());
    remarks.add(
        finding.helping(
            read.isPresent()
                ? Meant.question(read.get().times(shift).words())
                : "look for a slipped decimal point in one of the two"));
  }
}
