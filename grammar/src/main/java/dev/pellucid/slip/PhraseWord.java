package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import dev.pellucid.syntax.Lexeme.Kind;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import java.util.List;
import java.util.Optional;

/** A phrase that begins with an unknown word. */
final class PhraseWord implements Slip {
  static final Code CODE = new Code("phrase-unknown");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    int tail = ShareTail.start(line);
    for (int i = 1; i < line.size(); i++) {
      List<String> words = words(line, i, tail);
      Lexeme lexeme = line.at(i);
      boolean name = Vocabulary.NAME_FOLLOWS.contains(line.at(i - 1).text());
      if (lexeme.kind() == Kind.WORD && !name && !words.contains(lexeme.text())) {
        List<String> near = NearNames.of(lexeme.text(), words);
        if (near.size() == 1) {
          return Optional.of(finding(lexeme, near.get(0)));
        }
      }
    }
    return Optional.empty();
  }

  /** Of a share, what says how it may move stands behind its figure; before it there is a name. */
  private static List<String> words(BrokenLine line, int at, int tail) {
    if (!line.place().hasShares()) {
      return Vocabulary.phrases(line.place());
    }
    if (tail < 0 || at < tail) {
      return Vocabulary.BEFORE_SHARE;
    }
    boolean orNone = line.is(at, "or") && line.is(at + 1, "none");
    return orNone ? Vocabulary.phrases(line.place()) : Vocabulary.BEHIND_SHARE;
  }

  private static Finding finding(Lexeme lexeme, String near) {
    return Finding.error(CODE, lexeme.span(), lexeme.text() + " is not a word of this line")
        .helping(Meant.question(near))
        .fixing(lexeme.span(), near);
  }
}
