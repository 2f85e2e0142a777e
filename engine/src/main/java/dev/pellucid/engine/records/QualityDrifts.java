package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.trend.Course;
import dev.pellucid.engine.trend.Course.Around;
import dev.pellucid.engine.trend.History;
import dev.pellucid.engine.trend.Measured.What;
import dev.pellucid.engine.trend.MeasuredBatch;
import dev.pellucid.engine.trend.Spot;
import dev.pellucid.engine.trend.Told;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * Batches of a recipe that are off to one side, further and further, or one that is far off: one
 * finding for each recipe and figure, at the last figure that makes it so. While the next batch is
 * as expected again, nothing more is said.
 */
final class QualityDrifts {
  static final Code CODE = new Code("quality-drifts");
  private static final int NAMED = 9;

  private final FeedTables tables;
  private final LocalDate today;

  QualityDrifts(FeedTables tables, LocalDate today) {
    this.tables = tables;
    this.today = today;
  }

  /** Of all recipes, in the order of their codes. */
  void look(List<MeasuredBatch> batches, Consumer<Finding> out) {
    SortedMap<String, List<MeasuredBatch>> byCode = new TreeMap<>();
    for (MeasuredBatch batch : batches) {
      byCode.computeIfAbsent(batch.code(), none -> new ArrayList<>()).add(batch);
    }
    for (List<MeasuredBatch> ofOne : byCode.values()) {
      for (Course course : History.of(ofOne).courses()) {
        Told.of(course, today).map(this::finding).ifPresent(out);
      }
    }
  }

  private Finding finding(Told told) {
    Spot last = told.last();
    Finding finding = Finding.warning(CODE, last.figure().place(), headline(told));
    List<Spot> spots = told.run().count() == 1 ? List.of() : told.spots();
    for (Spot spot : spots.subList(Math.max(0, spots.size() - NAMED), spots.size())) {
      finding = finding.noting(words(spot, told.course()));
    }
    for (Spot spot : told.alone()) {
      finding = finding.noting("before it, " + words(spot, told.course()));
    }
    for (String lot : neverMeasured(told)) {
      finding = finding.noting(lot);
    }
    return finding
        .helping(help(told.course().what()))
        .about(
            new About(
                told.course().name(),
                told.run().up() ? About.Side.MAX : About.Side.MIN,
                List.of(last.batch().code())));
  }

  private static String headline(Told told) {
    String what = what(told.course());
    String of = " of " + told.last().batch().code();
    String side = told.run().up() ? "above " : "below ";
    int count = told.run().count();
    return switch (told.run().rule()) {
      case BEYOND_THREE -> what + " of batch " + words(told.last(), told.course());
      case TWO_OF_THREE ->
          what
              + (count == 2 ? ": the last two batches" : ": two of the last three batches")
              + of
              + " are more than two spreads "
              + side
              + centre(told.course());
      case EIGHT_ON_ONE_SIDE ->
          what
              + ": the last "
              + count
              + " batches"
              + of
              + " are all "
              + side
              + centre(told.course());
      case SIX_IN_A_ROW ->
          what
              + (told.run().up() ? " rises" : " falls")
              + " from batch to batch, the last "
              + count
              + of;
    };
  }

  /** What it is, in a sentence. */
  private static String what(Course course) {
    return switch (course.what()) {
      case MOISTURE, CONTENT -> course.name() + " by the laboratory";
      case DRYER -> "the last moisture in the dryer";
      case YIELD -> "feed in the bags, as a part of what was to come";
      case DURABILITY -> "durability";
      case EVENNESS -> "the variation in the mix";
    };
  }

  private static String centre(Course course) {
    return course.around() == Around.OWN_MEAN ? "their mean" : "what was expected";
  }

  /** {@code CG-36-2026-11-18-1: 33.1 %, expected 34.4 %, 3.2 spreads below}. */
  private static String words(Spot spot, Course course) {
    Unit unit = course.unit();
    String found = Figures.plain(spot.figure().found(), unit);
    String centre = Figures.plain(spot.centre(), unit);
    String by = course.around() == Around.OWN_MEAN ? ", the mean is " : ", expected ";
    String off =
        spot.spreads().isPresent()
            ? ", "
                + Figures.fixed(Math.abs(spot.spreads().getAsDouble()), 1)
                + " spreads "
                + (spot.off() < 0 ? "below" : "above")
            : "";
    return spot.batch().number() + ": " + found + by + centre + off;
  }

  /** Lots that are in all of these batches, and that nobody has analysed for it. */
  private List<String> neverMeasured(Told told) {
    List<String> words = new ArrayList<>();
    if (told.course().what() == What.CONTENT && told.spots().size() > 1) {
      for (String number : inAll(told.spots())) {
        Lot lot = tables.lots().get(number);
        if (lot != null && lot.measured(told.course().name()).isEmpty()) {
          words.add(
              "lot "
                  + number
                  + " of "
                  + lot.ingredient()
                  + " is in all of them, and its "
                  + told.course().name()
                  + " was not measured");
        }
      }
    }
    return words;
  }

  private Set<String> inAll(List<Spot> spots) {
    Set<String> lots = lots(spots.get(0));
    for (Spot spot : spots) {
      lots.retainAll(lots(spot));
    }
    return lots;
  }

  private Set<String> lots(Spot spot) {
    Set<String> lots = new TreeSet<>();
    BatchRecord record = tables.batches().get(spot.batch().number());
    if (record != null) {
      record.entries().forEach(entry -> lots.add(entry.lot()));
    }
    return lots;
  }

  private static String help(What what) {
    return switch (what) {
      case DRYER ->
          "hold the moisture meter against an oven, and look at heat, air and load of the dryer";
      case MOISTURE ->
          "hold the meter against the laboratory's way, and correct it by the difference";
      case CONTENT ->
          "send a second sample of the last batch, have its lots analysed, and look at the scales";
      case YIELD ->
          "check the scale of the bags and what stays in the machines; if it stays so, write that"
              + " shrink into the file of the plant";
      case DURABILITY -> "look at the die, the steam, the grind and the moisture at the die";
      case EVENNESS -> "look at the mixer: its paddles, how full it is, and how long it runs";
    };
  }
}
