package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.measure.Kind;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a person asks for beside least cost, from the words of a command line. Each slip is one
 * sentence that says what to write; where there is one, nothing is asked at all.
 */
public final class WishesReader {
  /** The parameters, as they stand behind {@code pellucid.} */
  public static final String FREE = "free";

  public static final String TRY = "try";
  public static final String WITHOUT = "without";
  public static final String MOVE = "move";
  public static final String WORTH = "worth";
  public static final String KEEP = "keep";
  public static final String MARGIN = "margin";
  public static final String SWEEP = "sweep";
  public static final String STOCK = "stock";
  public static final String PRICES = "prices";

  private static final String NUMBER = "([-+]?[0-9]+(?:\\.[0-9]+)?)";
  private static final Pattern POINTS = Pattern.compile(NUMBER + " *points?");
  private static final Pattern AMOUNT = Pattern.compile(NUMBER + " *(\\S+)?");
  private static final Pattern PART =
      Pattern.compile("(?:in +)?" + NUMBER + " *%(?: +of +(?:all +)?batches)?");
  private static final double WHOLE = 100;
  private static final double HALF = 50;

  private final FeedTables tables;
  private final Set<String> premixes;
  private final Map<String, String> words;
  private final List<String> slips = new ArrayList<>();

  private WishesReader(FeedTables tables, Collection<String> premixes, Map<String, String> words) {
    this.tables = tables;
    this.premixes = new TreeSet<>(premixes);
    this.words = words;
  }

  /**
   * What was read.
   *
   * @param sweep what is to go from here to there
   * @param slips a sentence each; where there are any, the wishes are not to be used
   */
  public record Read(Wishes wishes, Optional<SweepAsked> sweep, List<String> slips) {
    public Read {
      slips = List.copyOf(slips);
    }
  }

  /**
   * Reads them.
   *
   * @param premixes their codes
   * @param words of each parameter, by its name; one that is not given has none, or only blanks
   */
  public static Read read(
      FeedTables tables, Collection<String> premixes, Map<String, String> words) {
    WishesReader reader = new WishesReader(tables, premixes, words);
    Wishes wishes = reader.wishes();
    Optional<SweepAsked> sweep = reader.swept();
    return new Read(wishes, sweep, reader.slips);
  }

  private Wishes wishes() {
    Set<String> freed = names(FREE);
    Set<String> tried = names(TRY);
    Set<String> without = names(WITHOUT);
    for (String one : without) {
      if (freed.contains(one) || tried.contains(one)) {
        slips.add(
            one
                + " is asked for and left out at once; take it out of pellucid."
                + (tried.contains(one) ? TRY : FREE)
                + " or of pellucid."
                + WITHOUT);
      }
    }
    return new Wishes(
        freed,
        List.copyOf(tried),
        without,
        move(),
        worth(),
        keepLabel(),
        margin(),
        yes(STOCK),
        anyPrices(),
        Optional.empty(),
        false);
  }

  private String told(String name) {
    return words.getOrDefault(name, "").strip();
  }

  /** What was written and cannot be taken, and what may be written in its place. */
  private void slip(String name, String is, String write, String example) {
    slips.add(
        "pellucid." + name + " is " + is + "; write " + write + ", as in " + option(name, example));
  }

  private static String option(String name, String value) {
    String plain = "-Dpellucid." + name + "=" + value;
    return value.indexOf(' ') < 0 ? plain : "\"" + plain + "\"";
  }

  private Set<String> names(String name) {
    Set<String> names = new LinkedHashSet<>();
    for (String written : told(name).split(",", -1)) {
      String one = written.strip();
      if (!one.isEmpty() && isIngredient(name, one)) {
        names.add(one);
      }
    }
    return names;
  }

  private boolean isIngredient(String name, String one) {
    if (tables.ingredients().containsKey(one)) {
      return true;
    }
    if (premixes.contains(one)) {
      slips.add(
          one + " is a premix, and premixes change only on request: edit the premix yourself");
    } else {
      slips.add("pellucid." + name + ": " + unknown(one, tables.ingredients().keySet()));
    }
    return false;
  }

  private static String unknown(String one, Collection<String> names) {
    return one + " is no ingredient of this folder" + question(one, names);
  }

  private static String question(String one, Collection<String> names) {
    List<String> near = NearNames.of(one, names);
    return Meant.question(near.isEmpty() ? NearNames.holding(one, names) : near)
        .map(asked -> "; " + asked)
        .orElse("");
  }

  private OptionalDouble move() {
    String told = told(MOVE);
    if (told.isEmpty()) {
      return OptionalDouble.empty();
    }
    Matcher points = POINTS.matcher(told);
    if (points.matches()) {
      double move = Double.parseDouble(points.group(1));
      if (move > 0 && move <= WHOLE) {
        return OptionalDouble.of(move);
      }
    }
    slip(MOVE, told, "above 0 and up to 100 points", "3 points");
    return OptionalDouble.empty();
  }

  private double worth() {
    String told = told(WORTH);
    if (told.isEmpty()) {
      return 0;
    }
    String currency = tables.settings().currency();
    Matcher amount = AMOUNT.matcher(told);
    if (amount.matches() && amount.group(2) != null && amount.group(2).startsWith(currency)) {
      Optional<Unit> unit = Unit.of(amount.group(2));
      double worth = Double.parseDouble(amount.group(1));
      if (unit.isPresent() && unit.get().kind() == Kind.PRICE && worth >= 0) {
        return Unit.MONEY_PER_T.fromBase(unit.get().toBase(worth));
      }
    }
    slip(WORTH, told, "money for a tonne in the bags", "1 " + currency + "/t");
    return 0;
  }

  private boolean keepLabel() {
    String told = told(KEEP);
    if (!told.isEmpty() && !told.equals("label")) {
      slip(KEEP, told, "label, or leave it out", "label");
    }
    return told.equals("label");
  }

  private OptionalDouble margin() {
    String told = told(MARGIN);
    if (told.isEmpty()) {
      return OptionalDouble.empty();
    }
    Matcher part = PART.matcher(told);
    if (part.matches()) {
      double percent = Double.parseDouble(part.group(1));
      if (percent >= HALF && percent < WHOLE) {
        return OptionalDouble.of(percent / WHOLE);
      }
    }
    slip(MARGIN, told, "from 50 to 99.9 % of batches", "in 90 % of batches");
    return OptionalDouble.empty();
  }

  private boolean yes(String name) {
    String told = told(name);
    if (told.isEmpty() || told.equals("no") || told.equals("false")) {
      return false;
    }
    if (!told.equals("yes") && !told.equals("true")) {
      slip(name, told, "yes or no", "yes");
    }
    return true;
  }

  private boolean anyPrices() {
    String told = told(PRICES);
    if (!told.isEmpty() && !told.equals("fresh") && !told.equals("any")) {
      slip(PRICES, told, "fresh, or any to take old ones as they are", "any");
    }
    return told.equals("any");
  }

  private Optional<SweepAsked> swept() {
    String told = told(SWEEP);
    if (told.isEmpty()) {
      return Optional.empty();
    }
    SweepReader reader = new SweepReader(tables, told);
    Optional<SweepAsked> swept = reader.swept();
    reader.slip().ifPresent(slips::add);
    return swept;
  }
}
