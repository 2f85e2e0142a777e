package dev.pellucid.measure;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The units of the language and of the data files. Symbols are case-sensitive; some have more than
 * one spelling ({@code °C}, {@code C}, {@code ℃}), the first of which is the one we print.
 *
 * <p>Factors to the base of the kind are quotients of two exact figures, so that 0.15 mg/kg is the
 * double nearest to its value whatever the unit. By convention a month is 30.4375 days (a year of
 * 365.25 days over twelve), and 1 kcal is 4.184 kJ (thermochemical calorie, ISO 80000-5).
 */
public enum Unit {
  PERCENT(Kind.SHARE, "1", "100", "%"),
  G_PER_KG(Kind.SHARE, "1", "1000", "g/kg"),
  MG_PER_KG(Kind.SHARE, "1", "1000000", "mg/kg"),
  UG_PER_KG(Kind.SHARE, "1", "1000000000", "µg/kg"),
  IU_PER_KG(Kind.ACTIVITY, "1", "1", "IU/kg"),
  IU_PER_G(Kind.ACTIVITY, "1000", "1", "IU/g"),
  MJ_PER_KG(Kind.ENERGY, "1", "1", "MJ/kg"),
  KJ_PER_G(Kind.ENERGY, "1", "1", "kJ/g"),
  KCAL_PER_KG(Kind.ENERGY, "4184", "1000000", "kcal/kg"),
  G_PER_MJ(Kind.SHARE_PER_ENERGY, "1", "1", "g/MJ"),
  MG_PER_KJ(Kind.SHARE_PER_ENERGY, "1", "1", "mg/kJ"),
  T(Kind.MASS, "1000", "1", "t"),
  KG(Kind.MASS, "1", "1", "kg"),
  G(Kind.MASS, "1", "1000", "g"),
  MG(Kind.MASS, "1", "1000000", "mg"),
  MM(Kind.LENGTH, "1", "1", "mm"),
  UM(Kind.LENGTH, "1", "1000", "µm"),
  SECOND(Kind.TIME, "1", "3600", "s"),
  MINUTE(Kind.TIME, "1", "60", "min"),
  HOUR(Kind.TIME, "1", "1", "h"),
  DAY(Kind.TIME, "24", "1", "d"),
  MONTH(Kind.TIME, "730.5", "1", "months"),
  CELSIUS(Kind.TEMPERATURE, "1", "1", "°C"),
  LITRE(Kind.VOLUME, "1", "1", "L"),
  KG_PER_L(Kind.DENSITY, "1", "1", "kg/L"),
  G_PER_L(Kind.DENSITY, "1", "1000", "g/L"),
  KG_PER_M3(Kind.DENSITY, "1", "1000", "kg/m³"),
  /** Written with the currency: {@code EUR/kg}. */
  MONEY_PER_KG(Kind.PRICE, "1", "1", "/kg"),
  /** Written with the currency: {@code EUR/t}. */
  MONEY_PER_T(Kind.PRICE, "1", "1000", "/t");

  private static final Map<String, Unit> OTHER_SPELLINGS =
      Map.ofEntries(
          Map.entry("μg/kg", UG_PER_KG),
          Map.entry("ug/kg", UG_PER_KG),
          Map.entry("μm", UM),
          Map.entry("um", UM),
          Map.entry("month", MONTH),
          Map.entry("C", CELSIUS),
          Map.entry("℃", CELSIUS),
          Map.entry("l", LITRE),
          Map.entry("kg/l", KG_PER_L),
          Map.entry("g/l", G_PER_L),
          Map.entry("kg/m3", KG_PER_M3));

  private static final Map<String, Unit> BY_SYMBOL = bySymbol();

  private static Map<String, Unit> bySymbol() {
    Map<String, Unit> units = new HashMap<>();
    for (Unit unit : values()) {
      if (unit.kind != Kind.PRICE) {
        units.put(unit.symbol, unit);
      }
    }
    units.putAll(OTHER_SPELLINGS);
    return Map.copyOf(units);
  }

  private final Kind kind;
  private final double times;
  private final double over;
  private final String symbol;

  Unit(Kind kind, String times, String over, String symbol) {
    this.kind = kind;
    this.times = Double.parseDouble(times);
    this.over = Double.parseDouble(over);
    this.symbol = symbol;
  }

  /** The unit that a symbol means, letter for letter; a currency code before {@code /kg} too. */
  public static Optional<Unit> of(String symbol) {
    Unit known = BY_SYMBOL.get(symbol);
    if (known != null) {
      return Optional.of(known);
    }
    if (symbol.length() > 3 && isCurrency(symbol.substring(0, 3))) {
      String rest = symbol.substring(3);
      return rest.equals("/kg")
          ? Optional.of(MONEY_PER_KG)
          : rest.equals("/t") ? Optional.of(MONEY_PER_T) : Optional.empty();
    }
    return Optional.empty();
  }

  /** Every spelling that {@link #of} knows, without the prices. */
  public static SortedSet<String> symbols() {
    return new TreeSet<>(BY_SYMBOL.keySet());
  }

  public Kind kind() {
    return kind;
  }

  /** The spelling we print. */
  public String symbol() {
    return symbol;
  }

  /** The figure in the base of the kind. */
  public double toBase(BigDecimal figure) {
    return toBase(figure.doubleValue());
  }

  /** The figure in the base of the kind. */
  public double toBase(double figure) {
    return figure * times / over;
  }

  /** A base figure in this unit. */
  public double fromBase(double base) {
    return base * over / times;
  }

  private static boolean isCurrency(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) < 'A' || text.charAt(i) > 'Z') {
        return false;
      }
    }
    return true;
  }
}
