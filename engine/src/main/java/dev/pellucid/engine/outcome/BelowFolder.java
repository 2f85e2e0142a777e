package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Related;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import dev.pellucid.text.TextEdit;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.TreeSet;

/**
 * Findings as a person reads them on a console, with the folder's name before each path, to the
 * same with paths below the folder, so that a report does not hang on what the folder is called.
 */
public final class BelowFolder {
  private final String prefix;
  private final TreeSet<String> paths;
  private final IdentityHashMap<SourceFile, SourceFile> files = new IdentityHashMap<>();

  /**
   * @param prefix what stands before each path, with its last {@code /}; may be empty
   * @param paths of the files of the folder, without it
   */
  public BelowFolder(String prefix, Collection<String> paths) {
    this.prefix = prefix;
    this.paths = new TreeSet<>(paths);
  }

  public CheckOutcome of(CheckOutcome outcome) {
    return prefix.isEmpty()
        ? outcome
        : new CheckOutcome(
            outcome.tally(),
            outcome.batches(),
            outcome.limits(),
            outcome.counts(),
            all(outcome.findings()),
            outcome.recipes().stream().map(this::recipe).toList());
  }

  private RecipeOutcome recipe(RecipeOutcome recipe) {
    return new RecipeOutcome(
        recipe.path(),
        recipe.code(),
        recipe.checked(),
        recipe.mendFirst(),
        recipe.limits().stream().map(this::limit).toList(),
        recipe.waived().stream().map(this::waived).toList(),
        all(recipe.obstacles()));
  }

  private LimitOutcome limit(LimitOutcome limit) {
    return limit.finding().isEmpty()
        ? limit
        : new LimitOutcome(limit.name(), limit.state(), limit.finding().map(this::finding));
  }

  private WaivedFinding waived(WaivedFinding waived) {
    return new WaivedFinding(
        finding(waived.finding()),
        span(waived.waiver()),
        waived.until(),
        waived.by(),
        waived.because());
  }

  private List<Finding> all(List<Finding> findings) {
    return findings.stream().map(this::finding).toList();
  }

  private Finding finding(Finding finding) {
    return new Finding(
        finding.code(),
        finding.severity(),
        text(finding.headline()),
        span(finding.span()),
        text(finding.label()),
        finding.related().stream()
            .map(place -> new Related(text(place.text()), span(place.span())))
            .toList(),
        finding.notes().stream().map(this::text).toList(),
        finding.helps().stream().map(this::text).toList(),
        finding.edits().stream()
            .map(edit -> new TextEdit(span(edit.span()), edit.replacement()))
            .toList(),
        finding.about());
  }

  private Span span(Span span) {
    return new Span(files.computeIfAbsent(span.file(), this::file), span.start(), span.end());
  }

  private SourceFile file(SourceFile file) {
    return file.path().startsWith(prefix)
        ? new SourceFile(file.path().substring(prefix.length()), file.text())
        : file;
  }

  /** Takes the prefix away where a path of the folder follows it, and nowhere else. */
  private String text(String text) {
    StringBuilder out = new StringBuilder();
    int done = 0;
    int at = text.indexOf(prefix);
    while (at >= 0) {
      int path = at + prefix.length();
      if (isPath(text.substring(path))) {
        out.append(text, done, at);
        done = path;
      }
      at = text.indexOf(prefix, path);
    }
    return done == 0 ? text : out.append(text, done, text.length()).toString();
  }

  private boolean isPath(String from) {
    String path = paths.floor(from);
    return path != null && from.startsWith(path);
  }
}
