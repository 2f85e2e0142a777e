package dev.pellucid.engine.data;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All files of {@code plans/}: each as it was read, and the first plan of each name.
 *
 * @param ingredients what can be short, as the files were read
 */
record FeedPlans(
    Known ingredients,
    ReadFiles<Optional<FeedPlan>> reads,
    SortedMap<String, FeedPlan> byName,
    List<Finding> findings) {
  static final Code CODE = new Code("data-plan");

  static final FeedPlans NONE = of(Lots.NONE.ingredients(), ReadFiles.none());

  /** Reads what is new, or all where other ingredients can be named. */
  FeedPlans next(Nodes nodes, Frame frame, Known named) {
    List<DataFile> files = nodes.in(Places.PLANS);
    return named.isLike(ingredients)
        ? of(named, reads.next(files, file -> PlansReader.read(file, frame, named)))
        : of(named, reads.anew(files, file -> PlansReader.read(file, frame, named)));
  }

  private static FeedPlans of(Known ingredients, ReadFiles<Optional<FeedPlan>> reads) {
    SortedMap<String, FeedPlan> byName = new TreeMap<>();
    Remarks remarks = new Remarks();
    remarks.addAll(reads.findings());
    for (Optional<FeedPlan> read : reads.things()) {
      if (read.isEmpty()) {
        continue;
      }
      FeedPlan plan = read.get();
      FeedPlan earlier = byName.putIfAbsent(plan.name(), plan);
      if (earlier != null) {
        remarks.add(
            ReferenceFindings.nameTwice(
                plan.name(), "a plan", plan.declared(), earlier.declared(), "another"));
      }
    }
    return new FeedPlans(ingredients, reads, byName, remarks.findings());
  }
}
