package dev.pellucid.engine.workspace;

import dev.pellucid.engine.records.Reshared;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.Resolver;
import dev.pellucid.parse.FeedParser;
import dev.pellucid.parse.Parsed;
import dev.pellucid.parse.SourceBytes;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.TextEdit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Other shares are written into the text of a recipe, and it is read again; nothing is kept. */
record SharesInText(Resolver resolver) implements Reshared {
  @Override
  public Optional<ResolvedRecipe> with(ResolvedRecipe recipe, List<TextEdit> edits) {
    SourceFile changed = new SourceFile(recipe.source().path(), edited(recipe.source(), edits));
    Parsed parsed = FeedParser.parse(new SourceBytes.Decoded(changed, List.of()));
    return resolver
        .recipe((RecipeFile) parsed.file())
        .thing()
        .filter(anew -> anew.lines().size() == recipe.lines().size())
        .map(recipe::withSharesOf);
  }

  /** The last edit first, so that places stay true. */
  static String edited(SourceFile source, List<TextEdit> edits) {
    List<TextEdit> lastFirst = new ArrayList<>(edits);
    lastFirst.sort(Comparator.comparingInt((TextEdit edit) -> edit.span().start()).reversed());
    String changed = source.text();
    for (TextEdit edit : lastFirst) {
      changed =
          changed.substring(0, edit.span().start())
              + edit.replacement()
              + changed.substring(edit.span().end());
    }
    return changed;
  }
}
