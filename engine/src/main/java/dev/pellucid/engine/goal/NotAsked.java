package dev.pellucid.engine.goal;

import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.leastcost.Advice;
import dev.pellucid.engine.leastcost.Care;
import dev.pellucid.engine.leastcost.Reasons;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The advice to put something right first. */
final class NotAsked {
  private NotAsked() {}

  static Advice of(Shared shared, Checked checked, String why) {
    SourceFile source =
        checked
            .recipe()
            .map(it -> it.recipe().source())
            .or(() -> shared.texts().read(checked.path(), new ArrayList<>()))
            .orElseGet(() -> new SourceFile(checked.path(), ""));
    return new Advice(
        checked.code(),
        checked.recipe().map(RuleContext::recipe).map(it -> it.title()).orElse(""),
        checked.path(),
        Advice.Standing.NOT_ASKED,
        why,
        Optional.empty(),
        List.of(),
        List.of(),
        Reasons.NONE,
        Care.NONE,
        new Advice.Change(List.of(), source, source.text()),
        Optional.empty());
  }
}
