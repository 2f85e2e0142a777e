package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import dev.pellucid.syntax.Lexeme.Kind;
import java.util.Optional;

/** A comment that is glued to the word before it. */
final class CommentGlued implements Slip {
  static final Code CODE = new Code("comment-glued");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    return line.first(CommentGlued::look);
  }

  private static Optional<Finding> look(Lexeme lexeme) {
    int hash = lexeme.kind() == Kind.UNREADABLE ? lexeme.text().indexOf('#') : -1;
    if (hash < 1) {
      return Optional.empty();
    }
    int place = lexeme.span().start() + hash;
    return Optional.of(
        Finding.error(CODE, lexeme.span(), "a comment needs white space before its #")
            .helping("put two spaces before the #")
            .mending(lexeme.span().file().span(place, place), "  "));
  }
}
