package dev.pellucid.engine.check;

import dev.pellucid.engine.data.AlsoMade;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.data.SequenceRow;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.function.Consumer;

/**
 * A row of {@code practice/sequence.yaml} for something that no plant says that it also makes: then
 * no sheet tells the hand of it. Most likely {@code also-makes} was lost.
 */
final class MadeAtNoPlant {
  static final Code CODE = new Code("made-at-no-plant");

  private MadeAtNoPlant() {}

  static void look(FeedTables tables, Consumer<Finding> out) {
    for (SequenceRow row : tables.practice().sequence()) {
      if (row.besides().isPresent() && !isMade(row.besides().get(), tables)) {
        out.accept(finding(row, row.besides().get()));
      }
    }
  }

  private static boolean isMade(AlsoMade what, FeedTables tables) {
    for (Plant plant : tables.plants().values()) {
      if (plant.alsoMakes(what)) {
        return true;
      }
    }
    return false;
  }

  private static Finding finding(SequenceRow row, AlsoMade what) {
    return Finding.warning(
            CODE,
            row.place(),
            "no plant says that it also makes " + what.words() + ", so this row is on no sheet")
        .helping(
            "write also-makes: ["
                + what.word()
                + "] in the file of the plant that makes it, or take this row out");
  }
}
