package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.trace.Plants;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.syntax.FeedFile.PremixFile;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.syntax.HeadLine;
import dev.pellucid.syntax.Word;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The plant at which the batches of a recipe or premix are made, by its name alone and whatever
 * else is wrong with its file: what its head tells, else that of the settings.
 */
public final class PlantOfCode implements Plants {
  private final Trees trees;
  private final FeedTables tables;
  private final Map<String, PremixFile> premixes = new HashMap<>();
  private final List<Finding> ofPremixes = new ArrayList<>();

  public PlantOfCode(Trees trees, FeedTables tables) {
    this.trees = trees;
    this.tables = tables;
    trees.premixes(ofPremixes).forEach(one -> premixes.put(one.source().stem(), one));
  }

  @Override
  public Optional<String> plant(BatchRecord record) {
    return of(record.code());
  }

  /**
   * Where a folder has one plant at most, all is made at one; else it is absent for what cannot be
   * read, or names no plant of the folder.
   */
  private Optional<String> of(String code) {
    if (tables.plants().size() < 2) {
      return Optional.of(tables.settings().plant().orElse(""));
    }
    return (isRead(code)
            ? told(code).or(() -> tables.settings().plant())
            : Optional.<String>empty())
        .filter(plant -> tables.plants().get(plant) != null);
  }

  @Override
  public boolean isPremix(String code) {
    return trees.premixPaths().containsKey(code);
  }

  @Override
  public boolean isFeed(String code) {
    return !isPremix(code) && trees.path(code).isPresent();
  }

  /** Whether all of its file can be read: a line that cannot may be that of the plant. */
  private boolean isRead(String code) {
    List<Finding> found = new ArrayList<>();
    boolean there =
        premixes.containsKey(code)
            || trees.path(code).flatMap(path -> trees.recipe(path, found)).isPresent();
    return there
        && Stream.concat(found.stream(), ofPremixes.stream())
            .filter(one -> one.span().file().stem().equals(code))
            .noneMatch(one -> one.severity() == Severity.ERROR);
  }

  /** The plant that its head names. */
  public Optional<String> told(String code) {
    return Optional.ofNullable(premixes.get(code))
        .flatMap(PlantOfCode::told)
        .or(
            () ->
                trees
                    .path(code)
                    .flatMap(path -> trees.recipe(path, new ArrayList<>()))
                    .flatMap(PlantOfCode::told))
        .map(Word::text);
  }

  private static Optional<Word> told(RecipeFile file) {
    List<Word> told = new ArrayList<>();
    HeadLine.Recipe head =
        new HeadLine.Recipe(
            line -> {},
            line -> {},
            line -> {},
            line -> {},
            line -> {},
            line -> {},
            line -> told.add(line.plant()));
    file.head().forEach(line -> line.into(head));
    return told.stream().findFirst();
  }

  private static Optional<Word> told(PremixFile file) {
    return file.head().stream().flatMap(line -> line.plantTold().stream()).findFirst();
  }
}
