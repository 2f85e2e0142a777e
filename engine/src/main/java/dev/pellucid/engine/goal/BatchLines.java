package dev.pellucid.engine.goal;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.workspace.Trees;
import dev.pellucid.syntax.FeedFile.PremixFile;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.syntax.HeadLine;
import dev.pellucid.syntax.Section;
import dev.pellucid.syntax.ShareLine;
import dev.pellucid.syntax.Word;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The names of the lines of recipes and premixes that batch records are of, as their files tell
 * them, whatever else is wrong with these.
 */
final class BatchLines {
  private final Map<String, List<String>> byCode = new TreeMap<>();
  private final Map<String, String> plants = new TreeMap<>();
  private final Set<String> premixes;
  private final Set<String> feeds = new TreeSet<>();
  private final FeedTables tables;
  private final List<Unsearched> unread = new ArrayList<>();

  /**
   * @param codes of which recipes and premixes
   */
  BatchLines(Trees trees, FeedTables tables, Set<String> codes) {
    this.tables = tables;
    this.premixes = trees.premixPaths().keySet();
    List<PremixFile> premixes = trees.premixes(new ArrayList<>());
    for (String code : codes) {
      Optional<PremixFile> premix =
          premixes.stream().filter(it -> it.source().stem().equals(code)).findFirst();
      Optional<RecipeFile> recipe =
          trees.path(code).flatMap(path -> trees.recipe(path, new ArrayList<>()));
      premix.ifPresent(this::premix);
      recipe.ifPresent(this::recipe);
      if (lines(code).isEmpty()) {
        unread.add(new Unsearched.Code(code));
      }
    }
  }

  /** The names of the lines of a recipe or premix; none where nobody knows them. */
  List<String> lines(String code) {
    return byCode.getOrDefault(code, List.of());
  }

  /** Whether it is a recipe of a feed: no premix, and nothing that the folder does not have. */
  boolean isFeed(String code) {
    return feeds.contains(code) && !premixes.contains(code);
  }

  /** Recipes and premixes that do not tell all of their lines. */
  List<Unsearched> unread() {
    return unread;
  }

  /**
   * The plant of a recipe or premix, by its name: what its head tells, else that of the settings.
   * Where a folder has one plant at most, all is made at one; else it is absent for what cannot be
   * read.
   */
  Optional<String> plant(String code) {
    return tables.plants().size() < 2
        ? Optional.of(usual())
        : Optional.ofNullable(plants.get(code));
  }

  private String usual() {
    return tables.settings().plant().orElse("");
  }

  private void plant(SourceFile source, Optional<Word> told) {
    plants.put(source.stem(), told.map(Word::text).orElse(usual()));
  }

  private void recipe(RecipeFile file) {
    plant(file.source(), told(file));
    feeds.add(file.source().stem());
    add(file.source(), List.of(), Stream.of(file.mix(), file.coat()));
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

  private void premix(PremixFile file) {
    plant(file.source(), told(file));
    List<String> sources =
        file.supply().stream()
            .flatMap(section -> section.lines().stream())
            .map(line -> line.from().text())
            .toList();
    add(file.source(), sources, Stream.of(file.mix(), file.carrier()));
    if (!file.supply().map(Section::whole).orElse(true)) {
      unread(file.source());
    }
  }

  private void add(
      SourceFile source, List<String> first, Stream<Optional<Section<ShareLine>>> sections) {
    List<Section<ShareLine>> there = sections.flatMap(Optional::stream).toList();
    Stream<String> shares =
        there.stream().flatMap(section -> section.lines().stream()).map(BatchLines::name);
    byCode.put(source.stem(), Stream.concat(first.stream(), shares).distinct().toList());
    if (!there.stream().allMatch(Section::whole)) {
      unread(source);
    }
  }

  private void unread(SourceFile source) {
    unread.add(new Unsearched.File(source.path(), "has lines that cannot be read"));
  }

  private static String name(ShareLine line) {
    return (line.rework() ? Material.Reworked.REWORK : "") + line.subject().text();
  }
}
