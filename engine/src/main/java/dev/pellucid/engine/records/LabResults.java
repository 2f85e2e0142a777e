package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.Since;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What laboratories found of one batch, by nutrient: the mean of all that found a figure. What was
 * only found to be below something is no figure, and what has a day before the batch is none of
 * this batch.
 */
final class LabResults {

  /**
   * What was found of one nutrient.
   *
   * @param figures each by itself, as they are written
   */
  record Found(List<Content> figures) {
    Found {
      figures = List.copyOf(figures);
    }

    /** In the base of its kind. */
    double mean() {
      return figures.stream().mapToDouble(Content::low).average().orElse(0);
    }

    /**
     * The square of what the mean is off by.
     *
     * @param usual what a laboratory is off by that does not say it itself
     */
    double square(double usual) {
      double squares = 0;
      for (Content one : figures) {
        double spread = one.spread().orElse(usual);
        squares += spread * spread;
      }
      return squares / figures.size() / figures.size();
    }

    Content last() {
      return figures.get(figures.size() - 1);
    }
  }

  private LabResults() {}

  static Map<String, Found> of(BatchRecord record) {
    Map<String, List<Content>> byNutrient = new LinkedHashMap<>();
    for (Since.Result result : record.since().results()) {
      if (!isBefore(result, record)) {
        result.found().forEach((name, one) -> add(byNutrient, name, one));
      }
    }
    Map<String, Found> found = new LinkedHashMap<>();
    byNutrient.forEach((name, figures) -> found.put(name, new Found(figures)));
    return found;
  }

  private static void add(Map<String, List<Content>> to, String nutrient, Content one) {
    if (!one.isBound()) {
      to.computeIfAbsent(nutrient, none -> new ArrayList<>()).add(one);
    }
  }

  /** Whether its day lies before the batch was made. */
  static boolean isBefore(Since.Result result, BatchRecord record) {
    return result.signed().day().isBefore(record.day());
  }
}
