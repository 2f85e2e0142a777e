package dev.pellucid.engine.plan;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.TablesReader;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.label.BagLabel;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.Resolver;
import dev.pellucid.engine.resolve.Reworks;
import dev.pellucid.finding.Finding;
import dev.pellucid.parse.FeedParser;
import dev.pellucid.syntax.FeedFile;
import dev.pellucid.syntax.FeedFile.PremixFile;
import dev.pellucid.syntax.FeedFile.ProfileFile;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** Plans for recipes of the example folder, their text changed where a test asks for it. */
public final class ExamplePlans {
  public static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  public static final Provenance CLEAN = new Provenance("1a2b3c4", true, DAY);

  private final Texts folder;
  private final FeedTables tables;
  private final Resolver resolver;

  private final List<PremixFile> premixFiles;
  private final List<ProfileFile> profileFiles;

  private ExamplePlans(
      Texts folder,
      FeedTables tables,
      List<PremixFile> premixFiles,
      List<ProfileFile> profileFiles) {
    this.folder = folder;
    this.premixFiles = premixFiles;
    this.profileFiles = profileFiles;
    this.tables = tables;
    this.resolver =
        Resolver.prepare(
                new Resolver.Named(
                    tables, premixFiles, profileFiles, Map.of(), Reworks.NONE, Days.on(DAY)),
                java.util.Optional.empty())
            .resolver();
  }

  public static ExamplePlans open() {
    try {
      Texts folder = Texts.at(Example.whole());
      TreeMap<String, SourceFile> texts = new TreeMap<>();
      for (String path : folder.data()) {
        texts.put(path, read(folder, path));
      }
      FeedTables tables = TablesReader.read(texts, new TreeMap<>()).tables();
      List<PremixFile> premixes = new ArrayList<>();
      for (String path : folder.ending(".premix")) {
        premixes.add((PremixFile) parsed(read(folder, path)));
      }
      List<ProfileFile> profiles = new ArrayList<>();
      for (String path : folder.ending(".limits")) {
        profiles.add((ProfileFile) parsed(read(folder, path)));
      }
      return new ExamplePlans(folder, tables, premixes, profiles);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public List<String> recipes() {
    return folder.ending(".recipe");
  }

  /** The same folder with another premix in it. */
  public ExamplePlans with(String path, String premix) {
    List<PremixFile> more = new ArrayList<>(premixFiles);
    more.add((PremixFile) parsed(new SourceFile(path, premix)));
    return new ExamplePlans(folder, tables, more, profileFiles);
  }

  /** The plan of every premix, for one batch of each recipe that is approved. */
  public Map<String, BatchPlan> premixes() {
    Map<String, List<Premixing.Need>> needs = new TreeMap<>();
    for (String path : recipes()) {
      BatchPlan plan = plan(path);
      if (plan.status().equals("approved")) {
        needs.put(plan.code(), PremixOrders.of(plan));
      }
    }
    PremixOrders orders = new PremixOrders(resolver.premixes(), needs, tables);
    Map<String, BatchPlan> plans = new TreeMap<>();
    resolver
        .premixes()
        .forEach(
            (code, premix) ->
                plans.put(code, BatchPlan.of(premix, orders, tables, CLEAN).orElseThrow()));
    return plans;
  }

  public BatchPlan plan(String path) {
    return plan(path, CLEAN, UnaryOperator.identity());
  }

  public BatchPlan plan(String path, Provenance provenance, UnaryOperator<String> change) {
    ComputedFeed feed = feed(path, change);
    return BatchPlan.of(feed, Judge.limits(feed), tables, provenance);
  }

  /** Empty where the recipe is refused or cannot be computed. */
  Optional<BatchPlan> planIfComputed(String path, UnaryOperator<String> change) {
    return computed(path, change)
        .map(feed -> BatchPlan.of(feed, Judge.limits(feed), tables, CLEAN));
  }

  public FeedTables tables() {
    return tables;
  }

  public Optional<BagLabel> label(String path, UnaryOperator<String> change) {
    ComputedFeed feed = feed(path, change);
    return BagLabel.of(feed, tables, BatchPlan.of(feed, Judge.limits(feed), tables, CLEAN));
  }

  public ComputedFeed feed(String path, UnaryOperator<String> change) {
    return computed(path, change).orElseThrow();
  }

  private Optional<ComputedFeed> computed(String path, UnaryOperator<String> change) {
    try {
      String text = read(folder, path).text();
      FeedFile file = parsed(new SourceFile(path, change.apply(text)));
      return resolver
          .recipe((RecipeFile) file)
          .thing()
          .flatMap(recipe -> new FeedComputer(tables).compute(recipe).feed());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static SourceFile read(Texts folder, String path) throws IOException {
    List<Finding> findings = new ArrayList<>();
    return folder.read(path, findings).orElseThrow();
  }

  private static FeedFile parsed(SourceFile text) {
    return FeedParser.parse(text).file();
  }
}
