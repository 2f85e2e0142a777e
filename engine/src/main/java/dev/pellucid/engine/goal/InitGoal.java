package dev.pellucid.engine.goal;

import dev.pellucid.engine.folder.Ground;
import dev.pellucid.engine.folder.StarterTexts;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.starter.Plan;
import dev.pellucid.engine.starter.Starter;
import dev.pellucid.engine.starter.StarterFile;
import dev.pellucid.engine.starter.Templates;
import dev.pellucid.engine.starter.WishReader;
import dev.pellucid.engine.starter.Wishes;
import dev.pellucid.text.Choices;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Begins a folder of feeds: what files it gets, given what stands there. A folder that has feeds
 * gets only what belongs round them, so that nothing of a person's is joined by what was not asked
 * for.
 */
public final class InitGoal {
  private static final List<String> FEEDS = List.of(".recipe", ".premix");

  private static final List<String> WISHES = List.of("species", "jurisdiction", "currency", "name");

  private final Path root;
  private final Ground ground;

  private InitGoal(Path root) {
    this.root = root;
    this.ground = Ground.at(root);
  }

  /**
   * What a folder would get; writes nothing.
   *
   * @param typed what is wished, in words, by the name of the parameter behind {@code pellucid.}
   * @param version of the plugin that the folder is tied to
   * @throws IOException where the disk fails
   */
  public static InitReport of(Path root, Map<String, String> typed, LocalDate day, String version)
      throws IOException {
    return new InitGoal(root).planned(typed, day, version);
  }

  private InitReport planned(Map<String, String> typed, LocalDate day, String version)
      throws IOException {
    Templates templates = new Templates(StarterTexts.all());
    WishReader.Read read = new WishReader(templates.species()).read(typed(typed), day, version);
    List<String> problems = new ArrayList<>(read.slips());
    ground.closed().ifPresent(problems::add);
    if (ground.closed().isEmpty()) {
      elsewhere().ifPresent(problems::add);
    }
    if (!problems.isEmpty() || read.wishes().isEmpty()) {
      return InitReport.refused(problems);
    }
    return planned(templates, read.wishes().get(), typed);
  }

  private WishReader.Typed typed(Map<String, String> typed) {
    return new WishReader.Typed(
        asked(typed, "species"),
        asked(typed, "jurisdiction"),
        asked(typed, "currency"),
        asked(typed, "name"),
        ground.name());
  }

  /** A folder of feeds holds none within. */
  private Optional<String> elsewhere() throws IOException {
    Optional<Path> above = ground.feedsAbove();
    if (above.isPresent()) {
      return Optional.of(
          root
              + " lies in the folder of feeds "
              + above.get()
              + ", and a folder of feeds holds no other; begin one beside it");
    }
    return Texts.at(root).paths().stream()
        .filter(path -> path.endsWith("/" + Texts.SETTINGS))
        .findFirst()
        .map(
            path ->
                "below "
                    + root
                    + " is a folder of feeds already, with "
                    + path
                    + "; work there, or begin one beside it");
  }

  private InitReport planned(Templates templates, Wishes wishes, Map<String, String> typed)
      throws IOException {
    boolean begins = !ground.has(Texts.SETTINGS) && !hasFeeds();
    List<StarterFile> files =
        begins ? Starter.whole(templates, wishes) : Starter.aroundFeeds(templates, wishes);
    List<String> problems = blocked(files);
    return problems.isEmpty()
        ? InitReport.of(new Plan(wishes, files, begins, notes(begins, typed, templates)))
        : InitReport.refused(problems);
  }

  private boolean hasFeeds() throws IOException {
    Texts texts = Texts.at(root);
    return FEEDS.stream().anyMatch(kind -> !texts.ending(kind).isEmpty());
  }

  private List<String> blocked(List<StarterFile> files) {
    return files.stream()
        .flatMap(file -> ground.inTheWay(file.path()).stream())
        .distinct()
        .map(
            file ->
                file
                    + " stands where a folder is to be; call it otherwise, then run the goal again")
        .toList();
  }

  private List<String> notes(boolean begins, Map<String, String> typed, Templates templates) {
    List<String> notes = new ArrayList<>();
    List<String> untyped = WISHES.stream().filter(wish -> asked(typed, wish).isEmpty()).toList();
    if (begins && untyped.contains("species")) {
      notes.add(
          "no species was named; with -Dpellucid.species=... in an empty folder there are feeds for "
              + Choices.of(templates.species()));
    }
    if (!begins && untyped.size() < WISHES.size()) {
      notes.add(
          "what was wished of a folder that begins was not heeded; pellucid.yaml says what this one"
              + " is, and its recipes say of which species");
    }
    ground
        .repositoryAbove()
        .ifPresent(
            above ->
                notes.add(
                    "build servers read their files at the root of the repository only: move"
                        + " .github and .gitlab-ci.yml to "
                        + above
                        + ", and say in them where FEEDS are"));
    return notes;
  }

  private static String asked(Map<String, String> typed, String wish) {
    return typed.getOrDefault(wish, "").strip();
  }
}
