package dev.pellucid.parse;

import dev.pellucid.measure.Extent;
import dev.pellucid.measure.Kind;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What may be measured in one place of a file. */
final class Expected {
  static final Expected SHARE = of("18.00 %", Extent.SHARE);
  static final Expected WITHIN = of("within 10 to 20 %", Extent.SHARE);
  static final Expected STEP = of("step 0.5 %", Extent.SHARE);
  static final Expected FISH = of("fish 50 to 250 g", Extent.FISH);
  static final Expected BATCH = of("batch 60 kg weighed", Extent.BATCH);
  static final Expected DOSE = of("dose 10 g/kg", Extent.SHARE);
  static final Expected SUPPLY = of("100 mg/kg", Extent.SHARE, Extent.ACTIVITY);
  static final Expected EXTRA = of("10 %", Extent.EXTRA);
  static final Expected EXTRA_PER_WEIGHING = of("2 g per weighing", Extent.LOSS);
  static final Expected LINES_BELOW = of("lines below 0.5 %", Extent.SHARE);
  static final Expected NUTRIENT = of("min 35 %", Extent.SHARE, Extent.ACTIVITY, Extent.ENERGY);
  static final Expected RATIO = of("min 5.1 %", Extent.RATIO, Extent.PER_ENERGY, Extent.ACTIVITY);
  static final Expected INCLUSION = of("max 40 %", Extent.SHARE);
  static final Expected COST = new Expected("max 1.25 EUR/kg", EnumSet.of(Kind.PRICE));
  static final Expected MOISTURE = of("at 12 % moisture", Extent.MOISTURE);
  static final Expected CONFIDENCE = of("in 95 % of batches", Extent.SHARE);

  private final String example;
  private final Set<Kind> kinds;

  /** How small and how large a figure can be, by its kind. */
  private final Map<Kind, Extent> extents = new EnumMap<>(Kind.class);

  private Expected(String example, Set<Kind> kinds) {
    this.example = example;
    this.kinds = kinds;
  }

  static Expected of(String example, Extent... extents) {
    Expected expected = new Expected(example, EnumSet.noneOf(Kind.class));
    for (Extent extent : extents) {
      expected.kinds.add(extent.kind());
      expected.extents.put(extent.kind(), extent);
    }
    return expected;
  }

  /** A right one. */
  String example() {
    return example;
  }

  boolean takes(Kind kind) {
    return kinds.contains(kind);
  }

  /** How small and how large a figure of a kind can be in this place; null where any can. */
  @Nullable Extent extent(Kind kind) {
    return extents.get(kind);
  }

  /** "a share, an activity or an energy". */
  String phrase() {
    String list = kinds.stream().map(Kind::phrase).collect(Collectors.joining(", "));
    int last = list.lastIndexOf(", ");
    return last < 0 ? list : list.substring(0, last) + " or " + list.substring(last + 2);
  }
}
