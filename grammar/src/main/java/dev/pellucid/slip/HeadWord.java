package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import dev.pellucid.text.Choices;
import dev.pellucid.text.NearNames;
import java.util.List;
import java.util.Optional;

/** A head line that begins with an unknown word. */
final class HeadWord implements Slip {
  static final Code CODE = new Code("head-line-unknown");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    Lexeme first = line.at(0);
    List<String> words = line.file().headWords();
    if (line.place() != Place.HEAD || words.contains(first.text())) {
      return Optional.empty();
    }
    Finding finding =
        Finding.error(
                CODE,
                first.span(),
                first.text() + " is not a line of the head of a " + line.file().word())
            .helping(
                first.text().equals("reviewed")
                    ? "it stands behind the status: status approved reviewed by \"NAME\" on DAY"
                    : "the head has " + Choices.all(words));
    List<String> near = NearNames.of(first.text(), words);
    return Optional.of(near.size() == 1 ? finding.fixing(first.span(), near.get(0)) : finding);
  }
}
