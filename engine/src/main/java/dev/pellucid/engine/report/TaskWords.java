package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.plan.Mass;
import dev.pellucid.engine.plan.Packing;
import dev.pellucid.engine.plan.Storing;
import dev.pellucid.engine.plan.Task;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Fact;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a sheet says of each step. */
final class TaskWords {
  private TaskWords() {}

  static String title(Step step) {
    return switch (step) {
      case GRIND -> "Grind";
      case BLEND -> "Blend";
      case ADD_LIQUID -> "Add liquids";
      case ADD_WATER -> "Add water";
      case CONDITION -> "Condition with steam";
      case PELLET -> "Pellet";
      case EXTRUDE -> "Extrude";
      case DRY -> "Dry";
      case COOL -> "Cool";
      case COAT -> "Coat";
      case SIEVE -> "Sieve";
      case PACK -> "Pack";
      case STORE -> "Store";
    };
  }

  /** The masses of a step, and room for what was found. */
  static List<Fact> facts(Task task, BatchPlan plan) {
    return switch (task.step()) {
      case GRIND -> List.of();
      case BLEND -> blend(task, plan);
      case ADD_LIQUID -> plan.scales().isPresent() ? List.of() : List.of(time());
      case ADD_WATER -> water(task, plan);
      case CONDITION ->
          List.of(
              new Fact("Steam taken up", kg(task.added())),
              new Fact("Mash then", mass(task)),
              write("Temperature read, °C"));
      case PELLET, EXTRUDE ->
          List.of(
              new Fact("Moisture at the die", percent(task.moistureBefore())),
              write("Moisture measured, %"),
              write("Temperature read, °C"));
      case DRY ->
          List.of(
              new Fact("From", from(task)),
              new Fact("To", mass(task)),
              off(task),
              write("Moisture before, %"));
      case COOL -> cool(task);
      case COAT -> coat(task);
      case SIEVE -> List.of(write("Fines, kg, and where to"));
      case PACK -> pack(plan);
      case STORE -> plan.storing().map(TaskWords::useBy).map(List::of).orElse(List.of());
    };
  }

  /** What has to be said after the facts of a step. */
  static Optional<String> remark(Task task) {
    return switch (task.step()) {
      case ADD_WATER ->
          Optional.of(
              "When what goes in weighs otherwise, take the water for each kg of it. What is weighed"
                  + " on top for handling counts as lost, and gets none.");
      case COAT ->
          Optional.of(
              "Weigh the kernel of each round first. When it is not as expected, take for each kg of"
                  + " it what stands in that column.");
      case GRIND, BLEND, ADD_LIQUID, CONDITION, PELLET, EXTRUDE, DRY, COOL, SIEVE, PACK, STORE ->
          Optional.empty();
    };
  }

  private static List<Fact> cool(Task task) {
    Fact read = write("Temperature read, °C");
    return task.evaporated().isZero()
        ? List.of(read)
        : List.of(
            new Fact("From", from(task)),
            new Fact("To", mass(task)),
            off(task),
            read,
            write("Moisture measured, %"));
  }

  private static List<Fact> blend(Task task, BatchPlan plan) {
    String each = kg(plan.eachLoad(task.before())) + (plan.loads() == 1 ? "" : " in each load");
    Fact mixer = new Fact("In the mixer", each);
    return plan.scales().isPresent() ? List.of(mixer) : List.of(mixer, time());
  }

  /** Where loads have rows of their own, no figure of the whole batch stands beside them. */
  private static List<Fact> water(Task task, BatchPlan plan) {
    String perKg =
        Figures.plain(Unit.G.fromBase(task.addedPerKg())) + " g for each kg that goes in";
    String then = plan.loads() == 1 ? mass(task) : percent(task.moistureAfter()) + " moisture";
    if (plan.scales().isPresent()) {
      return List.of(new Fact("Water", perKg), new Fact("Mix then", then));
    }
    return List.of(
        new Fact("Water", kg(task.added()) + ", " + perKg),
        new Fact("Mix then", then),
        write("Water, kg"));
  }

  private static List<Fact> coat(Task task) {
    return List.of(
        new Fact("Kernel expected", kg(task.before())),
        new Fact("Feed then", kg(task.after())),
        write("All kernel, kg"));
  }

  private static List<Fact> pack(BatchPlan plan) {
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("To pack", kg(plan.balance().bagged())));
    plan.packing().ifPresent(packing -> facts.add(new Fact("Bags", bags(packing))));
    facts.add(write("Bags counted"));
    facts.add(write("Sample kept, number"));
    return facts;
  }

  private static String bags(Packing packing) {
    String full = packing.full() + " of " + kg(packing.bag());
    if (!packing.hasRemainder()) {
      return full + ", nothing left over";
    }
    String rest = "a part bag of " + kg(packing.remainder());
    return packing.full() == 0 ? rest : full + " and " + rest;
  }

  private static Fact useBy(Storing storing) {
    return new Fact(
        "Use by",
        storing.useBy()
            + " when packed on the day of this sheet, else "
            + storing.days()
            + " days after packing");
  }

  private static Fact write(String what) {
    return new Fact(what, "");
  }

  static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static Fact time() {
    return new Fact("From, to (time)", "");
  }

  private static Fact off(Task task) {
    return new Fact("Water that goes off", kg(task.evaporated()));
  }

  private static String from(Task task) {
    return kg(task.before()) + " at " + percent(task.moistureBefore()) + " moisture";
  }

  private static String mass(Task task) {
    return kg(task.after()) + " at " + percent(task.moistureAfter()) + " moisture";
  }

  private static String kg(Mass weight) {
    return weight.inKg() + " kg";
  }

  private static String percent(double share) {
    return Figures.fixed(Unit.PERCENT.fromBase(share), 1) + " %";
  }
}
