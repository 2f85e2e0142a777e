package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import java.util.Optional;

/** Where feeds and premixes are made. */
public interface Plants {
  /** Where a batch was made; absent where nobody knows. */
  Optional<String> plant(BatchRecord record);

  boolean isPremix(String code);

  /** Whether it is a recipe of a feed: no premix, and nothing that the folder does not have. */
  boolean isFeed(String code);
}
