package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme.Kind;
import java.util.Optional;

/** A bound on the line of a share. */
final class ShareBound implements Slip {
  static final Code CODE = new Code("share-bound");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    if (!line.place().hasShares()) {
      return Optional.empty();
    }
    for (int i = 1; i + 1 < line.size(); i++) {
      boolean bound = line.is(i, "min") || line.is(i, "max");
      if (bound && line.is(i + 1, Kind.NUMBER)) {
        return Optional.of(
            Finding.error(
                    CODE,
                    line.at(i).span(),
                    line.at(i).text() + " has no place on the line of a share")
                .helping("write how far the share may move, for example: within 10 to 20 %")
                .helping(
                    "or put a limit on it in limits: inclusion "
                        + line.at(0).text()
                        + " "
                        + line.through(i, Math.min(i + 2, line.size() - 1)).text()));
      }
    }
    return Optional.empty();
  }
}
