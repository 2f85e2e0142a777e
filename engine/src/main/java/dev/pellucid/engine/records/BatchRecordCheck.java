package dev.pellucid.engine.records;

import dev.pellucid.engine.carryover.CarryOver;
import dev.pellucid.engine.compute.Computation;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.Judgement;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.trend.MeasuredBatch;
import dev.pellucid.engine.weighing.WeighingPlanner;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The lots and batch records of a folder. The records of a recipe are looked at together with it,
 * in any thread; what they take of lots is added up at the end. Nothing is kept here between the
 * two. Where a folder has neither, nothing is done.
 */
public final class BatchRecordCheck {

  private static final List<RecordRule> RULES =
      List.of(
          new LineNotInRecipe(),
          new LineNotWeighed(),
          new LotOfAnotherIngredient(),
          new LotNotReleased(),
          new LotNotNamed(),
          new LotExpired(),
          new LotExpiresFirst(),
          new LotFailed(),
          new LotNotPassed(),
          new LotAboveMaximum(),
          new LotNotInspected(),
          new LotCameLater(),
          new LotTooMoist(),
          new BatchSizeOff(),
          new WeightOffTarget(),
          new RecordFigureOff(),
          new MadeOutsideLimits(),
          new YieldOffPlan(),
          new DryingOffChart(),
          new QualityOutsidePractice());

  private final FeedTables tables;
  private final FeedComputer computer;
  private final MadeRecipe recipes;
  private final RebalancedOrder orders;
  private final Following following;
  private final LocalDate day;
  private final LotsOverMaxima overMaxima;
  private final PutInto put;

  /**
   * @param reshared the way from a recipe to one with other shares
   */
  public BatchRecordCheck(
      FeedTables tables,
      Map<String, ResolvedPremix> premixes,
      FeedComputer computer,
      LocalDate day,
      LotsOverMaxima overMaxima,
      Reshared reshared) {
    this.tables = tables;
    this.computer = computer;
    this.recipes = new MadeRecipe(tables, premixes);
    this.orders = new RebalancedOrder(tables, computer, reshared);
    this.following = new Following(tables);
    this.day = day;
    this.overMaxima = overMaxima;
    this.put = new PutInto(tables.batches().values());
  }

  /** Every code that looking at records and lots can give. */
  public static List<Code> codes() {
    return Stream.of(
            RULES.stream().map(RecordRule::code),
            Following.codes().stream(),
            RebalancedOrder.codes().stream(),
            Stream.of(
                RecordFindings.NO_RECIPE,
                RecordFindings.NOT_RECKONED,
                UnlikeLibrary.CODE,
                ModifiedLot.CODE),
            StoreCheck.codes().stream(),
            LotsTogether.codes().stream(),
            RecordsTogether.codes().stream(),
            Stream.of(ResultOff.CODE, ResultOutsideLimits.CODE, QualityDrifts.CODE))
        .flatMap(codes -> codes)
        .toList();
  }

  /** Whether a finding of a record stands where something shows, not where it is to be fixed. */
  public static boolean isConsequence(Finding finding) {
    return Folded.isConsequence(finding.code());
  }

  /**
   * How many records were held against what they are of.
   *
   * @param codes of the recipes and premixes that could be reckoned
   */
  public int count(Collection<String> codes) {
    return (int)
        tables.batches().values().stream()
            .filter(it -> codes.contains(it.code()) && !isOfItsOwnState(it))
            .count();
  }

  /**
   * Whether a record says what it was made from, so that it is held against that and not against
   * the folder as it is. What is only planned is of today, and of one that is closed nothing is
   * said.
   */
  public static boolean isOfItsOwnState(BatchRecord record) {
    return record.isMade()
        && !record.closed()
        && record
            .madeFrom()
            .filter(it -> it.commit().isPresent() || it.fingerprint().isPresent())
            .isPresent();
  }

  /**
   * What came of looking at the records of one recipe or premix.
   *
   * @param uses what they take of lots
   * @param left what each batch leaves behind on the line, by its number, where another follows it
   * @param measured what was found of each batch that was made, beside what was expected of it
   */
  public record Looked(
      List<Use> uses,
      Map<String, CarryOver> left,
      List<MeasuredBatch> measured,
      List<Finding> findings) {
    /** Of a recipe without records. */
    public static final Looked NOTHING = new Looked(List.of(), Map.of(), List.of(), List.of());

    public Looked {
      uses = List.copyOf(uses);
      left = Map.copyOf(left);
      measured = List.copyOf(measured);
      findings = List.copyOf(findings);
    }
  }

  /** Looks at the records of one recipe, those left out that are of a state of their own. */
  public Looked look(ComputedFeed planned) {
    return together(
        of(planned.recipe().code()),
        record -> look(record, planned),
        record -> Optional.of(asMade(record, planned)));
  }

