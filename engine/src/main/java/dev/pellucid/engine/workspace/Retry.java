package dev.pellucid.engine.workspace;

import dev.pellucid.engine.check.Again;
import dev.pellucid.engine.check.Fixing;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.resolve.Resolution;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.parse.FeedParser;
import dev.pellucid.parse.Parsed;
import dev.pellucid.parse.SourceBytes;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.syntax.OverageLine;
import dev.pellucid.syntax.Section;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import dev.pellucid.text.TextEdit;
import java.util.List;
import java.util.Optional;

/**
 * A recipe of a folder that is tried with its text changed; nothing of it is kept.
 *
 * @param errors that its words have as it is written; a trial may not have more
 */
record Retry(Shared shared, SourceBytes.Decoded text, int errors) implements Again {
  @Override
  public Optional<RuleContext> with(List<TextEdit> edits) {
    return tried(SharesInText.edited(text.source(), edits));
  }

  @Override
  public Optional<RuleContext> withOverage(String name, String extra, String purpose) {
    RecipeFile file = (RecipeFile) FeedParser.parse(text).file();
    String line = "  " + name + "  " + extra + "  for " + purpose;
    Optional<Section<OverageLine>> section = file.overage();
    if (section.isEmpty()) {
      return tried(text.source().text() + "\noverage\n" + line + "\n");
    }
    for (OverageLine one : section.get().lines()) {
      boolean same = one.target().span().text().equals(name);
      if (same && one.purpose().text().equals(purpose)) {
        return with(List.of(new TextEdit(one.span(), line.strip())));
      }
    }
    Span heading = section.get().heading();
    return with(List.of(new TextEdit(heading, heading.text() + "\n" + line)));
  }

  private Optional<RuleContext> tried(String changed) {
    SourceFile source = new SourceFile(text.source().path(), changed);
    Parsed parsed = FeedParser.parse(new SourceBytes.Decoded(source, List.of()));
    Resolution<ResolvedRecipe> resolved = shared.resolver().recipe((RecipeFile) parsed.file());
    return errors(parsed.findings()) + errors(resolved.findings()) <= errors
        ? resolved.thing().map(recipe -> Checks.inspection(shared, recipe, Fixing.none()))
        : Optional.empty();
  }

  static int errors(List<Finding> findings) {
    int errors = 0;
    for (Finding finding : findings) {
      errors += finding.severity() == Severity.ERROR ? 1 : 0;
    }
    return errors;
  }
}
