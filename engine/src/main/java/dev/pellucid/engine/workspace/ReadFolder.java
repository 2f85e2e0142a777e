package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.TablesRead;
import dev.pellucid.engine.data.TablesState;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A folder as it is written, before any day has come to it: its data, and its premixes and profiles
 * as trees.
 *
 * @param data the same as the next state needs it
 * @param findings what is wrong with files, names and data
 */
public record ReadFolder(
    Texts texts, Trees trees, TablesState data, FeedTables tables, List<Finding> findings) {
  public ReadFolder {
    findings = List.copyOf(findings);
  }

  /** Reads one. */
  public static ReadFolder of(Texts texts) {
    return after(Optional.empty(), texts);
  }

  /** Reads a later state; what comes of texts that are the same objects is the same too. */
  static ReadFolder after(Optional<ReadFolder> earlier, Texts texts) {
    List<Finding> findings = new ArrayList<>();
    DataTexts data = DataTexts.of(texts, findings);
    findings.addAll(texts.findings());
    TablesState before = earlier.isPresent() ? earlier.get().data() : TablesState.empty();
    TablesState read = before.next(data.read(), data.closed());
    TablesRead stocked = read.stocked();
    findings.addAll(stocked.findings());
    Trees trees =
        Trees.after(
            earlier.isPresent() ? Optional.of(earlier.get().trees()) : Optional.empty(), texts);
    return new ReadFolder(texts, trees, read, stocked.tables(), findings);
  }
}
