package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme.Kind;
import java.util.Map;
import java.util.Optional;

/** A phrase that breaks off. */
final class PhraseIncomplete implements Slip {
  static final Code CODE = new Code("phrase-incomplete");

  private static final Map<String, String> WHOLE =
      Map.ofEntries(
          Map.entry("on", "on dry matter"),
          Map.entry("at", "at 12 % moisture"),
          Map.entry("in", "in 95 % of batches"),
          Map.entry("by", "by \"quality manager\""),
          Map.entry("because", "because \"rice bran season\""),
          Map.entry("until", "until 2027-03-31"),
          Map.entry("reviewed", "reviewed by \"A. Marsh\" on 2026-11-20"),
          Map.entry("source", "source house-averages"),
          Map.entry("per", "per weighing"),
          Map.entry("for", "for handling"),
          Map.entry("from", "from ascorbyl-phosphate-35"),
          Map.entry("within", "within 10 to 20 %"),
          Map.entry("step", "step 0.5 %"),
          Map.entry("min", "min 35 %"),
          Map.entry("max", "max 40 %"));

  @Override
  public Optional<Finding> in(BrokenLine line) {
    for (int i = 1; i < line.size(); i++) {
      String whole = WHOLE.getOrDefault(line.at(i).text(), "");
      boolean phrase =
          !whole.isEmpty() && Vocabulary.phrases(line.place()).contains(line.at(i).text());
      if (phrase && !isWhole(line, i)) {
        return Optional.of(
            Finding.error(
                    CODE,
                    line.at(i).span(),
                    "the phrase that begins with " + line.at(i).text() + " is not whole")
                .helping("for example: " + whole));
      }
    }
    return Optional.empty();
  }

  private static boolean isWhole(BrokenLine line, int at) {
    return switch (line.at(at).text()) {
      case "on" -> line.is(at + 1, "dry") && line.is(at + 2, "matter");
      case "at" -> line.is(at + 1, Kind.NUMBER) && line.is(at + 3, "moisture");
      case "in" ->
          line.is(at + 1, Kind.NUMBER) && line.is(at + 3, "of") && line.is(at + 4, "batches");
      case "min", "max", "within", "step" -> line.is(at + 1, Kind.NUMBER);
      case "by", "because" -> line.is(at + 1, Kind.QUOTED);
      case "until" -> line.is(at + 1, Kind.DAY) || line.is(at + 1, Kind.UNREADABLE);
      case "reviewed" ->
          line.is(at + 1, "by")
              && line.is(at + 2, Kind.QUOTED)
              && line.is(at + 3, "on")
              && (line.is(at + 4, Kind.DAY) || line.is(at + 4, Kind.UNREADABLE));
      case "per" -> line.is(at + 1, "weighing");
      default -> line.is(at + 1, Kind.WORD);
    };
  }
}
