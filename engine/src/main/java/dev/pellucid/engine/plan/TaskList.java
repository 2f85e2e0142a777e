package dev.pellucid.engine.plan;

import dev.pellucid.engine.compute.Balance;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Stage;
import dev.pellucid.engine.data.Dryer;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.plan.Task.Asked;
import dev.pellucid.engine.plan.Task.Drying;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.engine.weighing.IntoDryer;
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
 * The passes of a recipe as tasks of one batch.
 *
 * <p>Masses run on from the weights shown, so that each task closes: what is added and what goes
 * out are rounded, what goes off is the difference.
 */
final class TaskList {
  private static final double CHECK_EVERY_HOURS = 3;
  private static final double UNTOLD_HOURS = 12;
  private static final double SAMPLE_KG = 1;

  private final FeedTables tables;
  private final Cautions cautions;
  private final Balance balance;
  private final Optional<Plant> plant;
  private final double times;
  private final int decimals;
  private final Mass coat;
  private final Optional<Mass> wanted;
  private final Milling milling;
  private final List<Task> tasks = new ArrayList<>();
  private Mass mass;
  private boolean coated;

  /**
   * @param list what is weighed
   * @param scales how the plant weighs it, where it tells its scales
   * @param times batches of 100 kg that this one is
   * @param wanted finished feed that must come out, where the recipe tells it
   */
  TaskList(
      ComputedFeed feed,
      FeedTables tables,
      Cautions cautions,
      WeighList list,
      Optional<OnScales> scales,
      double times,
      Optional<Mass> wanted) {
    this.tables = tables;
    this.cautions = cautions;
    this.balance = feed.balances().expected();
    this.plant = feed.recipe().plant();
    this.times = times;
    this.decimals = list.decimals();
    this.coat = list.inFeed(Place.COAT);
    this.wanted = wanted;
    this.milling = new Milling(feed.recipe().taken(), list.lines(), scales);
    this.mass = list.inFeed(Place.MIX);
  }

  List<Task> inOrder() {
    List<Stage> stages = balance.stages();
    int last = -1;
    for (int i = 0; i < stages.size(); i++) {
      last = stages.get(i).evaporated() > 0 ? i : last;
    }
    for (int i = 0; i < stages.size(); i++) {
      tasks.add(task(stages.get(i), i == last));
    }
    return tasks;
  }

  private Task task(Stage stage, boolean lastDrying) {
    Step step = stage.pass().step();
    Mass before = mass;
    Mass added = step == Step.COAT ? coat : Mass.of(stage.added() * times, decimals);
    coated |= step == Step.COAT;
    mass = after(stage, before.plus(added), lastDrying);
    return new Task(
        step,
        asked(stage.pass()),
        before,
        added,
        stage.added() / stage.before(),
        before.plus(added).minus(mass),
        mass,
        stage.moistureBefore(),
        stage.moistureAfter(),
        cautions.of(step),
        step == Step.GRIND ? milling.of(stage.pass()) : List.of(),
        step == Step.DRY ? drying(stage) : Optional.empty());
  }

  /** Where a finished mass is told, the last drying makes it come out. */
  private Mass after(Stage stage, Mass wet, boolean lastDrying) {
    if (stage.evaporated() <= 0) {
      return wet;
    }
    return lastDrying && wanted.isPresent()
        ? coated ? wanted.get() : wanted.get().minus(coat)
        : Mass.of(stage.after() * times, decimals);
  }

  private List<Asked> asked(Pass pass) {
    return pass.settings().stream().map(this::asked).toList();
  }

  private Asked asked(Setting setting) {
    String property = setting.property().word().replace('-', ' ');
    String what =
        setting.ingredient().map(name -> property + " for " + title(name)).orElse(property);
    return new Asked(
        what,
        setting.written().target().asWritten(),
        setting.written().accept().map(Range::asWritten).orElse(""));
  }

  private String title(String ingredient) {
    Ingredient known = tables.ingredients().get(ingredient);
    return known == null ? ingredient : known.title();
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
    OptionalDouble load = trayLoad(stage.pass());
    return TrayChart.of(
        load.orElse(SAMPLE_KG), load.isPresent(), stage.moistureBefore(), targets, moisture.aim());
  }

  /** Wet feed on a tray, where the step is done on trays. */
  private OptionalDouble trayLoad(Pass pass) {
    Optional<Dryer> dryer =
        plant.isPresent() ? IntoDryer.chosen(plant.get(), pass) : Optional.empty();
    return dryer.isEmpty()
        ? OptionalDouble.empty()
        : dryer
            .get()
            .way()
            .byKind(
                trays -> OptionalDouble.of(trays.load()),
                bed -> OptionalDouble.empty(),
                belt -> OptionalDouble.empty());
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
