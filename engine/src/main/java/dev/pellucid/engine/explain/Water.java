package dev.pellucid.engine.explain;

import dev.pellucid.engine.compute.Balance;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Stage;
import dev.pellucid.engine.resolve.Pass;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The water that the process brings to the feed. A step that aims at a moisture leaves so much
 * water in the feed, whatever came before it; water and steam of other steps come on top.
 */
final class Water {
  private static final String FROM_PROCESS = "process";

  private final Balance balance;

  Water(ComputedFeed feed) {
    this.balance = feed.balances().expected();
  }

  List<Brought> brought() {
    List<Brought> brought = new ArrayList<>();
    for (Stage stage : balance.stages()) {
      Optional<Balance.MoistureSet> aim = aim(stage.pass());
      if (aim.isPresent()) {
        double water = stage.after() * stage.moistureAfter();
        brought.clear();
        brought.add(of(stage, stage.after(), water, aim.get().aim().asWritten()));
      } else if (stage.added() > 0 && !stage.pass().coats()) {
        brought.add(of(stage, stage.added(), stage.added(), "water"));
      }
    }
    return brought;
  }

  /** What the step that sets the moisture takes, in words; empty where none does. */
  Optional<String> taken() {
    return balance.moistureSet().map(set -> set.by().word() + " aims at " + set.aim().asWritten());
  }

  private Optional<Balance.MoistureSet> aim(Pass pass) {
    return balance.moistureSet().filter(set -> set.by().equals(pass));
  }

  private static Brought of(Stage stage, double kg, double water, String holds) {
    return new Brought(stage.pass().word(), kg, holds, "", 0, water, FROM_PROCESS);
  }
}
