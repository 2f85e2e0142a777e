package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.trace.Plants;
import dev.pellucid.syntax.FeedFile.PremixFile;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.syntax.HeadLine;
import dev.pellucid.syntax.Word;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The plant at which the batches of a recipe or premix are made, by its name alone and whatever
 * else is wrong with its file: what its head tells, else that of the settings.
 */
public final class PlantOfCode implements Plants {
  private final Trees trees;
  private final FeedTables tables;
  private final Map<String, PremixFile> premixes = new HashMap<>();

  public PlantOfCode(Trees trees, FeedTables tables) {
    this.trees = trees;
    this.tables = tables;
    trees.premixes(new ArrayList<>()).forEach(one -> premixes.put(one.source().stem(), one));
  }

  /**
   * Where a folder has one plant at most, all is made at one; else it is absent for what cannot be
   * read.
   */
  @Override
  public Optional<String> plant(String code) {
    return tables.plants().size() < 2 ? Optional.of(usual()) : told(code);
  }

  @Override
  public boolean isPremix(String code) {
    return trees.premixPaths().containsKey(code);
  }

  @Override
  public boolean isFeed(String code) {
    return !isPremix(code) && trees.path(code).isPresent();
  }

  private String usual() {
    return tables.settings().plant().orElse("");
  }

  private Optional<String> told(String code) {
    PremixFile premix = premixes.get(code);
    return premix != null
        ? Optional.of(named(told(premix)))
        : trees
            .path(code)
            .flatMap(path -> trees.recipe(path, new ArrayList<>()))
            .map(file -> named(told(file)));
  }

  private String named(Optional<Word> told) {
    return told.map(Word::text).orElse(usual());
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
