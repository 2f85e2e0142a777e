package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Blanks;
import dev.pellucid.text.ToBeGiven;
import java.util.Optional;

/** A figure that a person is still to give, with a mark in its place. */
final class StillToGive implements Slip {
  static final Code CODE = new Code("to-be-given");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    for (int i = 0; i < line.size(); i++) {
      if (ToBeGiven.isMark(line.at(i).text())) {
        return Optional.of(finding(line, i));
      }
    }
    return Optional.empty();
  }

  private static Finding finding(BrokenLine line, int at) {
    String what = at == 0 ? "the line" : Blanks.plain(line.through(0, at - 1).text());
    return Finding.error(CODE, line.at(at).span(), what + " is still to be given")
        .helping("write the figure in place of " + line.at(at).text())
        .helping("or put # before the line, where the feed is to do without");
  }
}
