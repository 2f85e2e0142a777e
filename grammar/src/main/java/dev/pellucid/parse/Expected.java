package dev.pellucid.parse;

import dev.pellucid.measure.Kind;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What may be measured in one place of a file.
 *
 * @param place as the subject of a sentence: "the share of a line"
 * @param example a right one
 */
record Expected(String place, String example, Set<Kind> kinds) {
  static final Expected SHARE = of("the share of a line", "18.00 %", Kind.SHARE);
  static final Expected WITHIN = of("within", "within 10 to 20 %", Kind.SHARE);
  static final Expected FISH = of("the mass of the fish", "fish 50 to 250 g", Kind.MASS);
  static final Expected BATCH = of("the size of a batch", "batch 60 kg weighed", Kind.MASS);
  static final Expected DOSE = of("the dose of a premix", "dose 10 g/kg", Kind.SHARE);
  static final Expected SUPPLY =
      of("what a premix supplies per kg of feed", "100 mg/kg", Kind.SHARE, Kind.ACTIVITY);
  static final Expected EXTRA = of("an overage", "10 %", Kind.SHARE);
  static final Expected EXTRA_PER_WEIGHING =
      of("an overage per weighing", "2 g per weighing", Kind.MASS);
  static final Expected LINES_BELOW = of("lines below", "lines below 0.5 %", Kind.SHARE);
  static final Expected NUTRIENT =
      of("a nutrient", "min 35 %", Kind.SHARE, Kind.ACTIVITY, Kind.ENERGY);
  static final Expected RATIO =
      of("a ratio", "min 5.1 %", Kind.SHARE, Kind.SHARE_PER_ENERGY, Kind.ACTIVITY);
  static final Expected INCLUSION = of("an inclusion", "max 40 %", Kind.SHARE);
  static final Expected COST = of("a cost", "max 1.25 EUR/kg", Kind.PRICE);
  static final Expected MOISTURE = of("the moisture of a basis", "at 12 % moisture", Kind.SHARE);
  static final Expected CONFIDENCE =
      of("the part of the batches", "in 95 % of batches", Kind.SHARE);

  static Expected of(String place, String example, Kind first, Kind... more) {
    return new Expected(place, example, EnumSet.of(first, more));
  }

  /** "a share, an activity or an energy". */
  String phrase() {
    String list = kinds.stream().map(Kind::phrase).collect(Collectors.joining(", "));
    int last = list.lastIndexOf(", ");
    return last < 0 ? list : list.substring(0, last) + " or " + list.substring(last + 2);
  }
}
