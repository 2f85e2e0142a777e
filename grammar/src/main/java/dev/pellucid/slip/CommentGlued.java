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
    return line.first(lexeme -> look(line, lexeme));
  }

  private static Optional<Finding> look(BrokenLine line, Lexeme lexeme) {
    int hash = lexeme.kind() == Kind.UNREADABLE ? lexeme.text().indexOf('#') : -1;
    if (hash < 1) {
      return Optional.empty();
    }
    Finding finding = Finding.error(CODE, lexeme.span(), "a comment needs a space before its #");
    if (lexeme.equals(line.at(0))) {
      return Optional.of(
          finding.helping("put two spaces before the #, or leave it out: a name has none"));
    }
    int place = lexeme.span().start() + hash;
    return Optional.of(
        finding
            .helping("put two spaces before the #")
            .fixing(lexeme.span().file().span(place, place), "  "));
  }
}
