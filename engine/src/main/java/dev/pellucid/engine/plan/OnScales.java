package dev.pellucid.engine.plan;

import dev.pellucid.engine.resolve.Line.Place;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * A batch as one plant weighs it: equal loads, each weight on its scale.
 *
 * @param plant its name
 * @param mixer absent where the folder tells no mixer, or not how much room the mix takes
 * @param loads in how many loads the batch is mixed
 * @param mix what goes into each load, in the order of the recipe
 * @param coat what goes on the kernel in each round of the coater
 * @param coatRounds how often the coater is filled
 * @param water what each load gets at each step that adds water, in their order; absent where no
 *     scale can weigh it
 * @param dryer absent where nothing is dried, or the plant tells no dryer for it
 */
public record OnScales(
    String plant,
    Optional<Filled> mixer,
    int loads,
    List<LoadLine> mix,
    List<LoadLine> coat,
    int coatRounds,
    List<Optional<Shown>> water,
    Optional<DryerFilled> dryer) {
  public OnScales {
    water = List.copyOf(water);
    mix = List.copyOf(mix);
    coat = List.copyOf(coat);
  }

  OnScales from(Function<String, String> lots) {
    return new OnScales(
        plant,
        mixer,
        loads,
        mix.stream().map(line -> line.from(lots.apply(line.name()))).toList(),
        coat.stream().map(line -> line.from(lots.apply(line.name()))).toList(),
        coatRounds,
        water,
        dryer);
  }

  /** What goes into each load, in the order in which it goes into the mixer. */
  public List<Added> added() {
    return Added.inOrder(mix);
  }

  /** What goes on the kernel in each round, in the order of the recipe. */
  public List<Added> addedToKernel() {
    return Added.asWritten(coat);
  }

  /** How often a line is weighed out: for each load, or for each round of the coater. */
  int weighings(Place place) {
    return place == Place.COAT ? coatRounds : loads;
  }

  /**
   * How full each load makes the mixer, parts of its volume.
   *
   * @param least the part from which it mixes evenly
   */
  public record Filled(String mixer, double dry, double wet, double least) {
    /** Whether a load is too little to be mixed. */
    public boolean tooEmpty() {
      return dry < least;
    }
  }

  /**
   * The batch in the dryer.
   *
   * @param water to be taken off
   * @param perHour the most water that it takes off in an hour, in kg; empty for trays
   * @param rounds how often it is filled
   * @param ofRound wet feed in each round, the last not more
   * @param each how long a round takes; empty where nothing tells it
   * @param all how long the batch takes
   */
  public record DryerFilled(
      String dryer,
      Optional<TraysFilled> trays,
      Mass water,
      OptionalDouble perHour,
      int rounds,
      Mass ofRound,
      Optional<Hours> each,
      Optional<Hours> all) {}

  /** From and to. */
  public record Hours(double low, double high) {}

  /** Trays of so many kg of wet feed each, the last not full. */
  public record TraysFilled(double load, int count) {}

  /**
   * What a scale must show.
   *
   * @param weighings how often
   * @param each net of the container
   * @param tolerance how far each may be off
   */
  public record Shown(String scale, int weighings, Mass each, Mass tolerance) {
    /** So many times all of its weighings. */
    public Mass together(int times) {
      return new Mass(each.kg().multiply(BigDecimal.valueOf((long) weighings * times)));
    }
  }

  /** When a line goes into the mixer, the first of these first. */
  public enum Turn {
    /** Premixes and what else is weighed apart. */
    SMALL,
    /** What harms vitamins where it lies on them. */
    APART_FROM_VITAMINS,
    LARGE,
    LIQUID
  }

  /**
   * One line in one load.
   *
   * @param name of the line
   * @param lot which to take; empty where it is written by hand
   * @param micro whether it is weighed apart and checked by a second person
   * @param turn when it goes into the mixer
   * @param wanted what the recipe asks for in a load
   * @param shown absent where no scale can weigh it
   * @param off how much more goes in than the recipe asks for, as a part of it
   * @param thinned how it gets in when it is too little to weigh by itself
   */
  public record LoadLine(
      String name,
      String title,
      String lot,
      boolean micro,
      Turn turn,
      Mass wanted,
      Optional<Shown> shown,
      double off,
      Optional<Thinned> thinned) {
    LoadLine from(String other) {
      String taken = lot.isEmpty() ? other : lot;
      return new LoadLine(name, title, taken, micro, turn, wanted, shown, off, thinned);
    }
  }

  /**
   * A dilution, made before the loads.
   *
   * @param carrier the line whose weight gives way to the diluent
   * @param enough how many times as much of it could be weighed by itself
   */
  public record Thinned(String carrier, double enough, List<ThinStep> steps, Shown take) {
    public Thinned {
      steps = List.copyOf(steps);
    }
  }

  /**
   * One blending: so much of the strong stuff with so much carrier.
   *
   * @param left what of its make no later step and no load takes
   */
  public record ThinStep(Shown strong, Shown carrier, Mass makes, Mass left) {}
}
