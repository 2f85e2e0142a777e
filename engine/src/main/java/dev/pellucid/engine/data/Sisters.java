package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Ingredient.ContentBlock;
import dev.pellucid.engine.data.MeantContent.Written;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Meant;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Each content against those of the sisters, the other ingredients of its groups: one that is more
 * than five times or less than a fifth of all of them, where these are alike, is most often a
 * slipped point or a wrong unit. Where a nutrient tells what is usual, that counts instead; where
 * the file of an ingredient has a finding already, its figures are looked at again when it is
 * fixed.
 *
 * <p>Five times, and three sisters: common practice, no source.
 */
final class Sisters {
  static final Code CODE = new Code("data-unlike-sisters");
  static final double FAR = 5;
  static final int ENOUGH = 3;

  /** From here on an ingredient consists of it, as a salt or an additive does. */
  private static final double CONSISTS = 0.3;

  /** The two least and the two most contents of a nutrient in a group. */
  static final class Extremes {
    private int count;
    private double least = Double.POSITIVE_INFINITY;
    private double second = Double.POSITIVE_INFINITY;
    private double most;
    private double secondMost;

    void add(double value) {
      count++;
      second = value < least ? least : Math.min(second, value);
      least = Math.min(least, value);
      secondMost = value > most ? most : Math.max(secondMost, value);
      most = Math.max(most, value);
    }

    /** How many there are beside one of them. */
    int others() {
      return count - 1;
    }

    double leastBeside(double value) {
      return value <= least ? second : least;
    }

    double mostBeside(double value) {
      return value >= most ? secondMost : most;
    }
  }

  private final Nutrients nutrients;
  private final Remarks remarks;
  private final Map<String, Map<String, Extremes>> byGroup = new HashMap<>();
  private final Set<String> said = new HashSet<>();

  Sisters(Nutrients nutrients, Remarks remarks) {
    this.nutrients = nutrients;
    this.remarks = remarks;
    for (Finding finding : remarks.findings()) {
      said.add(finding.span().file().path());
    }
  }

  void look(Collection<Ingredient> ingredients) {
    for (Ingredient one : ingredients) {
      for (String group : one.groups()) {
        take(one, byGroup.computeIfAbsent(group, any -> new HashMap<>()));
      }
    }
    for (Ingredient one : ingredients) {
      if (!said.contains(one.declared().file().path())) {
        for (ContentBlock block : one.contents()) {
          if (block.species().isEmpty()) {
            look(one, block);
          }
        }
      }
    }
  }

  private static void take(Ingredient one, Map<String, Extremes> spans) {
    for (ContentBlock block : one.contents()) {
      if (block.species().isEmpty()) {
        for (Map.Entry<String, Content> each : block.byNutrient().entrySet()) {
          Content content = each.getValue();
          if (content.low() > 0 && !content.isBound()) {
            spans.computeIfAbsent(each.getKey(), any -> new Extremes()).add(content.low());
          }
        }
      }
    }
  }

  private void look(Ingredient one, ContentBlock block) {
    for (Map.Entry<String, Content> each : block.byNutrient().entrySet()) {
      Content content = each.getValue();
      Optional<Nutrient> nutrient = nutrients.named(each.getKey());
      if (nutrient.isPresent()
          && content.low() > 0
          && !content.isBound()
          && Usual.of(nutrient.get(), one) == null
          && !isSource(one, nutrient.get(), content)) {
        look(one, nutrient.get(), content);
      }
    }
  }

  /** Whether an ingredient is there for the sake of this, so that sisters hold traces at most. */
  private static boolean isSource(Ingredient one, Nutrient nutrient, Content content) {
    boolean additive =
        one.additive().isPresent()
            && one.additive().get().nutrient().orElse("").equals(nutrient.name());
    return additive
        || (nutrient.partOf().isPresent() && content.low() >= CONSISTS)
        || (isTrace(nutrient.unit()) && content.low() >= 0.01);
  }

  private static boolean isTrace(Unit unit) {
    return unit == Unit.MG_PER_KG || unit == Unit.UG_PER_KG;
  }

  private void look(Ingredient one, Nutrient nutrient, Content content) {
    double value = content.low();
    int others = 0;
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    List<String> groups = new ArrayList<>(one.groups());
    groups.sort(null);
    for (String group : groups) {
      Extremes span = byGroup.getOrDefault(group, Map.of()).get(nutrient.name());
      if (span != null) {
        others += span.others();
        least = Math.min(least, span.leastBeside(value));
        most = Math.max(most, span.mostBeside(value));
      }
    }
    boolean far = Closeness.isAbove(value, FAR * most) || Closeness.isBelow(value, least / FAR);
    Optional<Written> written = Written.of(content.asWritten());
    if (others >= ENOUGH && far && areAlike(least, most) && written.isPresent()) {
      remarks.add(finding(nutrient, content, written.get().unit(), others, least, most, groups));
    }
  }

  /** Whether sisters are near enough to each other to say what one of them should be. */
  static boolean areAlike(double least, double most) {
    return Closeness.isAtMost(most, FAR * least);
  }

  private static Finding finding(
      Nutrient nutrient,
      Content content,
      Unit unit,
      int others,
      double least,
      double most,
      List<String> groups) {
    Optional<String> meant =
        MeantContent.of(content, nutrient.unit(), base -> base >= least / 2 && base <= most * 2);
    Span place = content.place();
    return Finding.warning(
            CODE,
            place,
            nutrient.name()
                + " is "
                + KeyFindings.shown(content.asWritten())
                + ", the "
                + others
                + " others of "
                + String.join(" and ", groups)
                + " hold "
                + Figures.plain(unit.fromBase(least))
                + " to "
                + Figures.plain(unit.fromBase(most))
                + " "
                + unit.symbol())
        .helping(
            meant.isPresent()
                ? Meant.question(meant.get())
                : "look for a slipped decimal point or a wrong unit")
        .helping(
            "if it is so, tell at "
                + nutrient.name()
                + " in nutrients/ what is usual for "
                + groups.get(0));
  }
}
