package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Ingredient.ContentBlock;
import dev.pellucid.engine.data.Ingredient.OnBag;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One delivery of an ingredient, as {@code lots/} tells it.
 *
 * @param number as it stands on the sack; unique in the folder, capitals or not
 * @param bestBefore its last good day; absent for what does not age
 * @param kg what was received
 * @param inspection absent where nobody has looked yet
 * @param supplier who sold it, where that is told
 * @param remark what was seen
 * @param measured contents of this lot, as fed
 * @param bag whether it comes of genetically modified plants
 * @param declared where the number stands
 * @param weighed where the quantity stands, or the number
 * @param aged where the last good day stands, or the number
 * @param judged where the inspection stands, or the number
 */
public record Lot(
    String number,
    String ingredient,
    LocalDate received,
    Optional<LocalDate> bestBefore,
    double kg,
    Optional<Inspection> inspection,
    Optional<String> supplier,
    String remark,
    List<ContentBlock> measured,
    OnBag bag,
    Span declared,
    Span weighed,
    Span aged,
    Span judged) {
  public Lot {
    measured = List.copyOf(measured);
    if (kg <= 0) {
      throw new IllegalArgumentException("an empty lot: " + number);
    }
  }

  /** What the inspection at receipt said. */
  public enum Inspection {
    PASSED,
    FAILED
  }

  /** What was measured of a nutrient. */
  public Optional<Content> measured(String nutrient) {
    return measured.stream()
        .filter(block -> block.species().isEmpty())
        .flatMap(block -> Optional.ofNullable(block.byNutrient().get(nutrient)).stream())
        .findFirst();
  }

  /** Whether it is past its last good day. */
  public boolean isExpired(LocalDate day) {
    return bestBefore.filter(day::isAfter).isPresent();
  }
}
