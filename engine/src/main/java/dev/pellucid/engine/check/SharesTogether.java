package dev.pellucid.engine.check;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.syntax.Amount;
import dev.pellucid.syntax.FeedFile.PremixFile;
import dev.pellucid.syntax.HeadLine;
import dev.pellucid.text.Meant;
import dev.pellucid.text.Plural;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The small shares of all recipes against each other: one of a pure substance that is more than
 * five times, or less than an eighth, of what three or more other recipes have in the middle, and
 * two and a half times as far as any of them; and a dose with which no recipe agrees.
 *
 * <p>These figures: common practice, no source.
 */
public final class SharesTogether {
  static final Code SHARE = new Code("share-ten-times-off");
  static final Code DOSE = new Code("dose-ten-times-off");

  private static final int FEWEST = 3;
  private static final double FAR = 5;
  private static final double BEYOND = 2.5;

  /** A small share is oftener meant than a large one. */
  private static final double FAR_BELOW = 8;

  /** Of what others hold more it is no small thing: percent. */
  private static final double SMALL = 2;

  private static final double DOSE_OFF = 3;

  private SharesTogether() {}

  /** A premix with whose dose no recipe agrees. */
  public record Dose(String code, Finding finding) {}

  /** What was seen of one name. */
  private static final class Seen {
    int count;
    double least = Double.MAX_VALUE;
    double second = Double.MAX_VALUE;
    double most;
    double secondMost;
    int leastAt;
    int secondAt;
    int mostAt;
    int secondMostAt;

    void take(double percent, int recipe) {
      count++;
      if (percent < least) {
        second = least;
        secondAt = leastAt;
        least = percent;
        leastAt = recipe;
      } else if (percent < second) {
        second = percent;
        secondAt = recipe;
      }
      if (percent > most) {
        secondMost = most;
        secondMostAt = mostAt;
        most = percent;
        mostAt = recipe;
      } else if (percent > secondMost) {
        secondMost = percent;
        secondMostAt = recipe;
      }
    }
  }

  /**
   * A share far off.
   *
   * @param recipe its place among the recipes
   * @param nearest the place of the next
   * @param others how many others have it
   */
  public record Outlier(
      String name,
      int recipe,
      int nearest,
      double percent,
      double next,
      double middle,
      int others,
      int start,
      int end) {

    /** In words. */
    public Finding finding(String code, String beside, SourceFile text) {
      Span span = text.span(start, end);
      boolean above = percent > next;
      Finding finding =
          Finding.warning(
                  SHARE,
                  span,
                  name
                      + " is at "
                      + Figures.plain(percent)
                      + " % in "
                      + code
                      + "; the "
                      + Plural.of(others, "other recipe")
                      + " with it have "
                      + (above ? "at most " : "at least ")
                      + Figures.plain(next)
                      + " % ("
                      + beside
                      + ")")
              .about(new About(name, above ? About.Side.MAX : About.Side.MIN, List.of(name)));
      double meant = above ? percent / 10 : percent * 10;
      boolean fits = meant >= middle / BEYOND && meant <= middle * BEYOND;
      String words = Figures.fixed(meant, 2) + " %";
      Finding asked = fits ? finding.helping(Meant.question(words)).fixing(span, words) : finding;
      return asked.helping("if it is meant so, give usual-share of " + name);
    }
  }

  /**
   * The shares that no other recipe bears out, at most one of each name.
   *
   * @param recipes in their order; a place in it names a recipe
   */
  public static List<Outlier> outliers(List<SmallShares> recipes) {
    Map<String, Seen> seen = new LinkedHashMap<>();
    for (int r = 0; r < recipes.size(); r++) {
      SmallShares shares = recipes.get(r);
      for (int i = 0; i < shares.count(); i++) {
        Seen its = seen.get(shares.name(i));
        if (its == null) {
          its = new Seen();
          seen.put(shares.name(i), its);
        }
        its.take(shares.percent(i), r);
      }
    }
    List<Outlier> found = new ArrayList<>();
    for (Map.Entry<String, Seen> one : seen.entrySet()) {
      Seen its = one.getValue();
      if (its.count > FEWEST && its.most > BEYOND * its.secondMost) {
        add(recipes, one.getKey(), its.mostAt, its.secondMostAt, found);
      } else if (its.count > FEWEST && its.least > 0 && its.least * BEYOND < its.second) {
        add(recipes, one.getKey(), its.leastAt, its.secondAt, found);
      }
    }
    return found;
  }

  private static void add(
      List<SmallShares> recipes, String name, int recipe, int nearest, List<Outlier> found) {
    double[] others = new double[recipes.size()];
    int count = 0;
    int place = -1;
    int inRecipe = 0;
    double next = 0;
    for (int r = 0; r < recipes.size(); r++) {
      SmallShares shares = recipes.get(r);
      for (int i = 0; i < shares.count(); i++) {
        if (shares.name(i).equals(name)) {
          if (r == recipe) {
            place = i;
            inRecipe++;
          } else if (count < others.length) {
            others[count++] = shares.percent(i);
            next = r == nearest ? shares.percent(i) : next;
          }
        }
      }
    }
    if (count < FEWEST || inRecipe != 1) {
      return;
    }
    Arrays.sort(others, 0, count);
    double middle = others[count / 2];
    double percent = recipes.get(recipe).percent(place);
    boolean far = percent > FAR * middle || percent * FAR_BELOW < middle;
    if (far && middle <= SMALL) {
      SmallShares own = recipes.get(recipe);
      found.add(
          new Outlier(
              name,
              recipe,
              nearest,
              percent,
              next,
              middle,
              count,
              own.start(place),
              own.end(place)));
    }
  }

  /** The premixes of which all recipes that take it, two or more, take the same other share. */
  public static List<Dose> doses(List<PremixFile> premixes, List<SmallShares> recipes) {
    Map<String, List<Double>> taken = new HashMap<>();
    for (PremixFile premix : premixes) {
      taken.put(premix.source().stem(), new ArrayList<>());
    }
    for (SmallShares shares : recipes) {
      for (int i = 0; i < shares.count(); i++) {
        List<Double> its = taken.get(shares.name(i));
        if (its != null) {
          its.add(shares.percent(i));
        }
      }
    }
    List<Dose> found = new ArrayList<>();
    for (PremixFile premix : premixes) {
      for (HeadLine.OfPremix line : premix.head()) {
        List<Double> its = taken.getOrDefault(premix.source().stem(), List.of());
        if (line.doseTold().isPresent() && its.size() > 1) {
          dose(premix.source().stem(), line.doseTold().get(), its, found);
        }
      }
    }
    return found;
  }

  private static void dose(String code, Amount dose, List<Double> taken, List<Dose> found) {
    double percent = dose.base() * 100;
    double first = taken.get(0);
    for (double one : taken) {
      if (!Closeness.same(one, first)) {
        return;
      }
    }
    double times = first / percent;
    if (times < DOSE_OFF && times * DOSE_OFF > 1) {
      return;
    }
    String meant = Figures.plain(dose.unit().fromBase(first / 100)) + " " + dose.unitAsWritten();
    found.add(
        new Dose(
            code,
            Finding.warning(
                    DOSE,
                    dose.span(),
                    "the dose of "
                        + code
                        + " is "
                        + dose.asWritten()
                        + ", and all "
                        + Plural.of(taken.size(), "recipe")
                        + " take "
                        + Figures.plain(first)
                        + " %")
                .helping(Meant.question(meant))
                .fixing(dose.span(), meant)
                .about(new About("dose", About.Side.NONE, List.of(code)))));
  }
}
