package dev.pellucid.engine.data;

import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Kind;
import dev.pellucid.measure.Unit;
import dev.pellucid.measure.UnitSpelling;
import dev.pellucid.text.Choices;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A unit as it is written to the unit it means, or the finding that names a nearer one. */
final class Units {
  /** What contents and limits of a nutrient can be told in, in the order in which it is told. */
  private static final List<Kind> OF_NUTRIENTS = List.of(Kind.SHARE, Kind.ACTIVITY, Kind.ENERGY);

  private Units() {}

  /** The unit, where it is one of the kind. */
  static Optional<Unit> of(Scalar value, String symbol, Kind kind, Remarks remarks) {
    Optional<Unit> unit = Unit.of(symbol);
    if (unit.isEmpty()) {
      remarks.add(suggesting(FigureFindings.unitUnknown(value, symbol), symbol, candidates(kind)));
    } else if (unit.get().kind() != kind) {
      remarks.add(FigureFindings.wrongKind(value, symbol, unit.get().kind(), kind, example(kind)));
    }
    return unit.isPresent() && unit.get().kind() == kind ? unit : Optional.empty();
  }

  /** The unit of a nutrient. */
  static Optional<Unit> ofNutrient(Scalar value, Remarks remarks) {
    Optional<Unit> unit = Unit.of(value.text());
    if (unit.isEmpty()) {
      remarks.add(
          suggesting(FigureFindings.unitUnknown(value, value.text()), value.text(), ofNutrients()));
    } else if (!OF_NUTRIENTS.contains(unit.get().kind())) {
      remarks.add(
          Finding.error(
                  FigureFindings.WRONG_KIND,
                  value.span(),
                  value.text()
                      + " measures "
                      + unit.get().kind().phrase()
                      + ", a nutrient is given per mass")
              .helping("use " + Choices.of(ofNutrients())));
    }
    return unit.isPresent() && OF_NUTRIENTS.contains(unit.get().kind()) ? unit : Optional.empty();
  }

  /** A unit of the kind, for a remedy. */
  static String example(Kind kind) {
    List<String> candidates = candidates(kind);
    return candidates.contains(kind.base()) ? kind.base() : candidates.get(0);
  }

  private static List<String> ofNutrients() {
    return OF_NUTRIENTS.stream().flatMap(kind -> candidates(kind).stream()).toList();
  }

  private static List<String> candidates(Kind kind) {
    if (kind == Kind.PRICE) {
      return List.of("EUR/kg", "EUR/t");
    }
    return Arrays.stream(Unit.values())
        .filter(unit -> unit.kind() == kind)
        .map(Unit::symbol)
        .toList();
  }

  private static Finding suggesting(Finding finding, String symbol, List<String> candidates) {
    String written = symbol.replace(" ", "");
    Optional<String> meant =
        candidates.stream()
            .filter(written::equalsIgnoreCase)
            .findFirst()
            .or(() -> UnitSpelling.of(written).filter(candidates::contains));
    if (meant.isPresent()) {
      return finding.helping("write " + meant.get());
    }
    List<String> near = symbol.length() < 2 ? List.of() : NearNames.of(symbol, candidates);
    return finding.helping(
        Meant.question(near).orElse("units that fit here are " + Choices.of(candidates)));
  }
}
