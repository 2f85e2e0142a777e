package dev.pellucid.measure;

import java.util.Optional;

/**
 * How small and how large a figure can be where feed is made. A figure beyond has a slipped decimal
 * point or a wrong unit, and no sum with it could mean anything.
 *
 * <p>The bounds are those of the trade and of nature, drawn wide: what is unusual at one plant is
 * for {@code practice/bounds.yaml} to say, which is a warning. Here stands what no plant does.
 */
public enum Extent {
  /** Part of a whole. */
  SHARE("a share", "0", Unit.PERCENT, "100", Unit.PERCENT),
  /** Water of a feed. Without any dry matter nothing can be told on dry matter. */
  MOISTURE("a moisture", "0", Unit.PERCENT, "95", Unit.PERCENT),
  /** Water on the weight of a mix; a gelled diet takes up about four times its weight. */
  ADDED_WATER("water on a mix", "0", Unit.PERCENT, "400", Unit.PERCENT),
  /** More of a line than the feed is to hold; vitamin C of shrimp feed has been doubled. */
  EXTRA("an overage", "0", Unit.PERCENT, "1000", Unit.PERCENT),
  /** One nutrient over another; the smaller may be a trace. */
  RATIO("a ratio", "0", Unit.PERCENT, "1000000", Unit.PERCENT),
  /** Vitamin activity; pure vitamin D3 has 40,000,000,000 IU/kg. */
  ACTIVITY("an activity", "0", Unit.IU_PER_KG, "100000000000", Unit.IU_PER_KG),
  /** Energy; the gross energy of pure fat is about 40 MJ/kg. */
  ENERGY("an energy", "0", Unit.MJ_PER_KG, "60", Unit.MJ_PER_KG),
  /** A nutrient per energy; with 1 MJ/kg, all of a feed is 1000 g/MJ. */
  PER_ENERGY("a mass per energy", "0", Unit.G_PER_MJ, "1000", Unit.G_PER_MJ),
  /** From a trial on the bench to the work of a large mill for weeks. */
  BATCH("a batch", "1", Unit.G, "10000", Unit.T),
  /** From a sample to a bag that a crane lifts. */
  BAG("a bag", "1", Unit.G, "2", Unit.T),
  /** From nothing hatched yet to the largest fish that is farmed, a tuna of some 600 kg. */
  FISH("a fish", "0", Unit.G, "1", Unit.T),
  /** What sticks to scoop and bag when a line is weighed. */
  LOSS("the loss of a weighing", "0", Unit.G, "100", Unit.KG),
  /** What is on hand or on a scale: from a tenth of what a fine balance shows to a ship's load. */
  WEIGHT("a weight", "0.01", Unit.MG, "100000", Unit.T),
  /** Any mass of the data. */
  MASS("a mass", "0", Unit.MG, "100000", Unit.T),
  /** One grain of a powder: from a spray-dried grain of 1 µm to a whole seed. */
  PARTICLE("a particle", "0.000000001", Unit.MG, "100", Unit.G),
  /** A die, a screen or a cut: from the finest sieve of a crumble to a block for livestock. */
  HOLE("a hole or a cut", "0.01", Unit.MM, "200", Unit.MM),
  /** Any length of the data. */
  LENGTH("a length", "0", Unit.MM, "1000", Unit.MM),
  /** A step of a process: from a conditioner that is passed in seconds to drying in the sun. */
  STEP_TIME("the time of a step", "1", Unit.SECOND, "30", Unit.DAY),
  /** No feed and no premix keeps longer than ten years, whatever it is told. */
  SHELF_LIFE("a shelf life", "1", Unit.HOUR, "3653", Unit.DAY),
  /** Any time of the data. */
  TIME("a time", "0", Unit.SECOND, "3653", Unit.DAY),
  /** From melting ice to more than a drum dryer's gas leaves of a feed. */
  TEMPERATURE("a temperature", "0", Unit.CELSIUS, "400", Unit.CELSIUS),
  /** From a beaker to the largest mixers. */
  VOLUME("a volume", "0.01", Unit.LITRE, "100000", Unit.LITRE),
  /** From expanded flakes to heavy metal. */
  DENSITY("a density", "0.01", Unit.KG_PER_L, "25", Unit.KG_PER_L);

  /** What to do about a figure that cannot be. */
  public static final String REMEDY = "look for a slipped decimal point or a wrong unit";

  private final String what;
  private final Kind kind;
  private final double least;
  private final double most;
  private final String words;

  Extent(String what, String least, Unit leastUnit, String most, Unit mostUnit) {
    this.what = what;
    this.kind = leastUnit.kind();
    this.least = leastUnit.toBase(Double.parseDouble(least));
    this.most = mostUnit.toBase(Double.parseDouble(most));
    String from = leastUnit == mostUnit ? least : least + " " + leastUnit.symbol();
    this.words = "from " + from + " to " + most + " " + mostUnit.symbol();
  }

  /** What any figure of a kind is held to; none for money, and for shares, which may be ratios. */
  public static Optional<Extent> of(Kind kind) {
    return switch (kind) {
      case SHARE, PRICE -> Optional.empty();
      case ACTIVITY -> Optional.of(ACTIVITY);
      case ENERGY -> Optional.of(ENERGY);
      case SHARE_PER_ENERGY -> Optional.of(PER_ENERGY);
      case MASS -> Optional.of(MASS);
      case LENGTH -> Optional.of(LENGTH);
      case TIME -> Optional.of(TIME);
      case TEMPERATURE -> Optional.of(TEMPERATURE);
      case VOLUME -> Optional.of(VOLUME);
      case DENSITY -> Optional.of(DENSITY);
    };
  }

  public Kind kind() {
    return kind;
  }

  /**
   * Whether a figure can be.
   *
   * @param base in the base of the kind
   */
  public boolean holds(double base) {
    return Closeness.isAtLeast(base, least) && Closeness.isAtMost(base, most);
  }

  /** Behind a figure: {@code cannot be, a batch is from 1 g to 10000 t}. */
  public String cannotBe() {
    return "cannot be, " + what + " is " + words;
  }
}
