package dev.pellucid.slip;

import java.util.List;
import java.util.Set;

/** The words of the language that may stand on a line of each place, for near ones to be found. */
final class Vocabulary {
  /** After these words any name may stand. */
  static final Set<String> NAME_FOLLOWS =
      Set.of(
          "from",
          "source",
          "inclusion",
          "+",
          ":",
          "meets",
          "species",
          "plant",
          "jurisdiction",
          "hold");

  /** After these words a figure may stand. */
  static final Set<String> NUMBER_FOLLOWS =
      Set.of("min", "max", "in", "at", "until", "to", "holds");

  /** On the line of a share, before the figure is whole. */
  static final List<String> BEFORE_SHARE = List.of("rest", "within", "to");

  /** Behind the figure, where {@code or} is right before {@code none} alone. */
  static final List<String> BEHIND_SHARE = List.of("rest", "within", "to", "none", "step");

  private static final List<String> LIMIT =
      List.of(
          "min", "max", "on", "dry", "matter", "at", "moisture", "in", "of", "batches", "source");
  private static final List<String> WAIVER =
      List.of("min", "max", "on", "dry", "matter", "at", "moisture", "until", "by", "because");

  private Vocabulary() {}

  static List<String> phrases(Place place) {
    return switch (place) {
      case OPENING -> List.of();
      case HEAD -> List.of("to", "weighed", "finished", "limits", "hold", "reviewed");
      case MIX, COAT, CARRIER -> List.of("rest", "within", "to", "or", "none", "step");
      case SUPPLY -> List.of("from");
      case OVERAGE -> List.of("below", "per", "weighing", "for", "handling", "stability");
      case LIMITS -> LIMIT;
      case WAIVERS -> WAIVER;
      case PROCESS -> List.of("to", "accept");
      case LABEL -> List.of("min", "max");
    };
  }
}
