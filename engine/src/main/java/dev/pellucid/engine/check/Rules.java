package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.Obstacle;
import dev.pellucid.engine.judge.LabelVerdict;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Bound;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Every rule, in the order in which they look. */
public final class Rules {
  public static final List<Rule> ALL =
      List.of(
          new Obstacles("moisture-unknown", Obstacle.MoistureUnknown.class),
          new Obstacles("dries-upwards", Obstacle.DriesUpwards.class),
          new Obstacles("wets-downwards", Obstacle.WetsDownwards.class),
          new Obstacles("steam-cannot-heat", Obstacle.SteamCannotHeat.class),
          new Obstacles("no-steam-table", Obstacle.NoSteamTable.class),
          new SpeciesMissing(),
          new ProcessMissing(),
          new StoreMissing(),
          new HeadIncomplete(),
          new NotReviewed(),
          new StepMissing(),
          new SettingMissing(),
          new PackedWarm(),
          new SpeciesOutsideProfile(),
          new FishBeyondSpecies(),
          new FishOutsideProfile(),
          new FloatingNotExpanded(),
          new CoatOfDry(),
          new MustHold(),
          new OwnLimitTenTimesOff(),
          new WithinLeavesNoFeed(),
          new WithinFarApart(),
          new ShareOutsideUsual(),
          new OutsideWithin(),
          new LineAtZero(),
          new StepFitsNowhere(),
          new StepNotKept(),
          new StepTooFine(),
          new PremixOffDose(),
          new SuppliedByTwoPremixes(),
          new SupplyOffLimit(),
          new TenfoldSlip(),
          new SaltForElement(),
          new BrokenLimit("below-minimum", Bound.Side.MIN),
          new BrokenLimit("above-maximum", Bound.Side.MAX),
          new OverageBreaksMaximum(),
          new UnknownContent(),
          new UnknownSpread(),
          new LawWithoutMargin(),
          new LawSpreadUnsure(),
          new UnknownRetention(),
          new RoundingBreaksLimit(),
          new MixerTooEmpty(),
          new BatchTakesLong(),
          new DryerTooSlow(),
          new BlendTime(),
          new CannotBeWeighed(),
          new AboveCap(),
          new CoolerCannotDry(),
          new GrindOfNone(),
          new StepForOne(),
          new ScreenWiderThanDie(),
          new ProcessOutsidePractice(),
          new FeedOutsidePractice(),
          new DieForFish(),
          new DieNotAtPlant(),
          new DryerNotAtPlant(),
          new CoaterNotAtPlant(),
          new BagNotAtPlant(),
          new BagLargerThanBatch(),
          new FeedOutlivesPremix(),
          new TooFewParticles(),
          new Medicated(),
          new AlsoMadeUnruled(),
          new OwnSpeciesProtein(),
          new ReworkOfOtherSpecies(),
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
          new AdditiveNumberMissing(),
          new LabelNameMissing(),
          new ModifiedNotTold(),
          new ModifiedWithoutWords(),
          new FeedingNotTold(),
          new LabelWithoutRules());

  /** The code of an ingredient without a price. */
  public static final Code UNPRICED = Unpriced.CODE;

  /** Those that say which limits are broken. */
  private static final List<Rule> LIMITS =
      ALL.stream()
          .filter(rule -> rule instanceof BrokenLimit || rule instanceof OverageBreaksMaximum)
          .toList();

  private static final List<Code> TOGETHER =
      List.of(
          LimitOnOtherSide.CODE,
          LimitTermsDiffer.CODE,
          LimitLost.CODE,
          PremixesTogether.LOST,
          PremixesTogether.NO_LOT,
          PremixTenTimesOff.SUPPLY,
          SharesTogether.DOSE,
          PremixTenTimesOff.OVERAGE,
          SharesTogether.SHARE);

  private static final Set<Code> ONCE_PER_PLACE =
      ALL.stream()
          .filter(Rule::oncePerPlace)
          .map(Rule::code)
          .collect(Collectors.toUnmodifiableSet());

  private static final Set<Code> CONSEQUENCES =
      ALL.stream()
          .filter(Rule::isConsequence)
          .map(Rule::code)
          .collect(Collectors.toUnmodifiableSet());

  /** What a file says of its own lines, and which mostly shows that another line was lost. */
  private static final Set<String> FOLLOWING = Set.of("overage-matches-nothing", "waiver-unused");

  private static final Set<Code> CODES = Set.copyOf(codes());

  private static final Set<Code> CAUSES =
      ALL.stream().filter(Rule::isCause).map(Rule::code).collect(Collectors.toUnmodifiableSet());

  private Rules() {}

  /** Whether a finding says that a feed holds more of an ingredient than its cap. */
  public static boolean isAboveCap(Finding finding) {
    return finding.code().equals(AboveCap.CODE);
  }

  /**
   * Where a finding stands among those of its file: what is wrong with the words first, then with
   * the lines, then what the rest shows of other lines, then what shows in the feed.
   */
  public static int rank(Finding finding) {
    if (!CODES.contains(finding.code())) {
      return FOLLOWING.contains(finding.code().text()) ? 3 : 0;
    }
    if (isConsequence(finding)) {
      return 3;
    }
    return finding.about().path().equals(OutsideWithin.REST) ? 2 : 1;
  }

  /** Whether a finding is most likely a slip in a share, which moves everything in the feed. */
  public static boolean isCause(Finding finding) {
    return CAUSES.contains(finding.code());
  }

  /** Whether a finding shows in the feed and is fixed elsewhere. */
  public static boolean isConsequence(Finding finding) {
    return CONSEQUENCES.contains(finding.code());
  }

  /** All that the rules say of a recipe, in their order. */
  public static List<Remark> remarks(RuleContext recipe) {
    return remarks(ALL, recipe);
  }

  /** What they say of the limits that it breaks, for a feed as it was made. */
  public static List<Remark> ofLimits(RuleContext recipe) {
    return remarks(LIMITS, recipe);
  }

  private static List<Remark> remarks(List<Rule> rules, RuleContext recipe) {
    Remarks remarks = new Remarks();
    for (Rule rule : rules) {
      rule.look(recipe, remarks);
    }
    return remarks.all();
  }

  /**
   * What all recipes of a folder show, each thing once: not again in the same words, and what is
   * one thing per place only as the first recipe shows it.
   *
   * @param inOrder in the order of printing
   * @return in the same order
   */
  public static List<Finding> once(List<Finding> inOrder) {
    List<Finding> once = new ArrayList<>();
    Map<Object, Integer> seen = new HashMap<>();
    Map<Integer, Integer> again = new TreeMap<>();
    for (Finding finding : new LinkedHashSet<>(inOrder)) {
      Integer first =
          ONCE_PER_PLACE.contains(finding.code())
              ? seen.putIfAbsent(List.of(finding.code(), finding.span()), once.size())
              : null;
      if (first == null) {
        once.add(finding);
      } else {
        again.merge(first, 1, Integer::sum);
      }
    }
    again.forEach((index, more) -> once.set(index, once.get(index).noting(elsewhere(more))));
    return once;
  }

  private static String elsewhere(int more) {
    return "so it is beside "
        + (more == 1 ? "one other minimum" : more + " other minima")
        + " of this folder";
  }

  /**
   * The code of every rule, of recipes and of what they share, and of what profiles, premixes and
   * shares of a folder show together.
   */
  public static List<Code> codes() {
    List<Code> codes = new ArrayList<>();
    for (Rule rule : ALL) {
      codes.add(rule.code());
    }
    codes.addAll(SharedRules.codes());
    codes.addAll(TOGETHER);
    return List.copyOf(codes);
  }
}
