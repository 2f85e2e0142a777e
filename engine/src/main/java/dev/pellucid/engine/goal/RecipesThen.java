package dev.pellucid.engine.goal;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.BatchRecord.MadeFrom;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.folder.Past.Then;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.trace.Plants;
import dev.pellucid.engine.trace.Recipes;
import dev.pellucid.engine.workspace.PlantOfCode;
import dev.pellucid.engine.workspace.Trees;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Recipes and premixes as they were in the commits that records say they were made from: a line
 * that a recipe lost since, and that a record does not tell, may have been of any lot all the same;
 * and what was made at another plant stood on another line.
 */
final class RecipesThen implements Recipes, Plants {
  private final Map<String, List<String>> byNumber = new TreeMap<>();
  private final Map<String, Optional<String>> plants = new TreeMap<>();
  private final FeedTables tables;
  private final BatchLines today;
  private final PlantOfCode plantsToday;
  private final List<Unsearched> unread = new ArrayList<>();

  /**
   * @param today the lines as they are now, for records of which those of then are not known
   */
  RecipesThen(Texts folder, FeedTables tables, BatchLines today, PlantOfCode plantsToday) {
    this.tables = tables;
    this.today = today;
    this.plantsToday = plantsToday;
    Map<String, List<BatchRecord>> byCommit = new TreeMap<>();
    for (BatchRecord record : tables.batches().values()) {
      if (record.isMade()) {
        commit(record)
            .ifPresent(it -> byCommit.computeIfAbsent(it, none -> new ArrayList<>()).add(record));
      }
    }
    if (!byCommit.isEmpty()) {
      folder
          .past()
          .at(byCommit.keySet(), Trees::isOfLines)
          .forEach((commit, then) -> look(byCommit.getOrDefault(commit, List.of()), then));
    }
  }

  private static Optional<String> commit(BatchRecord record) {
    return record.madeFrom().flatMap(MadeFrom::commit).map(Located::thing);
  }

  private void look(List<BatchRecord> records, Then then) {
    Optional<Trees> trees = then.texts().map(Trees::of);
    for (BatchRecord record : records) {
      List<String> lines = trees.map(it -> lines(it, record.code())).orElse(List.of());
      if (lines.isEmpty()) {
        unread.add(new Unsearched.RecipeThen(record.number(), then.doubt()));
      } else {
        byNumber.put(record.number(), lines);
        trees.ifPresent(it -> plants.put(record.number(), plant(it, record.code())));
      }
    }
  }

  private static List<String> lines(Trees trees, String code) {
    BatchLines lines = new BatchLines(trees, Set.of(code));
    return lines.unread().isEmpty() ? lines.lines(code) : List.of();
  }

  /** What the settings say is that of today: a plant that was renamed since is another one. */
  private Optional<String> plant(Trees trees, String code) {
    return new PlantOfCode(trees, tables).told(code).or(() -> tables.settings().plant());
  }

  @Override
  public Optional<String> plant(BatchRecord record) {
    Optional<String> now = plantsToday.plant(record);
    return tables.plants().size() < 2 ? now : plants.getOrDefault(record.number(), now);
  }

  @Override
  public boolean isPremix(String code) {
    return plantsToday.isPremix(code);
  }

  @Override
  public boolean isFeed(String code) {
    return plantsToday.isFeed(code);
  }

  @Override
  public List<String> lines(String code) {
    return today.lines(code);
  }

  @Override
  public List<String> lines(BatchRecord record) {
    return byNumber.getOrDefault(record.number(), today.lines(record.code()));
  }

  /** Records of which the lines are those of today, since those of then could not be had. */
  List<Unsearched> unread() {
    return unread;
  }
}
