package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme.Kind;
import java.util.Optional;
import java.util.Set;

/** A head line below a section. */
final class HeadLineLate implements Slip {
  static final Code CODE = new Code("head-line-late");

  private static final Set<String> WITH_WORD =
      Set.of("status", "species", "habit", "plant", "meets", "kind", "jurisdiction", "source");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    boolean inSection = line.place() != Place.HEAD && line.place() != Place.OPENING;
    if (!inSection || line.size() < 2 || !isHeadLine(line)) {
      return Optional.empty();
    }
    String word = line.at(0).text();
    return Optional.of(
        Finding.error(CODE, line.at(0).span(), word + " belongs in the head of the file")
            .helping("move this line up, between the opening line and the first section"));
  }

  private static boolean isHeadLine(BrokenLine line) {
    String word = line.at(0).text();
    return line.size() == 2
        ? WITH_WORD.contains(word) && line.is(1, Kind.WORD)
        : (word.equals("fish") && line.is(2, "to"))
            || (word.equals("batch") && (line.is(3, "weighed") || line.is(3, "finished")));
  }
}
