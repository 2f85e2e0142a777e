package dev.pellucid.engine;

import dev.pellucid.engine.check.Judge;
import dev.pellucid.engine.compare.Comparison;
import dev.pellucid.engine.compare.RecipeState;
import dev.pellucid.engine.compare.RecipeState.FeedFigures;
import dev.pellucid.engine.folder.FeedFolder;
import dev.pellucid.engine.report.CompareText;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What came of comparing two states of a folder.
 *
 * @param comparison the recipes that changed, the gravest first
 * @param text for the console
 * @param markdown for a review, at most 60,000 characters
 */
public record CompareReport(Comparison comparison, String text, String markdown) {

  static CompareReport of(FeedFolder from, FeedFolder to, LocalDate day) {
    FolderRun<String> before = new FolderRun<>(from, day, FolderRun.Made::path);
    FolderRun<String> after = new FolderRun<>(to, day, FolderRun.Made::path);
    Comparison comparison =
        Comparison.of(states(from, before), states(to, after), differing(from, to));
    CompareText text = new CompareText(after.larder().settings().currency());
    return new CompareReport(comparison, text.text(comparison), text.markdown(comparison));
  }

  /**
   * Writes {@code compare.txt} and {@code compare.md}.
   *
   * @throws IOException where the disk fails
   */
  public void write(Path to) throws IOException {
    FeedFolder.write(to.resolve("compare.txt"), text);
    FeedFolder.write(to.resolve("compare.md"), markdown);
  }

  /** One line for the end of a run. */
  public String tally() {
    return CompareText.tally(comparison);
  }

  private static Map<String, RecipeState> states(FeedFolder folder, FolderRun<String> run) {
    Map<String, RecipeState> states = new TreeMap<>();
    for (String path : folder.ending(".recipe")) {
      String code = new SourceFile(path, "").stem();
      FolderRun.Looked looked = run.looked(code);
      Optional<FeedFigures> figures =
          looked.feed().map(feed -> FeedFigures.of(feed, Judge.verdicts(feed)));
      states.put(
          code, new RecipeState(code, layout(folder, path), Set.copyOf(looked.reads()), figures));
    }
    return states;
  }

  /** Its words line by line: white space between them and empty lines are no change. */
  private static String layout(FeedFolder folder, String path) {
    return text(folder, path)
        .lines()
        .map(line -> line.strip().replaceAll("\\s+", " "))
        .filter(line -> !line.isEmpty())
        .collect(Collectors.joining("\n"));
  }

  private static String text(FeedFolder folder, String path) {
    return folder.read(path, new ArrayList<>()).map(SourceFile::text).orElse("");
  }

  private static Set<String> differing(FeedFolder from, FeedFolder to) {
    Map<String, String> before = texts(from);
    Map<String, String> after = texts(to);
    Set<String> paths = new TreeSet<>(before.keySet());
    paths.addAll(after.keySet());
    paths.removeIf(
        path -> Optional.ofNullable(before.get(path)).equals(Optional.ofNullable(after.get(path))));
    return paths;
  }

  private static Map<String, String> texts(FeedFolder folder) {
    Map<String, String> texts = new TreeMap<>();
    folder.data().forEach(path -> texts.put(path, text(folder, path)));
    folder.ending(".premix").forEach(path -> texts.put(path, layout(folder, path)));
    folder.ending(".limits").forEach(path -> texts.put(path, layout(folder, path)));
    return texts;
  }
}
