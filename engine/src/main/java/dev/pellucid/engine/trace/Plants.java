package dev.pellucid.engine.trace;

import java.util.Optional;

/** Where feeds and premixes are made, by their codes. */
public interface Plants {
  /** The same name for all that name none; absent where nobody knows. */
  Optional<String> plant(String code);

  boolean isPremix(String code);

  /** Whether it is a recipe of a feed: no premix, and nothing that the folder does not have. */
  boolean isFeed(String code);
}
