package dev.pellucid.measure;

/** What a unit measures, and the base that all units of the kind are brought to. */
public enum Kind {
  /** Part of a mass: kg per kg. */
  SHARE("a share", "kg/kg"),
  /** Vitamin activity in a mass: IU per kg. */
  ACTIVITY("an activity", "IU/kg"),
  /** Energy in a mass: MJ per kg. */
  ENERGY("an energy", "MJ/kg"),
  /** Mass of a nutrient per energy: g per MJ. */
  SHARE_PER_ENERGY("a mass per energy", "g/MJ"),
  /** kg. */
  MASS("a mass", "kg"),
  /** mm. */
  LENGTH("a length", "mm"),
  /** Hours. */
  TIME("a time", "h"),
  /** Degrees Celsius. */
  TEMPERATURE("a temperature", "°C"),
  /** Litres. */
  VOLUME("a volume", "L"),
  /** kg per litre. */
  DENSITY("a density", "kg/L"),
  /** Money per kg; the currency stands before the stroke. */
  PRICE("a price", "per kg");

  private final String phrase;
  private final String base;

  Kind(String phrase, String base) {
    this.phrase = phrase;
    this.base = base;
  }

  /** With its article, for a sentence: "a share". */
  public String phrase() {
    return phrase;
  }

  /** The base unit, as a word. */
  public String base() {
    return base;
  }
}
