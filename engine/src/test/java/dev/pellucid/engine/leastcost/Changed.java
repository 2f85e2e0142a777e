package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import dev.pellucid.engine.workspace.Summary;
import dev.pellucid.engine.workspace.Whole;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** The example with texts changed, and what is told of a recipe of it. */
record Changed(Texts texts) {
  static final LocalDate DAY = LocalDate.of(2026, 11, 28);

  static Changed example() {
    try {
      return new Changed(Texts.at(Example.whole()).held());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  List<String> recipes() {
    return texts.ending(".recipe");
  }

  String text(String path) {
    return texts.read(path, new ArrayList<>()).orElseThrow().text();
  }

  /** With the first match of a pattern replaced, of which there must be one. */
  Changed with(String path, String pattern, String replacement) {
    String changed = text(path).replaceFirst(pattern, replacement);
    if (changed.equals(text(path))) {
      throw new IllegalArgumentException("nothing changes in " + path + ": " + pattern);
    }
    return as(path, changed);
  }

  Changed as(String path, String text) {
    return new Changed(texts.over(Map.of(path, text)));
  }

  Changed with(Advice advice) {
    return as(advice.path(), advice.change().after());
  }

  private Shared shared() {
    return Shared.of(ReadFolder.of(texts), Days.on(DAY));
  }

  RuleContext recipe(String path) {
    return Streamed.judged(shared(), path).recipe().orElseThrow();
  }

  Advice advice(String path, Wishes wishes) {
    Shared shared = shared();
    RuleContext recipe = Streamed.judged(shared, path).recipe().orElseThrow();
    Optional<InStore> store =
        wishes.fromStock()
            ? Optional.of(
                new InStore(
                    shared.tables(), Whole.of(shared, Streamed.check(shared, Summary::of)).stock()))
            : Optional.empty();
    return new Advising(
            Solver.standard(), new FeedComputer(shared.tables()), shared.findings(), store)
        .of(recipe, wishes);
  }

  Posed posed(String path, Wishes wishes) {
    Shared shared = shared();
    FeedComputer computer = new FeedComputer(shared.tables());
    RuleContext recipe = Streamed.judged(shared, path).recipe().orElseThrow();
    return Posed.of(recipe, wishes, computer, new Held(computer, shared.findings())).orElseThrow();
  }

  static Wishes wishes(Set<String> without, OptionalDouble move, double worth, boolean label) {
    return new Wishes(
        Set.of(),
        List.of(),
        without,
        move,
        worth,
        label,
        OptionalDouble.empty(),
        false,
        false,
        Optional.empty(),
        false);
  }

  static Wishes fromStock() {
    return new Wishes(
        Set.of(),
        List.of(),
        Set.of(),
        OptionalDouble.empty(),
        0,
        false,
        OptionalDouble.empty(),
        true,
        false,
        Optional.empty(),
        false);
  }
}
