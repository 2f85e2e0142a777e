package dev.pellucid.engine.resolve;

import dev.pellucid.finding.Code;
import java.util.List;

/** Every code that resolving can give. */
public final class ResolveCodes {
  /** Overage for what no line of the file weighs out. */
  public static final Code OVERAGE_MATCHES_NOTHING = Overages.NOTHING;

  private static final List<Code> ALL =
      List.of(
          Limits.UNKNOWN_NUTRIENT,
          Limits.NOT_A_NUTRIENT,
          Limits.OTHER_KIND,
          Limits.IN_BATCHES,
          Limits.ASKS_NOTHING,
          Limits.UNKNOWN_SOURCE,
          Lines.TOTAL,
          Lines.NO_ROOM,
          Lines.TWO_RESTS,
          Lines.TWICE,
          Materials.UNKNOWN,
          Materials.NOT_AN_INGREDIENT,
          Materials.RENAMED,
          MergedLimits.LOOSER,
          MergedLimits.CONTRADICT,
          Overages.NOTHING,
          Overages.NO_BATCH,
          Overages.TWO_GROUPS,
          Lines.REWORK_PLACE,
          FreedomOfLine.OF_REST,
          FreedomOfLine.IN_PREMIX,
          FreedomOfLine.SAYS_NOTHING,
          Materials.NO_SUCH_FEED,
          Overages.STABILITY_BY_MASS,
          PremixResolver.NO_DOSE,
          PremixResolver.NOT_IN_SOURCE,
          PremixResolver.SUPPLIED_TWICE,
          LabelLines.TWICE,
          PremixResolver.NO_ROOM_LEFT,
          ProcessLines.AIM_NOT_ACCEPTED,
          ProcessLines.NO_TEMPERATURE,
          ProcessLines.TWICE,
          ProcessOrder.CODE,
          MadeAt.UNKNOWN,
          ProfileResolver.UNKNOWN_SPECIES,
          RecipeResolver.UNKNOWN_PROFILE,
          RecipeResolver.NOTHING_TO_COAT,
          RecipeResolver.NOTHING_TO_MEET,
          RecipeResolver.NO_LAW,
          PremixOrder.CYCLE,
          PremixOrder.DEEP,
          Waivers.EXPIRED,
          Waivers.UNUSED,
          Waivers.INCOMPLETE,
          Waivers.OF_LAW,
          Waivers.TWICE,
          Waivers.LONG,
          RecipeResolver.NO_NEED,
          Reviews.INCOMPLETE,
          Reviews.TO_COME,
          RecipeResolver.MEETS_TWICE,
          RecipeResolver.NO_LAW_FOR_SPECIES,
          ProfileHead.INCOMPLETE,
          MaterialsHead.UNFIT,
          LawCoverage.ELSEWHERE,
          LawCoverage.NOT_FOR_ALL,
          PremixResolver.INCOMPLETE);

  private ResolveCodes() {}

  /** Whether it tells that a recipe names a profile that is not there, or none of need. */
  public static boolean isOfLostNeed(Code code) {
    return code.equals(RecipeResolver.UNKNOWN_PROFILE) || code.equals(RecipeResolver.NO_NEED);
  }

  public static List<Code> all() {
    return ALL;
  }
}
