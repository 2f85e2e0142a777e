package dev.pellucid.engine.workspace;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.records.BatchRecordCheck.Looked;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What some records were made from, on the day of these records. */
final class PastState {
  private final Shared shared;
  private final Map<String, Checked> recipes = new HashMap<>();
  private final Map<String, String> fingerprints = new HashMap<>();

  PastState(Shared shared) {
    this.shared = shared;
  }

  Shared shared() {
    return shared;
  }

  /** Whether it has a recipe or premix of a code, sound or not. */
  boolean has(String code) {
    return shared.trees().called().contains(code);
  }

  /** The fingerprint of a code that it has. */
  String fingerprint(String code) {
    return fingerprints.computeIfAbsent(code, this::madeFrom);
  }

  private String madeFrom(String code) {
    Optional<String> recipe = shared.trees().path(code);
    if (recipe.isPresent()) {
      Checked checked = checked(recipe.get());
      return shared.fingerprint(recipe.get(), shared.dependsOn(recipe.get(), checked.reads()));
    }
    String premix = shared.trees().premixPaths().getOrDefault(code, "");
    return shared.fingerprint(premix, shared.premixDependsOn(code, premix));
  }

  private Checked checked(String path) {
    return recipes.computeIfAbsent(path, it -> Streamed.judged(shared, it));
  }

  private Optional<ComputedFeed> feed(String code) {
    return shared.trees().path(code).flatMap(path -> checked(path).feed());
  }

  /** Why nothing of a code can be reckoned, in words that stand behind a colon. */
  String obstacle(String code) {
    Optional<Checked> recipe = shared.trees().path(code).map(this::checked);
    String first =
        recipe.stream()
            .flatMap(one -> one.findings().stream())
            .filter(one -> one.severity() == Severity.ERROR)
            .map(one -> ": " + one.headline())
            .findFirst()
            .or(
                () ->
                    recipe.flatMap(one -> one.mendFirst().stream().findFirst()).map(" in "::concat))
            .orElse("");
    return "what it was made from has errors of its own" + first;
  }

  /** Looks at one record, and nothing that it follows; empty where nothing can be reckoned. */
  Optional<Looked> look(BatchRecord record) {
    Optional<ComputedFeed> feed = feed(record.code());
    if (feed.isPresent()) {
      return Optional.of(shared.recordCheck().look(record, feed.get()));
    }
    ResolvedPremix premix = shared.resolver().premixes().get(record.code());
    return premix == null
        ? Optional.empty()
        : Optional.of(shared.recordCheck().look(record, premix));
  }

  /** What is said of what a record follows on the line. */
  List<Finding> follows(BatchRecord record, Looked its) {
    return record
        .after()
        .flatMap(it -> Optional.ofNullable(shared.tables().batches().get(it.thing())))
        .flatMap(this::look)
        .map(before -> shared.recordCheck().follows(record, its, before))
        .orElse(List.of());
  }
}
