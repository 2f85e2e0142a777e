package dev.pellucid.engine.records;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.function.Consumer;

/** One thing that is looked at in every batch record. Its code has a page of the same name. */
interface RecordRule {
  Code code();

  void look(MadeBatch batch, Consumer<Finding> out);
}
