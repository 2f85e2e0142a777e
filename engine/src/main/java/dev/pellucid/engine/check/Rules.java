package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Obstacle;
import dev.pellucid.finding.Code;
import dev.pellucid.syntax.Bound;
import java.util.List;

/** Every rule, in the order in which they look. */
public final class Rules {
  public static final List<Rule> ALL =
      List.of(
          new Obstacles("moisture-unknown", Obstacle.MoistureUnknown.class),
          new Obstacles("dries-upwards", Obstacle.DriesUpwards.class),
          new Obstacles("wets-downwards", Obstacle.WetsDownwards.class),
          new Obstacles("steam-cannot-heat", Obstacle.SteamCannotHeat.class),
          new Obstacles("no-steam-table", Obstacle.NoSteamTable.class),
          new SpeciesOutsideProfile(),
          new FishOutsideProfile(),
          new WithinLeavesNoFeed(),
          new OutsideWithin(),
          new PremixOffDose(),
          new SuppliedByTwoPremixes(),
          new TenfoldSlip(),
          new SaltForElement(),
          new BrokenLimit("below-minimum", Bound.Side.MIN),
          new BrokenLimit("above-maximum", Bound.Side.MAX),
          new OverageBreaksMaximum(),
          new UnknownContent(),
          new UnknownSpread(),
          new UnknownRetention(),
          new RoundingBreaksLimit(),
          new MixerTooEmpty(),
          new CannotBeWeighed(),
          new AboveCap(),
          new CoolerCannotDry(),
          new ProcessOutsidePractice(),
          new FeedOutsidePractice(),
          new DieForFish(),
          new TooFewParticles(),
          new Medicated(),
          new OwnSpeciesProtein(),
          new RawNeedsHeat(),
          new MarineOilWithoutAntioxidant(),
          new CholineBesideVitamins(),
          new UnprotectedVitamin(),
          new Unpriced(),
          new LabelJudgedBy("label-beyond-tolerance", LabelVerdict.Outcome.BEYOND),
          new LabelJudgedBy("label-spends-tolerance", LabelVerdict.Outcome.SPENDS),
          new LabelCannotBeTold(),
          new LabelWithoutTolerance(),
          new LabelAboveMaximum(),
          new ConstituentNotDeclared(),
          new AdditiveNotTold(),
          new LabelWithoutRules());

  /** Those that hold a feed against its limits, for a feed as it was made. */
  public static final List<Rule> LIMITS =
      ALL.stream()
          .filter(rule -> rule instanceof BrokenLimit || rule instanceof OverageBreaksMaximum)
          .toList();

  private Rules() {}

  /** The code of every rule. */
  public static List<Code> codes() {
    return ALL.stream().map(Rule::code).toList();
  }
}
