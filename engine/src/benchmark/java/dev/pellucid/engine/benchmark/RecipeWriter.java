package dev.pellucid.engine.benchmark;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * Makes up recipes of the size that the design aims at: 60 written lines, {@link #INGREDIENTS}
 * ingredients, {@link #LIMITS} limits. A seed and a number always give the same recipe; its
 * ingredients are those of the example folder, its shares lie where a carp feed has them.
 *
 * <p>No line but a heading stands twice in a folder, so that nothing can be gained by remembering
 * lines: each figure ends in the number of its recipe, and a line without one has it in a remark.
 */
final class RecipeWriter {
  static final int INGREDIENTS = 30;

  /** Sides of limits that each recipe is held to: its own and those of {@link #PROFILE}. */
  static final int LIMITS = 30;

  static final String PROFILE =
      """
      profile pond-feed "What every feed of the benchmark meets"
        kind      practice
        source    house-rules

      limits
        moisture                     max 13 %
        crude-fat                    min 2 %      max 18 %
        calcium : phosphorus         min 0.3      max 3
        sodium                       max 1 %
        digestible-protein           min 12 %
        threonine                    min 0.5 %
        tryptophan                   min 0.1 %
        zinc                         max 400 mg/kg  at 12 % moisture
        selenium                     max 3 mg/kg  at 12 % moisture
        linolenic-acid + n-3-lc-pufa  min 0.05 %
      """;

  /** A minimum of crude protein that all of these feeds meet, and one that none does. */
  private static final String MET = "18";

  private static final String MISSED = "32";

  private static final List<Shelf> MIX =
      List.of(
          new Shelf(1, "12.00", "20.00", "soybean-meal-48"),
          new Shelf(
              3, "2.00", "4.00", "rapeseed-meal sunflower-meal-38 groundnut-cake full-fat-soya"),
          new Shelf(2, "3.00", "6.00", "maize wheat-flour broken-rice cassava-meal"),
          new Shelf(2, "2.00", "5.00", "wheat-middlings wheat-bran rice-bran"),
          new Shelf(
              2, "1.00", "3.00", "maize-gluten-60 wheat-gluten soy-concentrate-64 brewers-yeast"),
          new Shelf(1, "4.00", "8.00", "fish-meal-65"),
          new Shelf(
              3, "1.00", "3.00", "krill-meal squid-meal insect-meal-52 poultry-meal-60 blood-meal"),
          new Shelf(3, "0.20", "0.80", "monocalcium-phosphate limestone salt magnesium-oxide"),
          new Shelf(3, "0.05", "0.30", "dl-methionine l-lysine-hcl l-threonine"),
          new Shelf(
              3, "0.002", "0.010", "zinc-sulphate manganese-sulphate iron-sulphate selenite-1"),
          new Shelf(
              3,
              "0.020",
              "0.080",
              "ascorbyl-phosphate-35 choline-chloride-60 tocopheryl-acetate-50 inositol"));

  private static final List<Shelf> COAT =
      List.of(
          new Shelf(1, "0.50", "2.00", "soybean-oil rapeseed-oil"),
          new Shelf(1, "0.50", "1.00", "fish-oil"),
          new Shelf(1, "0.010", "0.030", "mixed-tocopherols"));

  private final Random random;
  private final String code;
  private final String tail;
  private final boolean broken;
  private final StringBuilder text = new StringBuilder();

  /** Ingredients of which some are taken, each with a share between two bounds in percent. */
  private record Shelf(int taken, BigDecimal least, BigDecimal most, List<String> names) {
    Shelf(int taken, String least, String most, String names) {
      this(taken, new BigDecimal(least), new BigDecimal(most), List.of(names.split(" ")));
    }
  }

  private RecipeWriter(long seed, int number, boolean broken) {
    this.random = new Random(seed * 1_000_003 + number);
    this.code = code(number);
    this.tail = "%06d".formatted(number);
    this.broken = broken;
  }

  static String code(int number) {
    return "B-%06d".formatted(number);
  }

  /**
   * One recipe.
   *
   * @param broken whether it is to miss one of its minima
   */
  static String write(long seed, int number, boolean broken) {
    return new RecipeWriter(seed, number, broken).write();
  }

  private String write() {
    head();
    text.append("\nmix\n");
    MIX.forEach(this::take);
    own("  wheat                        rest         within 5 to 70.~ %\n");
    text.append("\ncoat\n");
    COAT.forEach(this::take);
    limits();
    process();
    return text.toString();
  }

  private void head() {
    text.append("recipe ").append(code).append(" \"Carp feed ").append(code).append("\"\n");
    own(
        """
          status    approved     # ~
          species   common-carp  # ~
          fish      50 to 300.~ g
          habit     sinking      # ~
          meets     pond-feed    # ~
          batch     1000.~ kg weighed
        """);
  }

  /** Writes lines, each with the number of this recipe in place of a {@code ~}. */
  private void own(String lines) {
    text.append(lines.replace("~", tail));
  }

  private void take(Shelf shelf) {
    List<String> names = new ArrayList<>(shelf.names());
    Collections.shuffle(names, random);
    names.subList(0, shelf.taken()).forEach(name -> line(name, shelf));
  }

  private void line(String name, Shelf shelf) {
    int scale = shelf.least().scale();
    int steps = shelf.most().subtract(shelf.least()).unscaledValue().intValueExact();
    BigDecimal share = shelf.least().add(BigDecimal.valueOf(random.nextInt(steps + 1), scale));
    text.append("  ").append(padded(name, 29)).append(padded(share + tail + " %", 16));
    if (scale == 2 && random.nextBoolean()) {
      own("within %s to %s~ %%".formatted(shelf.least(), shelf.most()));
    }
    while (text.charAt(text.length() - 1) == ' ') {
      text.setLength(text.length() - 1);
    }
    text.append('\n');
  }

  private static String padded(String piece, int width) {
    return piece + " ".repeat(Math.max(2, width - piece.length()));
  }

  private void limits() {
    text.append("\nlimits\n");
    own("  crude-protein    min " + (broken ? MISSED : MET) + ".~ %  in 95 % of batches\n");
    own(
        """
          crude-protein    max 60.~ %
          crude-fibre      max 9.~ %
          crude-ash        min 1 %  max 14.~ %  on dry matter
          starch           min 5 %  max 60.~ %
          lysine           min 0.8~ %  in 90 % of batches
          lysine : crude-protein  min 3 %  max 12.~ %
          methionine-cystine  min 0.5~ %
          phosphorus       min 3 g/kg  max 25.~ g/kg
          available-phosphorus  min 0.1~ %
          digestible-protein : digestible-energy  min 8 g/MJ  max 60.~ g/MJ
          inclusion animal-meals + fish-meals  max 40.~ %
          cost             max 9.~ EUR/kg
        """);
  }

  private void process() {
    text.append("\nprocess\n");
    own(
        """
          condition  temperature       80.~ °C
          pellet     temperature       82.~ °C
          pellet     die               4.0 mm  # ~
          cool       moisture          12 %         accept 11 to 12.5~ %
          pack       bag               25 kg   # ~
          store      shelf-life        90 d    # ~
          store      temperature       20.~ °C
        """);
  }
}
