package dev.pellucid.engine.outside;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.Ingredient.Cap;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.judge.LawMargin;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.leastcost.Held;
import dev.pellucid.engine.records.BatchRecordCheck.Planned;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import dev.pellucid.parse.FeedParser;
import dev.pellucid.parse.SourceBytes;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.text.SourceFile;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * The fewest points that a planned batch must move, by a linear program laid down from nothing but
 * how the record of the batch is judged: each line is moved a little in the recipe, what is left to
 * each limit of the batch is read off, and the planes through these are solved, around each answer
 * again.
 */
final class BatchByHand {
  private static final double PROBE = 0.02;
  private static final int ROUNDS = 6;

  private final Shared shared;
  private final Checked recipe;
  private final BatchRecord record;
  private final List<Line> free = new ArrayList<>();
  private double spare;

  BatchByHand(Texts texts, LocalDate day, String number) {
    this.shared = Shared.of(ReadFolder.of(texts), Days.on(day));
    this.record = shared.tables().batches().get(number);
    this.recipe = Streamed.judged(shared, shared.trees().path(record.code()).orElseThrow());
    for (Line line : recipe.recipe().orElseThrow().recipe().lines()) {
      boolean told = line.rest() || line.within().isPresent();
      if (told && line.material().single().isPresent()) {
        free.add(line);
      }
    }
  }

  /** By which lines rise, all together; empty where no shares within their bounds do. */
  OptionalDouble fewest() {
    return fewest(0);
  }

  /**
   * The same with something to spare.
   *
   * @param part of each bound
   */
  OptionalDouble fewest(double part) {
    spare = part;
    double[] shares = new double[free.size()];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = free.get(i).designed().kgPer100();
    }
    OptionalDouble fewest = OptionalDouble.empty();
    for (int round = 0; round < ROUNDS; round++) {
      Optional<double[]> next = solved(shares);
      if (next.isEmpty()) {
        return OptionalDouble.empty();
      }
      shares = next.get();
      fewest = OptionalDouble.of(rises(shares));
    }
    return fewest;
  }

  private double rises(double[] shares) {
    double rises = 0;
    for (int i = 0; i < shares.length; i++) {
      rises += Math.max(0, shares[i] - free.get(i).designed().kgPer100());
    }
    return rises;
  }

  private Optional<double[]> solved(double[] around) {
    Map<String, Double> here = rooms(around);
    List<Map<String, Double>> moved = new ArrayList<>();
    for (int i = 0; i < around.length; i++) {
      moved.add(free.get(i).rest() ? here : rooms(with(around, i, PROBE)));
    }
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    List<Variable> shares = new ArrayList<>();
    for (int i = 0; i < around.length; i++) {
      double[] ends = ends(free.get(i));
      shares.add(model.addVariable("share" + i).lower(ends[0]).upper(ends[1]));
    }
    for (int i = 0; i < around.length; i++) {
      Variable rise = model.addVariable("rise" + i).lower(0).weight(1);
      model
          .addExpression("rises" + i)
          .set(rise, 1)
          .set(shares.get(i), -1)
          .lower(-free.get(i).designed().kgPer100());
    }
    Expression total = model.addExpression("total");
    double sum = 0;
    for (int i = 0; i < around.length; i++) {
      total.set(shares.get(i), 1);
      sum += free.get(i).designed().kgPer100();
    }
    total.level(sum);
    int row = 0;
    for (Map.Entry<String, Double> one : here.entrySet()) {
      Expression room = model.addExpression("room" + row++);
      double atNone = one.getValue();
      for (int i = 0; i < around.length; i++) {
        double slope =
            (moved.get(i).getOrDefault(one.getKey(), one.getValue()) - one.getValue()) / PROBE;
        room.set(shares.get(i), slope);
        atNone -= slope * around[i];
      }
      room.lower(spare - atNone - 1e-9);
    }
    Optimisation.Result result = model.minimise();
    if (!result.getState().isFeasible()) {
      return Optional.empty();
    }
    double[] found = new double[around.length];
    for (int i = 0; i < found.length; i++) {
      found[i] = result.doubleValue(i);
    }
    return Optional.of(found);
  }

  /** What takes more of a line, the rest leaves: a plane holds for all whose total is the same. */
  private static double[] with(double[] shares, int line, double more) {
    double[] other = shares.clone();
    other[line] += more;
    return other;
  }

  /** As far as its own words, its cap and what its file tells let it go. */
  private double[] ends(Line line) {
    double now = line.designed().kgPer100();
    double low = line.within().map(it -> it.low() * 100).orElse(0.0);
    double high = line.within().map(it -> it.high() * 100).orElse(100.0);
    Optional<Cap> cap =
        recipe
            .recipe()
            .orElseThrow()
            .recipe()
            .species()
            .flatMap(it -> line.material().single().orElseThrow().ingredient().cap(it));
    if (cap.isPresent() && cap.get().most().isPresent()) {
      high = Math.min(high, cap.get().most().getAsDouble() * 100);
    }
    Held held = new Held(new FeedComputer(shared.tables()), shared.findings());
    boolean silent = !held.from(recipe.recipe().orElseThrow().recipe(), line).isEmpty();
    return new double[] {Math.min(now, low), Math.max(now, silent ? now : high)};
  }

  /** What is left to each limit of the batch, with the shares written into the recipe itself. */
  private Map<String, Double> rooms(double[] shares) {
    Planned planned = shared.recordCheck().planned(computed(text(shares)), record).orElseThrow();
    Map<String, Double> rooms = new HashMap<>();
    for (LimitStatus status : planned.limits()) {
      if (status.state().isJudged()) {
        rooms.put(status.limit().name(), part(status, status.limit()));
        ofLaw(status, rooms);
      }
    }
    return rooms;
  }

  /** Law is to be kept in as many batches as the folder asks. */
  private void ofLaw(LimitStatus status, Map<String, Double> rooms) {
    Optional<LawMargin> margin = LawMargin.of(status);
    if (margin.isPresent() && margin.get().isNear()) {
      LimitStatus asked = margin.get().askedIn(shared.tables().settings().lawKeptIn());
      rooms.put(status.limit().name() + " in most batches", part(asked, status.limit()));
    }
  }

  /** As a part of the bound. */
  private static double part(LimitStatus status, Limit limit) {
    return status.verdict().room() / Math.max(1e-9, Math.abs(limit.inForce()));
  }

  private ComputedFeed computed(String text) {
    SourceFile source = new SourceFile(recipe.path(), text);
    RecipeFile file =
        (RecipeFile) FeedParser.parse(new SourceBytes.Decoded(source, List.of())).file();
    return new FeedComputer(shared.tables())
        .compute(shared.resolver().recipe(file).thing().orElseThrow())
        .feed()
        .orElseThrow();
  }

  private String text(double[] shares) {
    StringBuilder text = new StringBuilder(recipe.recipe().orElseThrow().recipe().source().text());
    for (int i = shares.length - 1; i >= 0; i--) {
      Line line = free.get(i);
      if (!line.rest()) {
        String share = BigDecimal.valueOf(shares[i]).setScale(9, RoundingMode.HALF_EVEN) + " %";
        text.replace(line.figure().start(), line.figure().end(), share);
      }
    }
    return text.toString();
  }
}
