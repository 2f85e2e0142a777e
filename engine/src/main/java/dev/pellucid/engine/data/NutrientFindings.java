package dev.pellucid.engine.data;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Kind;
import dev.pellucid.text.Span;
import java.util.List;

/** What can be wrong with nutrients and with what ingredients hold of them. */
final class NutrientFindings {
  static final Code NO_MOISTURE_NUTRIENT = new Code("data-no-moisture-nutrient");
  static final Code FORMULA = new Code("data-formula");
  static final Code CYCLE = new Code("data-nutrient-cycle");
  static final Code NO_MOISTURE = new Code("data-no-moisture");
  static final Code OVER_WHOLE = new Code("data-over-whole");
  static final Code PART_OVER_WHOLE = new Code("data-part-over-whole");

  static final List<Code> CODES =
      List.of(NO_MOISTURE_NUTRIENT, FORMULA, CYCLE, NO_MOISTURE, OVER_WHOLE, PART_OVER_WHOLE);

  private NutrientFindings() {}

  /**
   * @param place the first file of nutrients/, or the settings where there is none
   */
  static Finding noMoistureNutrient(Span place) {
    return Finding.error(NO_MOISTURE_NUTRIENT, place, "the folder has no nutrient called moisture")
        .helping("declare moisture in a file of nutrients/, every sum needs the water");
  }

  /**
   * @param place where the settings keep out what comes along
   */
  static Finding nothingOwn(Span place) {
    return Finding.error(
            NO_MOISTURE_NUTRIENT,
            place,
            "this keeps out all data that come along, and the folder has no nutrients of its own")
        .helping("leave the line out, so that nutrients, species, law and practice come along")
        .helping("or bring files of its own for all of them, with moisture among its nutrients");
  }

  static Finding formula(Scalar formula, String sentence, String help) {
    return Finding.error(FORMULA, formula.span(), sentence).helping(help);
  }

  static Finding formulaKind(Scalar formula, String term, Kind found, Kind wanted) {
    return formula(
        formula,
        term + " gives " + found.phrase() + ", the nutrient is " + wanted.phrase(),
        "write a factor in the unit of the nutrient before the name, as in 23.6 MJ/kg crude-fat");
  }

  static Finding wholeKind(Scalar unit, String why) {
    return Finding.error(
            FigureFindings.WRONG_KIND,
            unit.span(),
            unit.text() + " is no share of a mass, and " + why)
        .helping("use %, g/kg or mg/kg");
  }

  static Finding cycle(Span place, List<String> path) {
    return Finding.error(
            CYCLE, place, "the nutrient follows from itself: " + String.join(" > ", path))
        .helping("one of them must be given by the ingredients");
  }

  static Finding noMoisture(Span place, String ingredient) {
    return Finding.error(NO_MOISTURE, place, ingredient + " does not give its moisture")
        .helping("add moisture to its contents, without it no feed that holds it can be computed");
  }

  static Finding moistureBound(Content told, String whose) {
    return Finding.error(
            NO_MOISTURE,
            told.place(),
            whose
                + " gives the most of its moisture, "
                + KeyFindings.shown(told.asWritten())
                + ", and not its moisture")
        .helping(
            "write what is usual, and how it varies from lot to lot, as in moisture: 9 % ± 1 %;"
                + " without a value no feed that holds it can be computed");
  }

  static Finding overWhole(Span place, double sum, String species) {
    String percent = Figures.fixed(sum * 100, 2);
    return Finding.error(OVER_WHOLE, place, "the contents add up to " + percent + " %" + species)
        .helping(
            "look for a slipped decimal point, or for figures on dry matter among those as fed");
  }
}
