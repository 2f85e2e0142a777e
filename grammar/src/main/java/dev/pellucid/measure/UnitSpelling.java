package dev.pellucid.measure;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A unit as people write it to the symbol that the language has for it. */
public final class UnitSpelling {
  private static final Map<String, String> WORDS =
      Map.ofEntries(
          Map.entry("percent", "%"),
          Map.entry("pct", "%"),
          Map.entry("\uFF05", "%"),
          Map.entry("\u066A", "%"),
          Map.entry("ppm", "mg/kg"),
          Map.entry("ppb", "µg/kg"),
          Map.entry("mcg/kg", "µg/kg"),
          Map.entry("i.u./kg", "IU/kg"),
          Map.entry("gram", "g"),
          Map.entry("grams", "g"),
          Map.entry("gm", "g"),
          Map.entry("gr", "g"),
          Map.entry("kilo", "kg"),
          Map.entry("kilos", "kg"),
          Map.entry("kgs", "kg"),
          Map.entry("kilogram", "kg"),
          Map.entry("kilograms", "kg"),
          Map.entry("tonne", "t"),
          Map.entry("tonnes", "t"),
          Map.entry("hour", "h"),
          Map.entry("hours", "h"),
          Map.entry("hr", "h"),
          Map.entry("hrs", "h"),
          Map.entry("minute", "min"),
          Map.entry("minutes", "min"),
          Map.entry("mins", "min"),
          Map.entry("sec", "s"),
          Map.entry("seconds", "s"),
          Map.entry("day", "d"),
          Map.entry("days", "d"),
          Map.entry("celsius", "°C"),
          Map.entry("degc", "°C"),
          Map.entry("ºc", "°C"),
          Map.entry("litre", "L"),
          Map.entry("litres", "L"),
          Map.entry("millimetre", "mm"),
          Map.entry("millimetres", "mm"),
          Map.entry("micron", "µm"),
          Map.entry("microns", "µm"));

  private UnitSpelling() {}

  /** The right symbol; also for one that is right already. */
  public static Optional<String> of(String written) {
    Optional<Unit> exact = Unit.of(written);
    if (exact.isPresent()) {
      return Optional.of(written);
    }
    String small = written.toLowerCase(Locale.ROOT);
    String word = WORDS.get(small);
    return word != null ? Optional.of(word) : byCapitals(small);
  }

  private static Optional<String> byCapitals(String small) {
    for (Unit unit : Unit.values()) {
      if (unit.symbol().toLowerCase(Locale.ROOT).equals(small)) {
        return Optional.of(unit.symbol());
      }
    }
    for (String symbol : Unit.symbols()) {
      if (symbol.toLowerCase(Locale.ROOT).equals(small)) {
        return Optional.of(symbol);
      }
    }
    return Optional.empty();
  }
}
