package dev.pellucid.engine.report;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.trace.Kilograms;
import dev.pellucid.engine.trace.Recall.Amount;
import dev.pellucid.engine.trace.Recall.Between;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Figures of a recall in words: kg to the gram, and finer where little is in it. */
final class RecallFigures {
  static final String NOT_TOLD = "not told";

  private static final Pattern FIGURE = Pattern.compile("-?\\d+(\\.\\d+)?");
  private static final int OF_GRAMS = 3;
  private static final int OF_TENTHS = 4;
  private static final int FINEST = 6;
  private static final double LARGE = 100;

  private RecallFigures() {}

  /** Without its unit. */
  static String kg(double kg) {
    double size = Math.abs(kg);
    String fixed = Figures.visible(kg, size < 1 ? FINEST : size < LARGE ? OF_TENTHS : OF_GRAMS);
    return fixed.contains(".") ? fixed.replaceAll("\\.?0+$", "") : fixed;
  }

  static String kg(Kilograms kg) {
    if (kg.whole()) {
      return kg(kg.told());
    }
    return kg.told() > 0 ? "at least " + kg(kg.told()) : NOT_TOLD;
  }

  /** {@code 0 to 120} where records tell the bounds alone. */
  static String kg(Between kg) {
    return kg.isExact() ? kg(kg.most()) : kg(kg.least()) + " to " + kg(kg.most());
  }

  static String kg(OptionalDouble kg) {
    return kg.isPresent() ? kg(kg.getAsDouble()) : NOT_TOLD;
  }

  /** {@code 3 bags, 75 kg}, or the kg alone where no bags are told. */
  static String amount(Amount amount) {
    String kg = kg(amount.kg()) + " kg";
    return amount.bags() == 0 ? kg : Plural.of(amount.bags(), "bag") + ", " + kg;
  }

  /** What lies in the store, or is left of many. */
  static String amount(Amount amount, double least) {
    return new Between(least, amount.kg()).isExact()
        ? amount(amount)
        : (amount.bags() == 0 ? "" : Plural.of(amount.bags(), "bag") + " and more, ")
            + kg(new Between(least, amount.kg()))
            + " kg";
  }

  static String amount(Optional<Amount> amount) {
    return amount.map(RecallFigures::amount).orElse(NOT_TOLD);
  }

  static String bags(Amount amount) {
    return amount.bags() == 0 ? "-" : Integer.toString(amount.bags());
  }

  /** A share of 1 in percent. */
  static String percent(Between share) {
    String most = Figures.visible(100 * share.most(), 2);
    return share.isExact() ? most : Figures.visible(100 * share.least(), 2) + " to " + most;
  }

  static Column name(String head) {
    return new Column(head, Holds.NAME);
  }

  static Column words(String head) {
    return new Column(head, Holds.WORDS);
  }

  static Column figures(String head) {
    return new Column(head, Holds.FIGURES);
  }

  /** A table whose figures stand with their points one below the other. */
  static Table table(List<Column> columns, List<List<String>> rows) {
    List<List<String>> aligned = new ArrayList<>();
    rows.forEach(row -> aligned.add(new ArrayList<>(row)));
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).holds() == Holds.FIGURES) {
        align(aligned, i);
      }
    }
    return new Table(columns, aligned, false);
  }

  private static void align(List<List<String>> rows, int column) {
    int most = rows.stream().mapToInt(row -> decimals(row.get(column))).max().orElse(0);
    for (List<String> row : rows) {
      String cell = row.get(column);
      if (FIGURE.matcher(cell).matches() && most > 0) {
        String zeros = "0".repeat(most - decimals(cell));
        row.set(column, cell + (cell.contains(".") ? "" : ".") + zeros);
      }
    }
  }

  private static int decimals(String cell) {
    int point = cell.indexOf('.');
    return FIGURE.matcher(cell).matches() && point >= 0 ? cell.length() - point - 1 : 0;
  }
}
