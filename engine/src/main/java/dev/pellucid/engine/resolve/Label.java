package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.syntax.Amount;
import dev.pellucid.text.Span;
import java.util.List;

/**
 * What a recipe says on its bag.
 *
 * @param claims in the order of the file
 * @param heading the section word
 * @param whole whether every line that is written is among the claims
 */
public record Label(List<Claim> claims, Span heading, boolean whole) {
  public Label {
    claims = List.copyOf(claims);
  }

  /**
   * One figure on the label, as fed.
   *
   * @param base in the base of the nutrient's kind
   * @param name where the nutrient stands
   */
  public record Claim(Nutrient nutrient, Manner manner, double base, Amount written, Span name) {}

  /** How a figure is meant. */
  public enum Manner {
    /** A declaration, which may be missed on either side. */
    DECLARED,
    /** A guarantee of at least so much. */
    AT_LEAST,
    /** A guarantee of at most so much. */
    AT_MOST
  }

  /** Whether anything is said of a nutrient. */
  public boolean tells(String nutrient) {
    return claims.stream().anyMatch(claim -> claim.nutrient().name().equals(nutrient));
  }
}
