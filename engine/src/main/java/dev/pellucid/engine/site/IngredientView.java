package dev.pellucid.engine.site;

import dev.pellucid.engine.account.Account.Inclusion;
import java.util.List;

/**
 * What the pages tell of one ingredient.
 *
 * @param kind its form and groups, in words
 * @param warnings what to mind: cautions, and how much a species takes at most
 * @param price for a kg; empty where none is told
 * @param priceSource from when and whom
 * @param contents as they are written
 * @param uses in the order of the codes of the feeds
 */
public record IngredientView(
    String name,
    String title,
    String kind,
    List<String> warnings,
    String price,
    String priceSource,
    List<ToldContent> contents,
    List<InFeed> uses) {
  public IngredientView {
    warnings = List.copyOf(warnings);
    contents = List.copyOf(contents);
    uses = List.copyOf(uses);
  }

  /** A content with its source. */
  public record ToldContent(String nutrient, String asWritten, String source) {}

  /** In one feed, and what that costs a kg of it. */
  public record InFeed(String code, String title, Inclusion use, double costPerKg) {}
}
