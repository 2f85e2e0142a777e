package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.FeedPlan;
import dev.pellucid.engine.data.FeedPlan.Planned;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Choices;
import dev.pellucid.text.NearNames;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What plans want made: of a feed that the folder does not have, or that is still a draft. */
public final class PlannedFeeds {
  static final Code CODE = new Code("plan-recipe");

  private PlannedFeeds() {}

  static void look(Shared shared, List<Summary> recipes, List<Finding> findings) {
    Set<String> drafts = new HashSet<>();
    for (Summary one : recipes) {
      if (one.isDraft()) {
        drafts.add(one.code());
      }
    }
    for (FeedPlan plan : shared.tables().plans().values()) {
      look(shared, plan, drafts, findings);
    }
  }

  /** What is wrong with the feeds of one plan. */
  public static List<Finding> of(Shared shared, FeedPlan plan, Set<String> drafts) {
    List<Finding> findings = new ArrayList<>();
    look(shared, plan, drafts, findings);
    return findings;
  }

  /** Each code once, where it stands first. */
  private static void look(
      Shared shared, FeedPlan plan, Set<String> drafts, List<Finding> findings) {
    Set<String> seen = new HashSet<>();
    for (Planned one : plan.feeds()) {
      if (!seen.add(one.recipe())) {
        continue;
      }
      if (shared.trees().path(one.recipe()).isEmpty()) {
        findings.add(unknown(shared, one));
      } else if (drafts.contains(one.recipe())) {
        findings.add(
            Finding.warning(CODE, one.place(), one.recipe() + " is planned, and is still a draft")
                .helping("set its status to approved before it is made, or plan another feed"));
      }
    }
  }

  private static Finding unknown(Shared shared, Planned one) {
    Finding finding =
        Finding.error(CODE, one.place(), one.recipe() + " is not a recipe of this folder");
    List<String> near = NearNames.of(one.recipe(), shared.trees().recipes());
    return near.isEmpty()
        ? finding.helping("write the code of a recipe, which is the name of its file")
        : finding
            .helping("did you mean " + Choices.of(near) + "?")
            .fixing(one.place(), near.get(0));
  }
}
