package dev.pellucid.parse;

import dev.pellucid.measure.Kind;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What may be measured in one place of a file.
 *
 * @param example a right one
 */
record Expected(String example, Set<Kind> kinds) {
  static final Expected SHARE = of("18.00 %", Kind.SHARE);
  static final Expected WITHIN = of("within 10 to 20 %", Kind.SHARE);
  static final Expected FISH = of("fish 50 to 250 g", Kind.MASS);
  static final Expected BATCH = of("batch 60 kg weighed", Kind.MASS);
  static final Expected DOSE = of("dose 10 g/kg", Kind.SHARE);
  static final Expected SUPPLY = of("100 mg/kg", Kind.SHARE, Kind.ACTIVITY);
  static final Expected EXTRA = of("10 %", Kind.SHARE);
  static final Expected EXTRA_PER_WEIGHING = of("2 g per weighing", Kind.MASS);
  static final Expected LINES_BELOW = of("lines below 0.5 %", Kind.SHARE);
  static final Expected NUTRIENT = of("min 35 %", Kind.SHARE, Kind.ACTIVITY, Kind.ENERGY);
  static final Expected RATIO = of("min 5.1 %", Kind.SHARE, Kind.SHARE_PER_ENERGY, Kind.ACTIVITY);
  static final Expected INCLUSION = of("max 40 %", Kind.SHARE);
  static final Expected COST = of("max 1.25 EUR/kg", Kind.PRICE);
  static final Expected MOISTURE = of("at 12 % moisture", Kind.SHARE);
  static final Expected CONFIDENCE = of("in 95 % of batches", Kind.SHARE);

  static Expected of(String example, Kind first, Kind... more) {
    return new Expected(example, EnumSet.of(first, more));
  }

  /** "a share, an activity or an energy". */
  String phrase() {
    String list = kinds.stream().map(Kind::phrase).collect(Collectors.joining(", "));
    int last = list.lastIndexOf(", ");
    return last < 0 ? list : list.substring(0, last) + " or " + list.substring(last + 2);
  }
}
