package dev.pellucid.engine.data;

import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Whether what a plant has goes together: its scales, its coater and mixers, its trays. */
final class PlantChecks {
  /** Trays that an oven or a dryer takes at once. */
  private static final int MOST_TRAYS = 200;

  /** What a feed weighs per litre, roughly. */
  private static final double KG_PER_LITRE = 0.6;

  /** What a coater or dryer takes over what the largest mixer mixes. */
  private static final double LEAST_COATED = 0.08;

  private static final double MOST_COATED = 2.5;

  private final Remarks remarks;

  PlantChecks(Remarks remarks) {
    this.remarks = remarks;
  }

  /** A scale and where its figures stand. */
  record ScaleAt(Scale scale, Fields block) {}

  /** One scale by itself; whether something was said. */
  boolean look(Fields block, double most, double division, OptionalDouble least) {
    Optional<Scalar> step = block.text(PlantVocabulary.SCALE_DIVISION);
    if (step.isPresent()
        && CommonSpan.DIVISIONS.lookAtQuotient(step.get(), most / division, remarks)) {
      return true;
    }
    Optional<Scalar> told = block.text(PlantVocabulary.SCALE_LEAST);
    if (told.isEmpty() || least.isEmpty()) {
      return false;
    }
    double kg = least.getAsDouble();
    return CommonSpan.LEAST_DIVISIONS.lookAtQuotient(told.get(), kg / division, remarks)
        || CommonSpan.MOST_OF_LEAST.lookAtQuotient(told.get(), most / kg, remarks);
  }

  /**
   * Each scale takes over where the one before it ends.
   *
   * @param scales by rising division
   */
  void lookAtScales(List<ScaleAt> scales) {
    for (int i = 1; i < scales.size(); i++) {
      Scale finer = scales.get(i - 1).scale();
      Scale coarser = scales.get(i).scale();
      boolean gap = finer.most() < coarser.least();
      if (gap || coarser.most() < finer.most()) {
        say(scales.get(i - 1), scales.get(i), gap);
      }
    }
  }

  private void say(ScaleAt finer, ScaleAt coarser, boolean gap) {
    Fields block = finer.block();
    Optional<Scalar> most = block.text(PlantVocabulary.SCALE_MOST);
    Optional<Scalar> other =
        coarser.block().text(gap ? PlantVocabulary.SCALE_LEAST : PlantVocabulary.SCALE_MOST);
    if (most.isPresent() && other.isPresent()) {
      String sentence =
          gap
              ? " carries at most "
                  + most.get().text()
                  + ", the "
                  + coarser.scale().title()
                  + " weighs from "
                  + other.get().text()
                  + " on"
              : " carries "
                  + most.get().text()
                  + " and is finer than the "
                  + coarser.scale().title()
                  + ", which carries "
                  + other.get().text();
      remarks.add(
          Finding.warning(Common.CODE, most.get().span(), "the " + finer.scale().title() + sentence)
              .seeing("the other scale", other.get().span())
              .helping("look for a slipped decimal point in the most or the least of the two"));
    }
  }

  void lookAtTrays(Optional<Scalar> written, OptionalInt trays) {
    if (written.isPresent() && trays.orElse(0) > MOST_TRAYS) {
      remarks.add(
          Finding.warning(
                  Common.CODE,
                  written.get().span(),
                  written.get().text()
                      + " is far from practice, a dryer commonly takes 1 to "
                      + MOST_TRAYS
                      + " trays at once")
              .helping("look for a slipped digit"));
    }
  }

  /** What a bed or belt takes off in an hour goes with what it holds. */
  void lookAtDryer(Scalar water, double perHour, OptionalDouble holds) {
    if (!Dryer.isDoubted(perHour, holds)) {
      return;
    }
    remarks.add(
        Finding.warning(
                Common.CODE,
                water.span(),
                water.text()
                    + " of water in an hour is far from practice beside the "
                    + Figures.plain(holds.getAsDouble())
                    + " kg of wet feed that the dryer holds")
            .helping("look for a slipped decimal point in water-per-hour or in holds"));
  }

  void lookAtCoater(Fields fields, OptionalDouble load, List<Mixer> mixers) {
    lookAtLoad(fields.text(PlantVocabulary.COATER_LOAD), load, "coater", mixers);
  }

  /** What a machine takes at once goes with what the largest mixer makes. */
  void lookAtLoad(
      Optional<Scalar> written, OptionalDouble load, String machine, List<Mixer> mixers) {
    double largest = 0;
    for (Mixer mixer : mixers) {
      largest = Math.max(largest, mixer.litres() * mixer.fillHigh() * KG_PER_LITRE);
    }
    if (written.isEmpty()
        || load.isEmpty()
        || largest <= 0
        || (load.getAsDouble() >= largest * LEAST_COATED
            && load.getAsDouble() <= largest * MOST_COATED)) {
      return;
    }
    remarks.add(
        Finding.warning(
                Common.CODE,
                written.get().span(),
                written.get().text()
                    + " in the "
                    + machine
                    + " is far from the about "
                    + Figures.plain(Math.rint(largest))
                    + " kg of the largest mixer")
            .helping("look for a slipped decimal point here or in the volume of the mixer"));
  }
}
