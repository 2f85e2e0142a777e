package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import java.util.List;
import java.util.Optional;

/** What recipes and premixes tell of the batches that are made by them. */
public interface Recipes {
  /** The names of the lines that a batch was made by; none where nobody knows them. */
  List<String> lines(BatchRecord record);

  /**
   * The plant at which it is made; the same name for all that name none; absent where nobody knows.
   */
  Optional<String> plant(String code);

  /** Whether it is a recipe of a feed: no premix, and nothing that the folder does not have. */
  boolean isFeed(String code);
}
