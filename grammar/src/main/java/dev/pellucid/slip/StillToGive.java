package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.ToBeGiven;
import java.util.ArrayList;
import java.util.List;
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
    Finding finding =
        Finding.error(CODE, line.at(at).span(), what(line, at) + " is still to be given")
            .helping("write the figure in place of " + line.at(at).text());
    return line.place().hasShares()
        ? finding.helping("or put # before the line, where the feed is to do without it")
        : finding;
  }

  /** The words before the mark: what it is about. */
  private static String what(BrokenLine line, int at) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < at; i++) {
      words.add(line.at(i).text());
    }
    return words.isEmpty() ? "the line" : String.join(" ", words);
  }
}