  /**
   * @param made of a record of a state of its own: what it leaves behind counts for the next one
   */
  private Looked together(
      List<BatchRecord> records,
      Function<BatchRecord, Looked> look,
      Function<BatchRecord, Optional<ComputedFeed>> made) {
    List<Use> uses = new ArrayList<>();
    Map<String, CarryOver> left = new HashMap<>();
    List<MeasuredBatch> measured = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (BatchRecord record : records) {
      if (isOfItsOwnState(record)) {
        following
            .left(record, () -> made.apply(record))
            .ifPresent(residue -> left.put(record.number(), residue));
      } else {
        Looked one = look.apply(record);
        uses.addAll(one.uses());
        left.putAll(one.left());
        measured.addAll(one.measured());
        findings.addAll(one.findings());
      }
    }
    return uses.isEmpty() && left.isEmpty() && measured.isEmpty() && findings.isEmpty()
        ? Looked.NOTHING
        : new Looked(uses, left, measured, findings);
  }

  /** Looks at one record of a recipe. */
  public Looked look(BatchRecord record, ComputedFeed planned) {
    RebalancedOrder.Ordered ordered = orders.of(planned, record);
    BatchTarget order = order(ordered.feed(), record);
    Optional<Computation> made =
        record.closed() || !ordered.usable()
            ? Optional.empty()
            : recipes.of(ordered.feed().recipe(), record, order).map(computer::compute);
    List<Finding> unreckoned =
        made
            .filter(it -> it.feed().isEmpty())
            .map(it -> RecordFindings.notReckoned(record))
            .stream()
            .toList();
    Map<String, CarryOver> left = new HashMap<>();
    following
        .left(record, () -> made.flatMap(Computation::feed).or(() -> Optional.of(planned)))
        .ifPresent(residue -> left.put(record.number(), residue));
    List<Finding> findings = new ArrayList<>(record.closed() ? List.of() : ordered.findings());
    List<Use> uses =
        look(record, order, made, unreckoned, ordered.usable() ? findings::add : said -> {});
    Optional<MeasuredBatch> measured = figures(ordered.feed(), record, order, made);
    new ResultOutsideLimits(record, ordered.feed(), tables.settings().jurisdiction(), measured)
        .look(findings::add);
    return new Looked(uses, left, measured.stream().toList(), findings);
  }

  /** The feed of a record as it was made; as it was planned where that cannot be reckoned. */
  private ComputedFeed asMade(BatchRecord record, ComputedFeed planned) {
    ComputedFeed ordered = orders.of(planned, record).feed();
    return recipes
        .of(ordered.recipe(), record, order(ordered, record))
        .flatMap(recipe -> computer.compute(recipe).feed())
        .orElse(planned);
  }

  /** A premix reckoned like a feed. */
  private Optional<ComputedFeed> asMade(ResolvedPremix premix) {
    return computer.compute(premix.asRecipe("approved")).feed();
  }

  /**
   * Looks at what one record says of the batch before it.
   *
   * @param its what came of looking at it
   * @param before the same of the batch that it follows
   */
  public List<Finding> follows(BatchRecord record, Looked its, Looked before) {
    Map<String, CarryOver> residues = new HashMap<>(before.left());
    residues.putAll(its.left());
    List<Finding> findings = new ArrayList<>();
    following.check(record, residues, findings::add);
    return findings;
  }

  /**
   * A batch that lots were put aside for, as it will be made of them.
   *
   * @param ordered the recipe by which it is made, its own shares in it where it has some
   */
  public record Planned(
      BatchRecord record, ResolvedRecipe ordered, ComputedFeed feed, List<LimitStatus> limits) {
    public Planned {
      limits = List.copyOf(limits);
    }
  }

  /** The batches of one recipe that are still to be made. */
  public List<Planned> planned(ComputedFeed feed) {
    List<Planned> planned = new ArrayList<>();
    for (BatchRecord record : of(feed.recipe().code())) {
      if (record.isPlanned()) {
        planned(feed, record).ifPresent(planned::add);
      }
    }
    return planned;
  }

  /** A record of a recipe as it would be made, whether or not it is one of the folder. */
  public Optional<Planned> planned(ComputedFeed feed, BatchRecord record) {
    ComputedFeed ordered = orders.of(feed, record).feed();
    return recipes
        .of(ordered.recipe(), record, order(ordered, record))
        .flatMap(recipe -> computer.compute(recipe).feed())
        .map(made -> new Planned(record, ordered.recipe(), made, Judge.limits(made)));
  }

  /** What a batch is to be made of, by the shares of its record where that has some. */
  public BatchTarget target(ComputedFeed feed, BatchRecord record) {
    return order(orders.of(feed, record).feed(), record);
  }

