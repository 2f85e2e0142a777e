package dev.pellucid.engine.goal;

import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.workspace.Trees;
import dev.pellucid.syntax.FeedFile.PremixFile;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.syntax.Section;
import dev.pellucid.syntax.ShareLine;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The names of the lines of recipes and premixes that batch records are of, as their files tell
 * them, whatever else is wrong with these.
 */
final class BatchLines {
  private final Map<String, List<String>> byCode = new TreeMap<>();
  private final Map<String, String> written = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
  private final List<Unsearched> unread = new ArrayList<>();
  private final Trees trees;
  private final List<PremixFile> premixes;

  /**
   * @param codes of which recipes and premixes
   */
  BatchLines(Trees trees, Set<String> codes) {
    this.trees = trees;
    this.premixes = trees.premixes(new ArrayList<>());
    trees.recipes().forEach(code -> written.put(code, code));
    trees.premixPaths().keySet().forEach(code -> written.put(code, code));
    codes.forEach(this::read);
  }

  private void read(String code) {
    Optional<PremixFile> premix =
        premixes.stream().filter(it -> it.source().stem().equals(code)).findFirst();
    Optional<RecipeFile> recipe =
        trees.path(code).flatMap(path -> trees.recipe(path, new ArrayList<>()));
    premix.ifPresent(this::premix);
    recipe.ifPresent(this::recipe);
    if (byCode.computeIfAbsent(code, none -> List.of()).isEmpty()) {
      unread.add(new Unsearched.Code(code));
    }
  }

  /**
   * The names of the lines of a recipe or premix, capitals or not; none where nobody knows them.
   */
  List<String> lines(String code) {
    String one = written.getOrDefault(code, code);
    if (!byCode.containsKey(one) && written.containsKey(one)) {
      read(one);
    }
    return byCode.getOrDefault(one, List.of());
  }

  /** Recipes and premixes that were asked for and do not tell all of their lines. */
  List<Unsearched> unread() {
    return unread;
  }

  private void recipe(RecipeFile file) {
    add(file.source(), List.of(), Stream.of(file.mix(), file.coat()));
  }

  private void premix(PremixFile file) {
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
