package dev.pellucid.engine.records;

import java.util.List;
import java.util.Optional;

/** What recipes and premixes tell today of the batches that are made by them, by their codes. */
public interface Recipes {
  /** The names of its lines; none where nobody knows them. */
  List<String> lines(String code);

  /**
   * The plant at which it is made; the same name for all that name none; absent where nobody knows.
   */
  Optional<String> plant(String code);

  /** Whether it is a recipe of a feed: no premix, and nothing that the folder does not have. */
  boolean isFeed(String code);
}
