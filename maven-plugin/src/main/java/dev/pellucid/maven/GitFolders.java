package dev.pellucid.maven;

import dev.pellucid.engine.folder.Committed;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * The files of a folder in many commits: each folder and each file of the repository is read once,
 * however many commits have it, and those of one depth together.
 */
final class GitFolders {
  private static final String POM = "pom.xml";

  /** Folders that lie deeper are none of ours. */
  private static final int DEEPEST = 64;

  private final Git git;
  private final Map<String, List<GitObject.Entry>> folders = new HashMap<>();
  private final Map<String, Committed> files = new HashMap<>();
  private final Map<String, String> poms = new HashMap<>();

  GitFolders(Git git) {
    this.git = git;
  }

  /**
   * What a commit has.
   *
   * @param pom text of the POM that lies there
   * @param whole whether all that was wanted is in the repository
   */
  record Files(List<Committed> committed, Optional<String> pom, boolean whole) {
    Files {
      committed = List.copyOf(committed);
    }
  }

  private record Place(String path, GitObject.Entry entry) {
    /** A file may be the same in two places, and is not the same text there. */
    String key() {
      return entry.id() + " " + path;
    }
  }

  /**
   * The files of some folders.
   *
   * @param roots full names of trees, by anything
   * @param read which files are wanted, by their paths
   * @throws GitTrouble where git cannot be asked
   * @throws IOException where its answer is not whole
   */
  Map<String, Files> of(Map<String, String> roots, Predicate<String> read) throws IOException {
    descend(roots.values());
    Map<String, List<Place>> places = new LinkedHashMap<>();
    for (Map.Entry<String, String> root : roots.entrySet()) {
      List<Place> found = new ArrayList<>();
      list(root.getValue(), "", 0, read, found);
      places.put(root.getKey(), found);
    }
    fetch(places.values());
    Map<String, Files> files = new HashMap<>();
    places.forEach((commit, found) -> files.put(commit, files(found)));
    return files;
  }

  private void descend(Collection<String> roots) throws IOException {
    Set<String> left = new HashSet<>(roots);
    for (int depth = 0; depth < DEEPEST && !left.isEmpty(); depth++) {
      left.removeAll(folders.keySet());
      Set<String> below = new HashSet<>();
      for (GitObject folder : GitObject.of(git, left).values()) {
        List<GitObject.Entry> entries = folder.is("tree") ? folder.entries() : List.of();
        folders.put(folder.name(), entries);
      }
      for (String one : left) {
        for (GitObject.Entry entry : folders.getOrDefault(one, List.of())) {
          if (entry.isFolder() && !Committed.isPassedOver(entry.name())) {
            below.add(entry.id());
          }
        }
      }
      left = below;
    }
  }

  private void list(
      String folder, String before, int depth, Predicate<String> read, List<Place> found) {
    if (depth >= DEEPEST) {
      return;
    }
    for (GitObject.Entry entry : folders.getOrDefault(folder, List.of())) {
      String path = before + entry.name();
      if (entry.isFolder() && !Committed.isPassedOver(entry.name())) {
        list(entry.id(), path + "/", depth + 1, read, found);
      } else if ((entry.isFile() || entry.isLink()) && isWanted(path, read)) {
        found.add(new Place(path, entry));
      }
    }
  }

  private static boolean isWanted(String path, Predicate<String> read) {
    return path.equals(POM) || (Committed.isRead(path) && read.test(path));
  }

  private void fetch(Collection<List<Place>> places) throws IOException {
    Map<String, Place> left = new LinkedHashMap<>();
    for (List<Place> found : places) {
      for (Place one : found) {
        if (one.entry().isLink()) {
          files.putIfAbsent(one.key(), Committed.link(one.path()));
        } else if (!files.containsKey(one.key()) && !poms.containsKey(one.key())) {
          left.put(one.key(), one);
        }
      }
    }
    Set<String> names = new HashSet<>();
    left.values().forEach(one -> names.add(one.entry().id()));
    Map<String, GitObject> contents = GitObject.of(git, names);
    for (Place one : left.values()) {
      GitObject content = contents.get(one.entry().id());
      if (content != null && one.path().equals(POM)) {
        poms.put(one.key(), content.text());
      } else if (content != null) {
        files.put(one.key(), content.at(one.path()));
      }
    }
  }

  private Files files(List<Place> places) {
    List<Committed> committed = new ArrayList<>();
    Optional<String> pom = Optional.empty();
    boolean whole = true;
    for (Place one : places) {
      @Nullable Committed file = files.get(one.key());
      if (one.path().equals(POM)) {
        pom = Optional.ofNullable(poms.get(one.key()));
      } else if (file == null) {
        whole = false;
      } else {
        committed.add(file);
      }
    }
    return new Files(committed, pom, whole);
  }
}
