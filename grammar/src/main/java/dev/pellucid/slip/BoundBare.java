package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme.Kind;
import java.util.Optional;

/** A limit that does not say which side it bounds. */
final class BoundBare implements Slip {
  static final Code CODE = new Code("bound-side-missing");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    boolean limits = line.place() == Place.LIMITS || line.place() == Place.WAIVERS;
    int figure = 0;
    while (figure < line.size() && line.at(figure).kind() != Kind.NUMBER) {
      figure++;
    }
    boolean bare = figure > 0 && figure < line.size() && line.is(figure - 1, Kind.WORD);
    if (!limits || !bare || Vocabulary.NUMBER_FOLLOWS.contains(line.at(figure - 1).text())) {
      return Optional.empty();
    }
    Finding finding =
        Finding.error(
            CODE, line.at(figure).span(), "this figure does not say whether it is a min or a max");
    return Optional.of(fixed(finding, line, figure));
  }

  private static Finding fixed(Finding finding, BrokenLine line, int i) {
    boolean range =
        line.is(i + 1, "to") && line.is(i + 2, Kind.NUMBER) && line.is(i + 3, Kind.UNIT);
    if (!range) {
      return finding.helping("put min before it for at least, max for at most");
    }
    String unit = " " + line.at(i + 3).text();
    String both = "min " + line.at(i).text() + unit + " max " + line.at(i + 2).text() + unit;
    return finding.helping("write " + both).fixing(line.through(i, i + 3), both);
  }
}
