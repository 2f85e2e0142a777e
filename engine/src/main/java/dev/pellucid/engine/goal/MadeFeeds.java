package dev.pellucid.engine.goal;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.site.MadeView;
import dev.pellucid.engine.trend.History;
import dev.pellucid.engine.trend.MeasuredBatch;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Recipes of which batches were made, with what was said of the records of these. */
final class MadeFeeds {
  private final Map<String, List<MeasuredBatch>> byCode = new HashMap<>();
  private final FeedTables tables;
  private final Map<String, List<String>> findings;

  /**
   * @param measured of the batches that were judged, in no order
   * @param findings as they are printed, by the path of their file
   */
  MadeFeeds(List<MeasuredBatch> measured, FeedTables tables, Map<String, List<String>> findings) {
    this.tables = tables;
    this.findings = Map.copyOf(findings);
    for (MeasuredBatch one : measured) {
      byCode.computeIfAbsent(one.code(), none -> new ArrayList<>()).add(one);
    }
  }

  /** Empty of a recipe of which nothing was made, or nothing that could be judged. */
  Optional<MadeView> of(String code, String title) {
    List<MeasuredBatch> batches = byCode.getOrDefault(code, List.of());
    if (batches.isEmpty()) {
      return Optional.empty();
    }
    History history = History.of(batches);
    List<String> said = new ArrayList<>();
    for (MeasuredBatch batch : history.batches()) {
      said.addAll(findings.getOrDefault("batches/" + batch.number() + ".yaml", List.of()));
    }
    return Optional.of(new MadeView(code, title, history, made(code) - batches.size(), said));
  }

  private int made(String code) {
    return (int)
        tables.batches().values().stream()
            .filter(one -> one.code().equals(code) && one.isMade())
            .count();
  }
}
