package dev.pellucid.engine.data;

import java.util.List;

/**
 * Saturated water and steam by temperature; between rows on the straight line between them, beyond
 * the ends the end row.
 *
 * @param rows by rising temperature, at least two
 */
public record SteamTable(List<Row> rows, Source source) {
  public SteamTable {
    rows = List.copyOf(rows);
    if (rows.size() < 2) {
      throw new IllegalArgumentException("a steam table has at least two rows");
    }
  }

  /** °C; enthalpies of the liquid and of the vapour in kJ/kg. */
  public record Row(double temperature, double liquid, double vapour) {}

  /** Enthalpy of the liquid, kJ/kg. */
  public double liquid(double temperature) {
    return at(temperature).liquid();
  }

  /** Enthalpy of saturated steam, kJ/kg. */
  public double vapour(double temperature) {
    return at(temperature).vapour();
  }

  private Row at(double temperature) {
    Row before = rows.get(0);
    for (Row row : rows) {
      if (temperature <= row.temperature()) {
        return between(before, row, temperature);
      }
      before = row;
    }
    return before;
  }

  private static Row between(Row low, Row high, double temperature) {
    double width = high.temperature() - low.temperature();
    if (width == 0 || temperature <= low.temperature()) {
      return low;
    }
    double part = (temperature - low.temperature()) / width;
    return new Row(
        temperature,
        low.liquid() + part * (high.liquid() - low.liquid()),
        low.vapour() + part * (high.vapour() - low.vapour()));
  }
}
