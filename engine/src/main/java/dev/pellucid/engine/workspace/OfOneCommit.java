package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.folder.Past.Then;
import dev.pellucid.engine.folder.Texts;
import java.util.List;

/** The records that name one commit, in the order of their days, and what that commit has. */
record OfOneCommit(List<BatchRecord> records, Then then, Texts texts) {
  OfOneCommit {
    records = List.copyOf(records);
  }
}
