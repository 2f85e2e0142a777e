package dev.pellucid.engine.report;

import com.github.difflib.DiffUtils;
import com.github.difflib.UnifiedDiffUtils;
import dev.pellucid.text.PrintedPaths;
import dev.pellucid.text.SourceFile;
import java.util.List;
import java.util.stream.Stream;

/** What the formatter would change in a file, as a short unified diff. */
public final class LayoutDiff {
  private static final int MOST_LINES = 12;

  private LayoutDiff() {}

  /**
   * Lines of the diff, cut after a dozen.
   *
   * @param paths how the file is called
   * @param laidOut the text of the file as the formatter would have it
   */
  public static List<String> of(SourceFile file, String laidOut, PrintedPaths paths) {
    List<String> before = lines(file.text());
    List<String> after = lines(laidOut);
    String path = paths.of(file);
    List<String> diff =
        UnifiedDiffUtils.generateUnifiedDiff(path, path, before, DiffUtils.diff(before, after), 0);
    if (diff.size() <= MOST_LINES) {
      return diff;
    }
    return Stream.concat(
            diff.stream().limit(MOST_LINES),
            Stream.of("... and " + (diff.size() - MOST_LINES) + " lines more"))
        .toList();
  }

  private static List<String> lines(String text) {
    return text.lines().toList();
  }
}
