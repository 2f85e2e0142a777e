package dev.pellucid.engine.folder;

import dev.pellucid.engine.folder.Passed.Why;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.RecordName;
import dev.pellucid.text.Unseen;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Files of a folder while they are listed: each is taken up under its path, or passed over with
 * what is said of it, by the same rules wherever its bytes are.
 */
final class Listing {
  private final SortedMap<String, Stored> files;
  private final List<Passed> passed;

  /** A listing that begins with nothing. */
  Listing() {
    this(new TreeMap<>(), List.of());
  }

  /** A listing that goes on from another. */
  Listing(SortedMap<String, Stored> files, List<Passed> passed) {
    this.files = new TreeMap<>(files);
    this.passed = new ArrayList<>(passed);
  }

  Texts texts() {
    return new Texts(files, passed);
  }

  /** Takes away whatever was at a path. */
  void forget(String path) {
    files.remove(path);
    passed.removeIf(one -> one.path().equals(path));
  }

  /** Takes over whatever another state has at a path. */
  void take(String path, Optional<Stored> file, List<Passed> ofThere) {
    file.ifPresent(stored -> files.put(path, stored));
    ofThere.stream().filter(one -> one.path().equals(path)).forEach(passed::add);
  }

  /** A file of text at a path that is no hidden one. */
  void file(String path, Stored stored) {
    String name = Names.ofFile(path);
    Optional<NearName> near = near(name);
    boolean ours = Names.isRead(name) || near.isPresent();
    boolean record = !ours && RecordName.of(name).isPresent();
    boolean lots = !ours && Names.isTextOfLots(path);
    if ((ours || record || lots) && isUnseen(path)) {
      return;
    }
    if (Names.isRead(name)) {
      files.put(path, stored);
    } else if (near.isPresent()) {
      near(path, near.get());
    } else if (record) {
      record(path);
    } else if (lots) {
      add(path, Why.LOTS, FolderFindings.lots(path));
    }
  }

  /** A file that is not read, be it a hidden one, where it may be the record of a batch. */
  void record(String path) {
    RecordName.of(Names.ofFile(path))
        .ifPresent(of -> add(path, Why.RECORD, FolderFindings.record(path, of)));
  }

  /** Whether a name is one of ours, or looks as if it were meant to be. */
  static boolean isOurs(String name) {
    return Names.isRead(name)
        || near(name).isPresent()
        || RecordName.of(name).filter(RecordName::mayBeRecord).isPresent();
  }

  private static Optional<NearName> near(String name) {
    return Names.isRead(name) ? Optional.empty() : NearName.of(name);
  }

  void link(String path) {
    add(path, Why.LINK, FolderFindings.link(path));
  }

  void linkToFolder(String path) {
    add(path, Why.LINK, FolderFindings.linkToFolder(path));
  }

  void special(String path) {
    add(path, Why.SPECIAL, FolderFindings.special(path));
  }

  void closed(String path) {
    add(path, Why.CLOSED, FolderFindings.unreadable(path));
  }

  void closedFolder(String path) {
    add(path, Why.CLOSED, FolderFindings.unreadableFolder(path));
  }

  private void near(String path, NearName name) {
    add(path, name.copy() ? Why.COPY : Why.NEAR, FolderFindings.near(path, name));
  }

  /** Whether a path holds what cannot be seen; a folder is told once, not for each of its files. */
  private boolean isUnseen(String path) {
    int at = firstUnseen(path);
    if (at < 0) {
      return false;
    }
    int end = path.indexOf('/', at);
    String named = end < 0 ? path : path.substring(0, end);
    if (passed.stream().noneMatch(one -> one.is(named, Why.UNSEEN))) {
      add(named, Why.UNSEEN, FolderFindings.unseen(named, at));
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
    passed.add(new Passed(path, why, finding));
  }
}
