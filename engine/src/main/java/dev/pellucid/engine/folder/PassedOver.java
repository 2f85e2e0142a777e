package dev.pellucid.engine.folder;

import dev.pellucid.engine.folder.Passed.Why;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Unseen;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** What is passed over while a folder or an archive is listed, each with what is said of it. */
final class PassedOver {
  private final String prefix;
  private final List<Passed> all = new ArrayList<>();

  /** Of a copy, the path of what it is a copy of. */
  private final Map<String, String> originals = new HashMap<>();

  /** Names with characters that cannot be seen, of which a finding has spoken. */
  private final Set<String> told = new HashSet<>();

  /**
   * @param prefix what is printed before each path
   */
  PassedOver(String prefix) {
    this.prefix = prefix;
  }

  List<Finding> findings() {
    return all.stream().map(Passed::finding).toList();
  }

  /** In the order of their paths, without the copies that lie beside what they are copies of. */
  List<Passed> lost(Predicate<String> there) {
    return all.stream()
        .filter(one -> one.why() != Why.COPY || !there.test(originals.getOrDefault(one.path(), "")))
        .sorted(Comparator.comparing(Passed::path))
        .toList();
  }

  boolean isLink(String path) {
    return all.stream().anyMatch(one -> one.why() == Why.LINK && one.path().equals(path));
  }

  void link(String path) {
    add(path, Why.LINK, FolderFindings.link(prefix + path));
  }

  void linkToFolder(String path) {
    add(path, Why.LINK, FolderFindings.linkToFolder(prefix + path, settings()));
  }

  void special(String path) {
    add(path, Why.SPECIAL, FolderFindings.special(prefix + path));
  }

  void closed(String path) {
    add(path, Why.CLOSED, FolderFindings.unreadable(prefix + path));
  }

  void closedFolder(String path) {
    add(path, Why.CLOSED, FolderFindings.unreadableFolder(prefix + path, settings()));
  }

  void near(String path, NearName name) {
    if (name.copy()) {
      originals.put(path, path.substring(0, path.lastIndexOf('/') + 1) + name.meant());
    }
    add(path, name.copy() ? Why.COPY : Why.NEAR, FolderFindings.near(prefix + path, name));
  }

  /** Whether a path holds what cannot be seen; a folder is told once, not for each of its files. */
  boolean unseen(String path) {
    int at = firstUnseen(path);
    if (at < 0) {
      return false;
    }
    int end = path.indexOf('/', at);
    String named = end < 0 ? path : path.substring(0, end);
    if (told.add(named)) {
      add(named, Why.UNSEEN, FolderFindings.unseen(prefix + named, prefix.length() + at));
    }
    return true;
  }

  /** Where a path has a character that cannot be seen, line ends and tabs among them; or -1. */
  private static int firstUnseen(String path) {
    for (int at = 0; at < path.length(); at++) {
      if ("\t\r\n".indexOf(path.charAt(at)) >= 0) {
        return at;
      }
    }
    return Unseen.find(path, 0);
  }

  private void add(String path, Why why, Finding finding) {
    all.add(new Passed(path, why, finding));
  }

  private String settings() {
    return prefix + FeedFolder.SETTINGS;
  }
}
