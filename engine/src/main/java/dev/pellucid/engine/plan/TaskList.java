package dev.pellucid.engine.plan;

import dev.pellucid.engine.compute.Balance;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Stage;
import dev.pellucid.engine.larder.Larder;
import dev.pellucid.engine.larder.Plant;
import dev.pellucid.engine.plan.Task.Asked;
import dev.pellucid.engine.plan.Task.Drying;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Range;
import dev.pellucid.syntax.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The passes of a recipe as tasks of one batch. The stages of a feed carry the kernel alone; here
 * the coat joins it at its own pass, or before sieve and bag where the recipe names no such pass.
 */
final class TaskList {
  private static final double CHECK_EVERY_HOURS = 3;
  private static final double UNTOLD_HOURS = 12;
  private static final double SAMPLE_KG = 1;

  private final Larder larder;
  private final Cautions cautions;
  private final Balance balance;
  private final double times;
  private final boolean coatNamed;
  private final List<Task> tasks = new ArrayList<>();

  /** What is on the kernel so far, per 100 kg of recipe. */
  private double coat;

  TaskList(ComputedFeed feed, Larder larder, double times) {
    this.larder = larder;
    this.cautions = new Cautions(feed, larder.practice());
    this.balance = feed.balances().expected();
    this.times = times;
    this.coatNamed = feed.recipe().process().has(Step.COAT);
  }

  List<Task> inOrder() {
    for (Stage stage : balance.stages()) {
      take(stage);
    }
    if (uncoated() && !coatNamed) {
      coat(List.of(), balance.kernel());
    }
    return tasks;
  }

  private boolean uncoated() {
    return balance.coat() > 0 && coat == 0;
  }

  private void take(Stage stage) {
    Pass pass = stage.pass();
    switch (pass.step()) {
      case COAT -> {
        if (coat == 0) {
          coat(asked(pass), stage.before());
        } else {
          tasks.add(plain(stage, Optional.empty()));
        }
      }
      case SIEVE, PACK, STORE -> {
        if (uncoated() && !coatNamed) {
          coat(List.of(), stage.before());
        }
        tasks.add(plain(stage, Optional.empty()));
      }
      case DRY -> tasks.add(plain(stage, drying(stage)));
      case GRIND, BLEND, ADD_LIQUID, ADD_WATER, CONDITION, PELLET, EXTRUDE, COOL ->
          tasks.add(plain(stage, Optional.empty()));
    }
  }

  private void coat(List<Asked> asked, double kernel) {
    coat = balance.coat();
    tasks.add(
        new Task(
            Step.COAT,
            asked,
            kernel * times,
            coat * times,
            0,
            (kernel + coat) * times,
            balance.kernelMoisture(),
            balance.moisture(),
            cautions.of(Step.COAT),
            Optional.empty()));
  }

  private Task plain(Stage stage, Optional<Drying> drying) {
    return new Task(
        stage.pass().step(),
        asked(stage.pass()),
        (stage.before() + coat) * times,
        stage.added() * times,
        stage.evaporated() * times,
        (stage.after() + coat) * times,
        coated(stage.before(), stage.moistureBefore()),
        coated(stage.after(), stage.moistureAfter()),
        cautions.of(stage.pass().step()),
        drying);
  }

  /** The moisture of a kernel together with the coat that is on it. */
  private double coated(double kernel, double moisture) {
    if (coat == 0) {
      return moisture;
    }
    double coatWater =
        balance.finished() * balance.moisture() - balance.kernel() * balance.kernelMoisture();
    return (kernel * moisture + coatWater) / (kernel + coat);
  }

  private static List<Asked> asked(Pass pass) {
    return pass.settings().stream().map(TaskList::asked).toList();
  }

  private static Asked asked(Setting setting) {
    String property = setting.property().word().replace('-', ' ');
    String what = setting.ingredient().map(name -> property + ", " + name).orElse(property);
    return new Asked(
        what,
        setting.written().target().asWritten(),
        setting.written().accept().map(Range::asWritten).orElse(""));
  }

  private Optional<Drying> drying(Stage stage) {
    return stage
        .pass()
        .setting(Property.MOISTURE)
        .map(aim -> new Drying(chart(stage, aim), checks(stage.pass())));
  }

  private TrayChart chart(Stage stage, Setting moisture) {
    List<Double> targets =
        Stream.of(moisture.band().high(), moisture.aim(), moisture.band().low())
            .distinct()
            .sorted(Comparator.reverseOrder())
            .toList();
    OptionalDouble load = larder.plant().map(Plant::trayLoad).orElse(OptionalDouble.empty());
    return TrayChart.of(
        load.orElse(SAMPLE_KG), load.isPresent(), stage.moistureBefore(), targets, moisture.aim());
  }

  /** Every three hours, and at both ends of the time asked for. */
  private static List<Double> checks(Pass pass) {
    TreeSet<Double> hours = new TreeSet<>();
    Optional<Setting> time = pass.setting(Property.TIME);
    double last = time.map(Setting::high).orElse(UNTOLD_HOURS);
    time.ifPresent(asked -> hours.add(asked.low()));
    for (double hour = CHECK_EVERY_HOURS; hour < last; hour += CHECK_EVERY_HOURS) {
      hours.add(hour);
    }
    hours.add(last);
    return List.copyOf(hours);
  }
}
