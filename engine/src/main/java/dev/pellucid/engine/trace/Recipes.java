package dev.pellucid.engine.trace;

import dev.pellucid.engine.data.BatchRecord;
import java.util.List;

/** What recipes and premixes tell of the batches that are made by them. */
public interface Recipes {
  /** The names of the lines that a batch was made by; none where nobody knows them. */
  List<String> lines(BatchRecord record);

  /** The names of the lines of a recipe or premix as it is today, its capitals apart. */
  List<String> lines(String code);
}
