package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Ingredient.ContentBlock;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoublePredicate;
import org.jspecify.annotations.Nullable;

/**
 * Which contents of an ingredient lie outside of what is usual in its groups. Where most parts of a
 * whole are off alike, it is the whole that is odd, and they are not.
 */
final class OddContents {
  /** So many parts, and so great a part of them, speak against their whole. */
  private static final int WITNESSES = 3;

  private static final double MOST_OF_THEM = 0.6;

  private final Ingredient ingredient;
  private final Nutrients nutrients;

  OddContents(Ingredient ingredient, Nutrients nutrients) {
    this.ingredient = ingredient;
    this.nutrients = nutrients;
  }

  /**
   * A content that is not usual.
   *
   * @param high whether it is too much; else too little
   * @param why what is usual, behind the figure in a sentence
   * @param usual the row that it is outside of
   * @param fits whether another content, in the base of its kind, would be usual
   */
  record Odd(
      Nutrient nutrient,
      Content content,
      boolean high,
      String why,
      Usual usual,
      DoublePredicate fits) {}

  /** Parts of one whole that are off, and how many were looked at. */
  private static final class Parts {
    private final List<Odd> high = new ArrayList<>();
    private final List<Odd> low = new ArrayList<>();
    private int looked;

    private void add(Odd odd) {
      (odd.high() ? high : low).add(odd);
    }

    private @Nullable List<Odd> witnesses() {
      List<Odd> more = high.size() >= low.size() ? high : low;
      boolean most = more.size() >= WITNESSES && more.size() >= MOST_OF_THEM * looked;
      boolean all = more.size() > 1 && more.size() == looked;
      return most || all ? more : null;
    }
  }

  /**
   * By the name of the nutrient.
   *
   * @param told in the order of the nutrients
   * @param general whether it is told of any species; then what is told of each speaks for or
   *     against its whole as well
   */
  Map<String, Odd> of(Map<String, Content> told, boolean general) {
    Map<String, Odd> odd = new LinkedHashMap<>();
    Map<String, Parts> parts = new LinkedHashMap<>();
    for (Map.Entry<String, Content> each : told.entrySet()) {
      look(each.getKey(), each.getValue(), told, odd, parts);
    }
    if (general) {
      for (ContentBlock block : ingredient.contents()) {
        if (block.species().isPresent()) {
          for (Nutrient nutrient : nutrients.inOrder()) {
            Content content = block.byNutrient().get(nutrient.name());
            if (content != null) {
              look(nutrient.name(), content, told, new LinkedHashMap<>(), parts);
            }
          }
        }
      }
    }
    for (Map.Entry<String, Parts> each : parts.entrySet()) {
      settle(each.getKey(), each.getValue(), told, odd);
    }
    return odd;
  }

  private @Nullable Usual usual(Nutrient nutrient) {
    return Usual.of(nutrient, ingredient);
  }

  private void look(
      String of,
      Content content,
      Map<String, Content> told,
      Map<String, Odd> odd,
      Map<String, Parts> parts) {
    Nutrient nutrient = nutrients.named(of).orElse(null);
    Usual usual = nutrient == null ? null : usual(nutrient);
    if (nutrient == null || usual == null || content.high() <= 0) {
      return;
    }
    if (usual.of().isEmpty()) {
      if (isOutside(content, usual, 1)) {
        odd.put(nutrient.name(), inItself(nutrient, content, usual));
      }
      return;
    }
    String name = usual.of().get();
    Content whole = told.get(name);
    if (whole == null || whole.low() <= 0 || isPure(content, whole, name, told)) {
      return;
    }
    Parts ofWhole = parts.computeIfAbsent(name, any -> new Parts());
    ofWhole.looked++;
    if (isOutside(content, usual, whole.low())) {
      ofWhole.add(asPart(nutrient, content, usual, name, whole));
    }
  }

  private Odd inItself(Nutrient nutrient, Content content, Usual usual) {
    String who =
        usual.group(ingredient).orElse(usual.asAdditive() ? "additives of it" : "ingredients");
    return new Odd(
        nutrient,
        content,
        content.high() > usual.high(),
        who + " usually hold " + usual.asWritten(),
        usual,
        usual::holds);
  }

  private static Odd asPart(
      Nutrient nutrient, Content content, Usual usual, String name, Content whole) {
    double part = content.high() / whole.low();
    return new Odd(
        nutrient,
        content,
        part > usual.high(),
        percent(part) + " of " + name + ", where " + usual.asWritten() + " is usual",
        usual,
        base -> usual.holds(base / whole.low()));
  }

  private static Odd asWhole(Nutrient whole, Content content, List<Odd> witnesses) {
    Odd first = witnesses.get(0);
    Content part = first.content();
    return new Odd(
        whole,
        content,
        !first.high(),
        Plural.of(witnesses.size(), "of its parts is", "of its parts are")
            + (first.high() ? " too much" : " too little")
            + " of it, such as "
            + first.nutrient().name()
            + " with "
            + percent(part.high() / content.low())
            + ", where "
            + first.usual().asWritten()
            + " is usual",
        first.usual(),
        base -> first.usual().holds(part.high() / base));
  }

  private static String percent(double part) {
    return Figures.plain(part * 100) + " %";
  }

  /** A content of which only the most is told is never too low. */
  private static boolean isOutside(Content content, Usual usual, double whole) {
    double value = content.high() / whole;
    return !usual.holds(value) && (value > usual.high() || !content.isBound());
  }

  /** Whether it is most of its whole and its only part, as lysine is in lysine hydrochloride. */
  private boolean isPure(
      Content content, Content ofWhole, String whole, Map<String, Content> told) {
    double part = content.high() / ofWhole.low();
    if (part < MOST_OF_THEM || part > WholeChecks.MOST_PURE) {
      return false;
    }
    for (Map.Entry<String, Content> each : told.entrySet()) {
      Optional<Nutrient> nutrient = nutrients.named(each.getKey());
      boolean sister = nutrient.isPresent() && nutrient.get().partOf().orElse("").equals(whole);
      if (sister && each.getValue().high() > 0 && !each.getValue().equals(content)) {
        return false;
      }
    }
    return true;
  }

  private void settle(String name, Parts parts, Map<String, Content> told, Map<String, Odd> odd) {
    List<Odd> witnesses = parts.witnesses();
    Content whole = told.get(name);
    Optional<Nutrient> nutrient = nutrients.named(name);
    if (odd.containsKey(name)) {
      return;
    }
    if (witnesses != null && whole != null && nutrient.isPresent()) {
      odd.put(name, asWhole(nutrient.get(), whole, witnesses));
      return;
    }
    for (Odd one : parts.high) {
      odd.putIfAbsent(one.nutrient().name(), one);
    }
    for (Odd one : parts.low) {
      odd.putIfAbsent(one.nutrient().name(), one);
    }
  }
}
