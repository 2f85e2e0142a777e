package dev.pellucid.engine.report;

import com.github.difflib.DiffUtils;
import com.github.difflib.UnifiedDiffUtils;
import dev.pellucid.engine.FolderLayout;
import java.util.List;

/** What the formatter would change in a file, as a short unified diff. */
public final class LayoutDiff {
  private static final int MOST_LINES = 12;

  private LayoutDiff() {}

  /** Lines of the diff, cut after a dozen. */
  public static List<String> of(FolderLayout.Change change) {
    List<String> before = lines(change.source().text());
    List<String> after = lines(change.laidOut());
    String path = change.source().path();
    List<String> diff =
        UnifiedDiffUtils.generateUnifiedDiff(path, path, before, DiffUtils.diff(before, after), 0);
    if (diff.size() <= MOST_LINES) {
      return diff;
    }
    return java.util.stream.Stream.concat(
            diff.stream().limit(MOST_LINES),
            java.util.stream.Stream.of("... and " + (diff.size() - MOST_LINES) + " lines more"))
        .toList();
  }

  private static List<String> lines(String text) {
    return text.lines().toList();
  }
}
