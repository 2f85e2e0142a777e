package dev.pellucid.engine.report;

import com.github.difflib.DiffUtils;
import com.github.difflib.UnifiedDiffUtils;
import dev.pellucid.engine.leastcost.Advice.Change;
import java.util.List;

/** The change of a recipe as a unified diff. */
final class LeastCostDiff {
  private static final int AROUND = 1;

  private LeastCostDiff() {}

  /** Lines of the diff; none where nothing changes. */
  static List<String> of(Change change) {
    List<String> before = change.before().text().lines().toList();
    List<String> after = change.after().lines().toList();
    String path = change.before().path();
    return UnifiedDiffUtils.generateUnifiedDiff(
        "a/" + path, "b/" + path, before, DiffUtils.diff(before, after), AROUND);
  }
}
