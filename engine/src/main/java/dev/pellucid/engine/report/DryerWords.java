package dev.pellucid.engine.report;

import dev.pellucid.engine.plan.OnScales.DryerFilled;
import dev.pellucid.engine.plan.OnScales.Hours;
import dev.pellucid.engine.plan.OnScales.TraysFilled;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.measure.Unit;
import java.util.Optional;

/** How a batch goes through the dryer, for the hand at it and for who compares two sheets. */
final class DryerWords {
  private final DryerFilled dryer;

  private DryerWords(DryerFilled dryer) {
    this.dryer = dryer;
  }

  /**
   * {@code Oven: 34 trays of 2 kg wet feed, at most 17 in a round. 2 rounds, 6 to 12 h each: ...}
   */
  static String ofSheet(DryerFilled dryer) {
    DryerWords words = new DryerWords(dryer);
    String name = TaskWords.capital(dryer.dryer());
    return dryer.trays().isPresent()
        ? name + ": " + words.trays(dryer.trays().get()) + " " + words.rounds("round")
        : name + ", no trays: " + words.water() + " " + words.rounds("filling");
  }

  /** {@code 34 trays of 2 kg in 2 rounds} or {@code 2 fillings, 2 to 4 h}. */
  static String ofCompare(DryerFilled dryer) {
    String rounds =
        dryer.rounds() == 1
            ? ""
            : dryer.rounds() + (dryer.trays().isPresent() ? " rounds" : " fillings");
    String what =
        dryer.trays().isPresent()
            ? dryer.trays().get().count()
                + " trays of "
                + Figures.plain(dryer.trays().get().load(), Unit.KG)
            : dryer.water().inKg() + " kg of water off";
    return dryer.dryer()
        + ", "
        + what
        + (rounds.isEmpty() ? "" : " in " + rounds)
        + (dryer.all().isPresent() ? ", " + hours(dryer.all().get()) : "");
  }

  private String trays(TraysFilled trays) {
    int each = (int) Math.ceil(dryer.ofRound().asDouble() / trays.load() - 1e-9);
    return trays.count()
        + " trays of "
        + Figures.plain(trays.load(), Unit.KG)
        + " wet feed"
        + (dryer.rounds() > 1 ? ", at most " + each + " in a round." : ".");
  }

  private String water() {
    return dryer.water().inKg()
        + " kg of water must come off this batch; it takes off at most "
        + Figures.plain(dryer.perHour().orElse(0), Unit.KG)
        + " an hour.";
  }

  private String rounds(String word) {
    Optional<Hours> each = dryer.each();
    Optional<Hours> all = dryer.all();
    if (dryer.rounds() == 1) {
      String one = word.equals("round") ? "All in one round" : "All at once or without a stop";
      return one + (all.isPresent() ? ": " + hours(all.get()) + "." : ".");
    }
    String filled = word.equals("round") ? "" : " with " + dryer.ofRound().inKg() + " kg wet feed";
    return dryer.rounds()
        + " "
        + word
        + "s"
        + filled
        + (each.isPresent() && all.isPresent()
            ? ", " + hours(each.get()) + " each: " + hours(all.get()) + " in all."
            : ".");
  }

  private static String hours(Hours hours) {
    String low = Figures.fixed(hours.low(), 1).replace(".0", "");
    String high = Figures.fixed(hours.high(), 1).replace(".0", "");
    return low.equals(high) ? low + " h" : low + " to " + high + " h";
  }
}
