package dev.pellucid.engine.data;

import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * All files of {@code label/}: each as it was read, and the one that the settings name.
 *
 * @param holdable the groups and ingredients that they could name
 */
record Labels(
    Known holdable,
    ReadFiles<Optional<LabelRules>> reads,
    Optional<LabelRules> chosen,
    List<Finding> findings) {

  static final Labels NONE =
      new Labels(SequenceFile.NONE.holdable(), ReadFiles.none(), Optional.empty(), List.of());

  /** Reads what is new, or all where other groups or ingredients can be named. */
  Labels next(Nodes nodes, Frame frame, Ingredients ingredients) {
    Known named = SequenceFile.holdable(frame, ingredients);
    List<DataFile> files = nodes.in(Places.LABEL);
    ReadFiles<Optional<LabelRules>> next =
        named.isLike(holdable)
            ? reads.next(files, file -> LabelReader.read(file, frame, named))
            : reads.anew(files, file -> LabelReader.read(file, frame, named));
    TreeMap<String, LabelRules> sets = new TreeMap<>();
    for (ReadFiles.Of<Optional<LabelRules>> of : next.all()) {
      if (of.read().thing().isPresent()) {
        sets.put(of.file().stem(), of.read().thing().get());
      }
    }
    Remarks remarks = new Remarks();
    remarks.addAll(next.findings());
    Optional<String> name = frame.settings().label();
    if (name.isPresent()) {
      boolean whole = next.couldBeRead();
      new Known(ReferenceFindings.LABEL, "a set of label rules", "label/", sets.keySet(), whole)
          .check(new Scalar(name.get(), false, frame.labelPlace()), remarks);
    }
    LabelRules chosen = name.isPresent() ? sets.get(name.get()) : null;
    return new Labels(named, next, Optional.ofNullable(chosen), remarks.findings());
  }
}
