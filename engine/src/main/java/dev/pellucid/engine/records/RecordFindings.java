package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import java.util.Collection;
import java.util.List;

/** Why a record cannot be held against anything. */
public final class RecordFindings {
  static final Code NO_RECIPE = new Code("record-of-no-recipe");
  static final Code NOT_RECKONED = new Code("made-not-reckoned");

  private RecordFindings() {}

  /** A record of what there is no recipe for, where it was made from. */
  public static Finding noRecipe(BatchRecord record, Collection<String> codes) {
    List<String> near = NearNames.of(record.code(), codes);
    Finding finding =
        Finding.error(
            NO_RECIPE,
            record.declared().file().beginning(),
            "this is a batch of " + record.code() + ", and there is no such recipe or premix");
    return finding.helping(
        Meant.question(near)
            .orElse("name the file by the code of the recipe, or bring the recipe back"));
  }

  static Finding notReckoned(BatchRecord record) {
    return Finding.error(
            NOT_RECKONED,
            record
                .drying()
                .flatMap(it -> it.last())
                .map(it -> it.place())
                .orElse(record.declared()),
            "as recorded this batch would leave the dryer wetter than it went in")
        .noting("its limits were not checked")
        .helping("look at the water, and at the last moisture that was read");
  }
}