  /** The recipe by which a batch is ordered, the shares of its record in it where it has some. */
  public ResolvedRecipe ordered(ComputedFeed feed, BatchRecord record) {
    return orders.of(feed, record).feed().recipe();
  }

  /**
   * A recipe with the lots of a planned batch in place of its ingredients, line by line as it
   * stands.
   */
  public ResolvedRecipe laid(ResolvedRecipe recipe, BatchRecord record) {
    return recipes.laid(recipe, record);
  }

  /** Lots that a record names of which anything was measured. */
  public List<String> measured(BatchRecord record) {
    return orders.measured(record);
  }

  /**
   * What was found of it. One that is closed is no longer held against its recipe, and keeps its
   * place among the others as long as the recipe has all of its lines.
   */
  private Optional<MeasuredBatch> figures(
      ComputedFeed planned, BatchRecord record, BatchTarget order, Optional<Computation> made) {
    boolean whole =
        record.entries().stream().allMatch(entry -> order.named(entry.line()).isPresent());
    Optional<Computation> asMade =
        record.closed() && whole
            ? recipes.of(planned.recipe(), record, order).map(computer::compute)
            : made;
    MadeBatch batch =
        new MadeBatch(record, order, tables, asMade, Judgement.NONE, overMaxima, put, day);
    return BatchFigures.of(batch);
  }

  private BatchTarget order(ComputedFeed planned, BatchRecord record) {
    return BatchTarget.of(planned, record.kg(), WeighingPlanner.plan(planned, record.kg(), tables));
  }

  /** Looks at the records of one premix, those left out that are of a state of their own. */
  public Looked look(ResolvedPremix premix) {
    return together(of(premix.code()), record -> look(record, premix), record -> asMade(premix));
  }

  /** Looks at one record of a premix. */
  public Looked look(BatchRecord record, ResolvedPremix premix) {
    Map<String, CarryOver> left = new HashMap<>();
    following
        .left(record, () -> asMade(premix))
        .ifPresent(residue -> left.put(record.number(), residue));
    List<Finding> findings = new ArrayList<>();
    RebalancedOrder.ofPremix(record).ifPresent(findings::add);
    BatchTarget order = BatchTarget.of(premix, record.kg());
    List<Use> uses = look(record, order, Optional.empty(), List.of(), findings::add);
    return new Looked(uses, left, List.of(), findings);
  }

  /**
   * Looks at the rest: records of what there is no recipe for, lots that hold less than was taken,
   * lots that are unlike their ingredient, batches that follow what they should not.
   *
   * @param codes of every recipe and premix of the folder, sound or not
   * @param looked what came of all of them, in the order in which they were looked at
   * @return what is left
   */
  public Stock close(Collection<String> codes, List<Looked> looked, Consumer<Finding> out) {
    List<Use> uses = new ArrayList<>();
    Map<String, CarryOver> left = new HashMap<>();
    List<MeasuredBatch> measured = new ArrayList<>();
    for (Looked one : looked) {
      uses.addAll(one.uses());
      left.putAll(one.left());
      measured.addAll(one.measured());
    }
    for (BatchRecord record : tables.batches().values()) {
      if (!codes.contains(record.code()) && !isOfItsOwnState(record)) {
        out.accept(RecordFindings.noRecipe(record, codes));
      }
    }
    Stock stock = new Stock(tables, uses, overMaxima.barred(tables));
    new StoreBooks(tables, stock).look(out);
    overMaxima.look(tables, out);
    UnlikeLibrary.look(tables, overMaxima, out);
    ModifiedLot.look(tables, out);
    new LotsTogether(tables, uses, day).look(out);
    following.check(left, out);
    RecordsTogether.look(tables, day, out);
    ResultOff.look(tables, measured, out);
    new QualityDrifts(tables, day).look(measured, out);
    return stock;
  }

  private List<BatchRecord> of(String code) {
    return tables.batches().isEmpty()
        ? List.of()
        : tables.batches().values().stream().filter(it -> it.code().equals(code)).toList();
  }

  private List<Use> look(
      BatchRecord record,
      BatchTarget order,
      Optional<Computation> made,
      List<Finding> unreckoned,
      Consumer<Finding> out) {
    MadeBatch batch =
        new MadeBatch(
            record,
            order,
            tables,
            made,
            made.flatMap(Computation::feed).map(Judgement::ofLimits).orElse(Judgement.NONE),
            overMaxima,
            put,
            day);
    if (!record.closed()) {
      List<Finding> said = new ArrayList<>(unreckoned);
      RULES.forEach(rule -> rule.look(batch, said::add));
      Folded.tell(batch, said, out);
    }
    return Use.of(batch);
  }
}
