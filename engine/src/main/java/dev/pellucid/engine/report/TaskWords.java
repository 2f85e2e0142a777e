package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.Task;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.report.Block.Fact;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Step;
import java.util.List;
import java.util.Locale;

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
  static List<Fact> facts(Task task) {
    return switch (task.step()) {
      case GRIND -> List.of(new Fact("Screen whole, by", ""));
      case BLEND -> List.of(new Fact("In the mixer", kg(task.before())), time());
      case ADD_LIQUID -> List.of(time());
      case ADD_WATER ->
          List.of(
              new Fact("Water", kg(task.added())),
              new Fact("Mix then", mass(task)),
              new Fact("Water added, kg", ""));
      case CONDITION ->
          List.of(
              new Fact("Steam taken up", kg(task.added())),
              new Fact("Mash then", mass(task)),
              new Fact("Temperature read, °C", ""));
      case PELLET, EXTRUDE ->
          List.of(
              new Fact("Moisture at the die", percent(task.moistureBefore())),
              new Fact("Moisture measured, %", ""),
              new Fact("Temperature read, °C", ""));
      case DRY -> List.of(new Fact("From", from(task)), new Fact("To", mass(task)), off(task));
      case COOL ->
          List.of(
              new Fact("From", from(task)),
              new Fact("To", mass(task)),
              off(task),
              new Fact("Temperature read, °C", ""));
      case COAT ->
          List.of(
              new Fact("Kernel expected", kg(task.before())),
              new Fact("Coat", kg(task.added())),
              new Fact("Feed then", kg(task.after())));
      case SIEVE -> List.of(new Fact("Fines, kg, and where to", ""));
      case PACK, STORE -> List.of();
    };
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

  private static String kg(double kg) {
    return SheetTables.kg(kg) + " kg";
  }

  private static String percent(double share) {
    return Figures.fixed(Unit.PERCENT.fromBase(share), 1) + " %";
  }
}
