package dev.pellucid.engine.sharing;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.leastcost.Held;
import dev.pellucid.engine.leastcost.Portion;
import dev.pellucid.engine.leastcost.Posed;
import dev.pellucid.engine.leastcost.Wishes;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.Requirement.OfStock.Counted;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.sharing.Wanted.Due;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;

/** Feeds of the example that are wanted. */
final class Plans {
  static final LocalDate DAY = LocalDate.of(2026, 11, 28);

  final Texts texts;
  final Shared shared;
  final FeedComputer computer;
  private final Held held;

  Plans(Texts texts) {
    this.texts = texts;
    this.shared = Shared.of(ReadFolder.of(texts), Days.on(DAY));
    this.computer = new FeedComputer(shared.tables());
    this.held = new Held(computer, shared.findings());
  }

  static Plans example() {
    try {
      return new Plans(Texts.at(Example.whole()).held());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  ShareOut shareOut() {
    return new ShareOut(Solver.standard(), computer);
  }

  Posed posed(String code) {
    String path = shared.trees().path(code).orElseThrow();
    RuleContext recipe = Streamed.judged(shared, path).recipe().orElseThrow();
    Portion.Posing posing =
        new Portion(Solver.standard(), computer).posed(recipe, Wishes.NONE, held);
    return posing.posed().orElseThrow(() -> new IllegalArgumentException(posing.why()));
  }

  Wanted wanted(String code, double kg) {
    return wanted(code, kg, Counted.BAGGED, DAY.plusDays(10));
  }

  Wanted wanted(String code, double kg, Counted counted, LocalDate day) {
    return new Wanted(posed(code), counted, List.of(new Due(day, kg, "")));
  }

  double price(String ingredient) {
    return shared.tables().price(ingredient, DAY).orElseThrow().perKg();
  }

  Supply supply(String ingredient, double kg) {
    return Supply.of(ingredient, kg, price(ingredient));
  }
}
