package dev.pellucid.engine.benchmark;

import dev.pellucid.parse.generated.FeedLines;
import dev.pellucid.parse.generated.FeedTokens;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.atn.PredictionMode;

/** What ANTLR makes of the grammar and nothing else: a text to its parse tree. */
final class BareParser {
  private final PredictionMode mode;

  BareParser(PredictionMode mode) {
    this.mode = mode;
  }

  /**
   * Parses one recipe.
   *
   * @return the number of its lines that have a tree, which is the number of recipes read: 1
   */
  int parse(String text) {
    FeedTokens tokens = new FeedTokens(CharStreams.fromString(text));
    FeedLines parser = new FeedLines(new CommonTokenStream(tokens));
    parser.getInterpreter().setPredictionMode(mode);
    FeedLines.RecipeFileContext tree = parser.recipeFile();
    boolean read = parser.getNumberOfSyntaxErrors() == 0 && !tree.recipeSection().isEmpty();
    return read ? 1 : 0;
  }
}
