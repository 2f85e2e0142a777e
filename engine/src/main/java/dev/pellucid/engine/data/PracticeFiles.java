package dev.pellucid.engine.data;

import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The files of {@code practice/} as they were read. What may follow what on one line names
 * ingredients and is read apart, so that another ingredient leaves the rest as it is.
 *
 * @param files those of which follows what names no ingredient
 * @param apart what names no ingredient
 * @param practice the same with what may follow what
 */
record PracticeFiles(
    List<DataFile> files, Read<Practice> apart, SequenceFile sequence, Practice practice) {

  /** Of a folder without such files. */
  static final PracticeFiles NONE = none();

  private static PracticeFiles none() {
    Practice practice =
        new Practice(
            Map.of(),
            Map.of(),
            Map.of(),
            Densities.NONE,
            Optional.empty(),
            Map.of(),
            List.of(),
            List.of());
    return new PracticeFiles(
        List.of(), new Read<>(practice, List.of(), true), SequenceFile.NONE, practice);
  }

  /** Reads what is new; a practice of which nothing is new stays the same object. */
  @SuppressWarnings("ReferenceEquality")
  PracticeFiles next(Nodes nodes, Frame frame, Ingredients ingredients) {
    List<DataFile> now =
        nodes.files(
            RetentionReader.FILE,
            CautionsReader.FILE,
            BoundsReader.FILE,
            SpreadsReader.FILE,
            DensitiesReader.FILE,
            SteamReader.FILE);
    Read<Practice> read = Nodes.areSame(files, now) ? apart : apart(nodes, frame);
    SequenceFile follows = sequence.next(nodes, frame, ingredients);
    boolean same = read == apart && follows.rows().equals(sequence.rows());
    return new PracticeFiles(
        now, read, follows, same ? practice : read.thing().following(follows.rows()));
  }

  private static Read<Practice> apart(Nodes nodes, Frame frame) {
    Remarks remarks = new Remarks();
    Sources sources = frame.names().sources();
    Known nutrients = frame.names().nutrients();
    CautionsReader cautions = new CautionsReader(nodes.file(CautionsReader.FILE), remarks);
    Practice practice =
        new Practice(
            new BoundsReader(sources, remarks).read(nodes.file(BoundsReader.FILE)),
            frame.retention(),
            new SpreadsReader(sources, nutrients, frame.nutrients(), remarks)
                .read(nodes.file(SpreadsReader.FILE)),
            new DensitiesReader(sources, remarks).read(nodes.file(DensitiesReader.FILE)),
            new SteamReader(sources, remarks).read(nodes.file(SteamReader.FILE)),
            cautions.cautions(),
            List.of(),
            cautions.inspection());
    return new Read<>(practice, remarks.findings(), remarks.isSound());
  }

  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>(sequence.findings());
    findings.addAll(apart.findings());
    return findings;
  }
}
