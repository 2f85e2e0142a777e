package dev.pellucid.maven;

import dev.pellucid.engine.folder.Past;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.goal.FolderState;
import java.io.IOException;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * How a folder was in the commits of its repository. Git is first asked when somebody wants to
 * know, and then in a few calls, however many commits it is about. What git cannot tell is told in
 * words: a shallow clone, a commit that is gone, a folder that had another place.
 */
final class GitPast implements Past {
  private static final String UNSHALLOW =
      "git fetch --unshallow, on a build server the setting that checks out the whole history";

  private final Git git;
  private final String tip;
  private final ThenData data;
  private final GitFolders folders;
  private final Map<String, Optional<String>> roots = new TreeMap<>();
  private final Map<String, String> gone = new TreeMap<>();
  private @Nullable Place place;

  /**
   * @param tip the commit that is looked back from
   * @param data what came along with the plugin of a commit
   */
  GitPast(Git git, String tip, ThenData data) {
    this.git = git;
    this.tip = tip;
    this.data = data;
    this.folders = new GitFolders(git);
  }

  /** What came along with the version of the plugin that a POM asks for. */
  interface ThenData {
    /**
     * A folder with the data of then under it.
     *
     * @throws IOException where they are not whole
     */
    WithData under(FolderState folder, Optional<String> pom) throws IOException;
  }

  /**
   * A folder with data under it.
   *
   * @param doubt why they may be others than then; empty for none
   */
  record WithData(FolderState folder, String doubt) {}

  /**
   * Where the folder lies in its repository.
   *
   * @param below with a slash at its end; empty for the repository itself
   * @param trouble why nothing is known; empty where something is
   */
  private record Place(String below, boolean isShallow, String trouble) {}

  private Place place() {
    Place known = place;
    if (known == null) {
      known = find();
      place = known;
    }
    return known;
  }

  private Place find() {
    try {
      String said =
          git.saidOfRepository(
              "rev-parse", "--is-inside-work-tree", "--is-shallow-repository", "--show-prefix");
      String[] lines = said.split("\n", -1);
      if (!lines[0].equals("true") || lines.length < 2) {
        return new Place("", false, "the folder is not among the files of a repository");
      }
      String below = lines.length > 2 ? lines[2] : "";
      return lines.length > 3
          ? new Place("", false, "the name of the folder goes over several lines")
          : NamedState.holdsFolder(git, tip)
              ? new Place(below, lines[1].equals("true"), "")
              : new Place("", false, "the folder was never committed");
    } catch (GitTrouble trouble) {
      return new Place("", false, words(trouble));
    }
  }

  private static String words(IOException trouble) {
    String words = trouble.getMessage();
    return words == null ? "git gave no answer" : words;
  }

  @Override
  public boolean isKept() {
    return place().trouble().isEmpty();
  }

  @Override
  public Map<String, Then> at(Collection<String> commits, Predicate<String> read) {
    Map<String, Then> then = new HashMap<>();
    Place here = place();
    if (!here.trouble().isEmpty()) {
      commits.forEach(one -> then.put(one, Then.gone(here.trouble(), "")));
      return then;
    }
    try {
      find(commits, here);
      Map<String, String> there = new TreeMap<>();
      for (String commit : commits) {
        Optional<String> root = roots.getOrDefault(commit, Optional.empty());
        root.ifPresentOrElse(
            one -> there.put(commit, one), () -> then.put(commit, gone(commit, here)));
      }
      for (Map.Entry<String, GitFolders.Files> each : folders.of(there, read).entrySet()) {
        then.put(each.getKey(), then(each.getValue()));
      }
    } catch (IOException trouble) {
      commits.forEach(one -> then.putIfAbsent(one, Then.gone(words(trouble), "")));
    }
    return then;
  }

  private Then gone(String commit, Place here) {
    String why = gone.getOrDefault(commit, "");
    return Then.gone(why, here.isShallow() && why.contains("clone") ? UNSHALLOW : "");
  }

  /** Finds the folder in each commit that was not asked for before. */
  private void find(Collection<String> commits, Place here) throws IOException {
    Set<String> asked = new LinkedHashSet<>();
    for (String commit : commits) {
      if (!roots.containsKey(commit)) {
        asked.add(commit(commit));
        asked.add(root(commit, here));
      }
    }
    Map<String, GitObject> there = GitObject.of(git, asked);
    for (String commit : commits) {
      if (!roots.containsKey(commit)) {
        GitObject root = there.get(root(commit, here));
        roots.put(
            commit, Optional.ofNullable(root).filter(it -> it.is("tree")).map(GitObject::name));
        gone.put(commit, why(there.containsKey(commit(commit)), here));
      }
    }
  }

  private static String why(boolean isThere, Place here) {
    if (isThere) {
      return "the folder had another place then, or was not there yet";
    }
    return here.isShallow()
        ? "the history of this clone ends early, and what they were made from lies before"
        : "the commit is not in this clone: it was rewritten, or never came here";
  }

  private static String commit(String commit) {
    return commit + "^{commit}";
  }

  private static String root(String commit, Place here) {
    return here.below().isEmpty()
        ? commit + "^{tree}"
        : commit(commit) + ":" + here.below().substring(0, here.below().length() - 1);
  }

  private Then then(GitFolders.Files files) throws IOException {
    if (!files.whole()) {
      return Then.gone("files of that commit are not in this clone", "git fetch --refetch");
    }
    FolderState folder = FolderState.of(Texts.committed(files.committed()));
    WithData withData = data.under(folder, files.pom());
    return withData.folder().open(texts -> new Then(Optional.of(texts), withData.doubt(), ""));
  }

  @Override
  public History history(String folder) {
    Place here = place();
    if (!here.trouble().isEmpty()) {
      return History.NONE;
    }
    try {
      String doubt = here.isShallow() ? "the history of this clone ends early" : "";
      return new History(written(folder, here), doubt);
    } catch (IOException trouble) {
      return new History(List.of(), words(trouble));
    }
  }

  private List<Written> written(String folder, Place here) throws IOException {
    String commits =
        git.said("rev-list", "--topo-order", "--reverse", "--full-history", tip, "--", folder)
            .orElse("");
    return commits.isEmpty()
        ? List.of()
        : new GitHistory(git, here.below()).of(folder, commits.lines().toList());
  }
}
