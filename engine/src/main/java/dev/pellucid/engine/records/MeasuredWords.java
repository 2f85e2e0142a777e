package dev.pellucid.engine.records;

import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.ContentBlock;
import dev.pellucid.engine.data.Lot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was measured of a lot, beside what the folder says of its ingredient. */
public final class MeasuredWords {
  private static final int NAMED = 3;

  private MeasuredWords() {}

  /** {@code moisture 14.1 % (11.5 %), crude-protein 44.9 % (46.6 %)}. */
  public static String of(FeedTables tables, String number) {
    Lot lot = tables.lots().get(number);
    if (lot == null) {
      return "measured in the lots that it was made of";
    }
    Ingredient library = tables.ingredients().get(lot.ingredient());
    List<String> words = new ArrayList<>();
    for (ContentBlock block : lot.measured()) {
      block
          .byNutrient()
          .forEach(
              (name, content) -> {
                Optional<Content> there =
                    library == null ? Optional.empty() : LotContents.told(library, name);
                words.add(
                    name
                        + " "
                        + content.asWritten()
                        + there.map(it -> " (" + it.asWritten() + ")").orElse(""));
              });
    }
    words.sort(String::compareTo);
    List<String> first = words.subList(0, Math.min(NAMED, words.size()));
    return String.join(", ", first)
        + (words.size() > NAMED ? " and " + (words.size() - NAMED) + " more" : "");
  }
}
