package dev.pellucid.engine.figures;

import dev.pellucid.engine.account.Account;
import dev.pellucid.engine.account.Account.Content;
import dev.pellucid.engine.account.Account.LineShare;
import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.quantity.Share;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;

/**
 * The figures of one feed as a text to be kept beside its recipe: what goes in, what comes out,
 * what it costs and holds, and how it stands with each limit. A change of the recipe or of the data
 * behind it then shows in the same diff as what it does.
 *
 * <p>Nothing in it hangs on a day or a machine. Figures have four digits that count, so that what
 * is only the noise of reckoning does not show; shares are exact. Lines end in {@code \n}. Headings
 * stand in column 1, where {@code git diff} looks for a name of what it shows.
 */
public final class FiguresRecord {
  /** How a file of figures ends. */
  public static final String ENDING = ".figures";

  static final String LIMITS = "limits";

  private static final int MONEY = 4;
  private static final int SHARE = 2;
  private static final int NAMED = 3;
  private static final int FINEST_SHARE = 6;

  private final ResolvedRecipe recipe;
  private final Account account;
  private final String currency;
  private final List<String> lines = new ArrayList<>();

  private FiguresRecord(ResolvedRecipe recipe, Account account, String currency) {
    this.recipe = recipe;
    this.account = account;
    this.currency = currency;
  }

  /**
   * The record of a feed.
   *
   * @param account at the newest prices, and of waived limits as if no waiver ever ended
   */
  public static String of(ResolvedRecipe recipe, Account account, String currency) {
    return new FiguresRecord(recipe, account, currency).text();
  }

  private String text() {
    Collection<Held> limits = account.limits().values();
    lines.add("# Written by mvn pellucid:figures; a change by hand does not last.");
    lines.add("# Nutrients are as fed, on target and fresh; limits show the figure they judge.");
    lines.add(
        "# ≥ stands where some content is not told, or told as below a figure: there may be more.");
    lines.add("# Prices are the newest of the folder, and waivers count on whatever day.");
    recipe();
    shares("mix", Place.MIX);
    shares("coat", Place.COAT);
    product(limits);
    nutrients();
    if (!limits.isEmpty()) {
      heading(LIMITS);
      limits.forEach(one -> add(LimitLine.of(one)));
    }
    return String.join("\n", lines) + "\n";
  }

  private void heading(String word) {
    lines.add("");
    lines.add(word);
  }

  private void add(FactLine line) {
    lines.add(line.text());
  }

  private void recipe() {
    heading("recipe");
    add(FactLine.of("code", recipe.code()));
    if (!recipe.title().isBlank()) {
      add(FactLine.of("title", recipe.title()));
    }
    recipe.species().ifPresent(species -> add(FactLine.of("species", species.name())));
    recipe.fish().ifPresent(fish -> add(FactLine.of("fish", fish.asWritten())));
  }

  private void shares(String word, Place place) {
    List<LineShare> there = account.lines().stream().filter(line -> line.place() == place).toList();
    if (!there.isEmpty()) {
      heading(word);
      there.forEach(one -> add(FactLine.of(one.line(), percent(one.share()), onTop(one))));
    }
  }

  private static String onTop(LineShare line) {
    List<String> onTop = new ArrayList<>();
    if (line.onTop().isPositive()) {
      onTop.add("and " + percent(line.onTop()) + " on top");
    }
    if (line.kgPerWeighing() > 0) {
      onTop.add("and " + Figures.plain(line.kgPerWeighing() * 1000) + " g on top of each weighing");
    }
    return String.join(" ", onTop);
  }

  /** With two decimals, or as many as it has, up to a hundredth of a gram in 100 kg. */
  private static String percent(Share share) {
    BigDecimal percent = share.percent();
    int decimals = Math.max(SHARE, Math.min(FINEST_SHARE, percent.scale()));
    return percent.setScale(decimals, RoundingMode.HALF_UP).toPlainString() + " %";
  }

  private void product(Collection<Held> limits) {
    heading("product");
    add(
        FactLine.of(
            "yield",
            Figures.fixed(account.baggedPerKg(), 4) + " kg",
            "in the bags for each kg of recipe"));
    add(FactLine.of("moisture", figure(account.moisture() * 100) + " %"));
    String unpriced =
        account.unpriced().isEmpty()
            ? ""
            : "without a price: " + String.join(", ", account.unpriced());
    add(
        FactLine.of(
            "cost", Figures.fixed(account.costPerKg(), MONEY) + " " + currency + "/kg", unpriced));
    if (!limits.isEmpty()) {
      add(FactLine.of("limits", tally(limits)));
    }
  }

  /** {@code 63 kept, 1 BROKEN: crude-protein}, so that one that is newly broken shows at once. */
  private static String tally(Collection<Held> limits) {
    EnumMap<LimitLine.Word, Integer> counts = new EnumMap<>(LimitLine.Word.class);
    limits.forEach(one -> counts.merge(LimitLine.word(one), 1, Integer::sum));
    List<String> words = new ArrayList<>();
    counts.forEach((word, count) -> words.add(count + " " + word.text()));
    return String.join(", ", words) + broken(limits);
  }

  private static String broken(Collection<Held> limits) {
    List<String> broken =
        limits.stream()
            .filter(one -> LimitLine.word(one) == LimitLine.Word.BROKEN)
            .map(one -> one.subject())
            .distinct()
            .toList();
    if (broken.isEmpty()) {
      return "";
    }
    int more = broken.size() - NAMED;
    return ": "
        + String.join(", ", broken.subList(0, Math.min(NAMED, broken.size())))
        + (more > 0 ? " and " + more + " more" : "");
  }

  /** Moisture is told of the product. */
  private void nutrients() {
    heading("nutrients");
    for (Content content : account.contents().values()) {
      String figure = figure(content.figure());
      boolean none = new BigDecimal(figure).signum() == 0;
      if (!content.nutrient().equals(Nutrients.MOISTURE) && !none) {
        String sign = content.certainty().sign();
        add(FactLine.of(content.nutrient(), sign + figure + " " + content.unit().symbol()));
      }
    }
  }

  static String figure(double value) {
    return Figures.fixed(value, Figures.decimals(value));
  }
}
