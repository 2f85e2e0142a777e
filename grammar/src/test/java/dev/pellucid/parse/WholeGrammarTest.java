package dev.pellucid.parse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.parse.generated.FeedLines;
import dev.pellucid.parse.generated.FeedTokens;
import dev.pellucid.syntax.FileKind;
import dev.pellucid.text.SourceFile;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ParserRuleContext;
import org.junit.jupiter.api.Test;

/** The grammar of the whole file and the reader of single lines agree on what a good file is. */
class WholeGrammarTest {
  @Test
  void goodFilesFitTheWholeGrammar() {
    for (SourceFile file : GoodFiles.all()) {
      assertEquals(0, errors(file), file.path());
    }
  }

  @Test
  void aBrokenLineDoesNot() {
    for (SourceFile file : GoodFiles.all()) {
      assertTrue(errors(new SourceFile(file.path(), file.text() + "  14,0 maize\n")) > 0);
    }
  }

  private static int errors(SourceFile file) {
    FeedTokens lexer = new FeedTokens(new PlainLetters(file.text()));
    FeedLines parser = new FeedLines(new CommonTokenStream(lexer));
    parser.removeErrorListeners();
    ParserRuleContext read =
        switch (FileKind.of(file.path()).orElseThrow()) {
          case RECIPE -> parser.recipeFile();
          case PREMIX -> parser.premixFile();
          case PROFILE -> parser.profileFile();
        };
    assertTrue(read.getChildCount() > 0);
    return parser.getNumberOfSyntaxErrors();
  }
}
