package dev.pellucid.engine.goal;

import dev.pellucid.engine.figures.FiguresFindings;
import dev.pellucid.engine.figures.FiguresRecord;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.goal.FiguresReport.Change;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Makes the record of figures of each recipe that can be computed, whatever its limits say. It is
 * the same on every day.
 */
public final class FiguresGoal {
  private static final String RECIPE = ".recipe";

  private FiguresGoal() {}

  /**
   * Makes them.
   *
   * @param recipe the code of the only one that is asked for; empty for all
   * @param kept whether only those are asked for that have a record already
   */
  public static FiguresReport of(Texts folder, String recipe, boolean kept) {
    List<String> named = named(folder, recipe);
    if (named.isEmpty()) {
      return problem(unknown(folder, recipe));
    }
    Set<String> records = new TreeSet<>(folder.ending(FiguresRecord.ENDING));
    List<String> recipes =
        named.stream().filter(path -> !kept || records.contains(FeedRecord.beside(path))).toList();
    Shared shared = FeedRecord.shared(ReadFolder.of(folder));
    List<FeedRecord> made =
        Streamed.judge(shared, recipes, checked -> FeedRecord.of(shared, checked));
    List<Change> changes = new ArrayList<>();
    List<String> unmade = new ArrayList<>();
    for (int i = 0; i < recipes.size(); i++) {
      String path = FeedRecord.beside(recipes.get(i));
      Optional<String> text = made.get(i).text();
      if (text.isEmpty()) {
        unmade.add(unmade(stem(path), made.get(i).mendFirst()));
      } else if (folder.isLink(path)) {
        unmade.add(stem(path) + ", " + path + " is a link to another place");
      } else if (!(records.contains(path) && isThere(folder, path, text.get()))) {
        changes.add(
            new Change(
                path, records.contains(path) ? likeKept(folder, path, text.get()) : text.get()));
      }
    }
    int unchanged = recipes.size() - changes.size() - unmade.size();
    return new FiguresReport(
        changes, unchanged, unmade, withoutRecipe(folder, recipe), Optional.empty());
  }

  private static List<String> named(Texts folder, String recipe) {
    return folder.ending(RECIPE).stream()
        .filter(path -> recipe.isEmpty() || stem(path).equals(recipe))
        .toList();
  }

  private static String unknown(Texts folder, String recipe) {
    TreeSet<String> codes = new TreeSet<>();
    folder.ending(RECIPE).forEach(path -> codes.add(stem(path)));
    if (codes.isEmpty()) {
      return "no recipe was found to make figures of";
    }
    List<String> near = NearNames.of(recipe, codes);
    return recipe
        + " is not the code of a recipe of this folder"
        + Meant.question(near).map(asked -> "; " + asked).orElse("");
  }

  private static FiguresReport problem(String words) {
    return new FiguresReport(List.of(), 0, List.of(), List.of(), Optional.of(words));
  }

  private static String unmade(String code, List<String> mendFirst) {
    return mendFirst.isEmpty()
        ? code + ", its findings must be fixed first"
        : code + ", fix " + String.join(", ", mendFirst) + " first";
  }

  private static boolean isThere(Texts folder, String path, String text) {
    return folder
        .read(path, new ArrayList<>())
        .filter(kept -> FiguresFindings.same(kept.text(), text))
        .isPresent();
  }

  /** With the line ends and the byte order mark of the record that is kept. */
  private static String likeKept(Texts folder, String path, String text) {
    String kept = folder.read(path, new ArrayList<>()).map(SourceFile::text).orElse("");
    String mark = kept.startsWith("\uFEFF") ? "\uFEFF" : "";
    return mark + (kept.contains("\r\n") ? text.replace("\n", "\r\n") : text);
  }

  private static List<String> withoutRecipe(Texts folder, String recipe) {
    Set<String> recipes = new TreeSet<>(folder.ending(RECIPE));
    return folder.ending(FiguresRecord.ENDING).stream()
        .filter(path -> recipe.isEmpty() || stem(path).equals(recipe))
        .filter(path -> !recipes.contains(FeedRecord.recipeOf(path)))
        .toList();
  }

  private static String stem(String path) {
    return new SourceFile(path, "").stem();
  }
}
