package dev.pellucid.engine.workspace;

import dev.pellucid.engine.folder.Past;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;

/** A folder with a commit for each state that it had, in memory, and a count of what is asked. */
final class WrittenHistory implements Past {
  private final List<String> names = new ArrayList<>();
  private final Map<String, Texts> states = new TreeMap<>();
  private Texts now;
  private int asked;

  WrittenHistory(Texts first) {
    this.now = first.knowing(this);
  }

  /** The files as they lie there. */
  Texts now() {
    return now;
  }

  String text(String path) {
    return now.read(path, new ArrayList<>()).map(SourceFile::text).orElse("");
  }

  void write(String path, String text) {
    now = now.over(Map.of(path, text));
  }

  void remove(String path) {
    now = now.without(List.of(path));
  }

  /** Puts one text in the place of another that must be there. */
  void change(String path, String was, String is) {
    String text = text(path);
    if (!text.contains(was)) {
      throw new IllegalArgumentException(was + " is not in " + path);
    }
    write(path, text.replace(was, is));
  }

  /** Commits what lies there; its short name. */
  String commit() {
    String name = String.format("c0ffee%06x", names.size());
    names.add(name);
    states.put(name, now);
    return name;
  }

  /** As of a clone that has not got some commits. */
  void forget(String commit) {
    states.remove(commit);
    names.remove(commit);
  }

  int asked() {
    return asked;
  }

  @Override
  public boolean isKept() {
    return true;
  }

  @Override
  public Map<String, Then> at(Collection<String> commits, Predicate<String> read) {
    asked++;
    Map<String, Then> then = new HashMap<>();
    for (String commit : commits) {
      Texts texts = states.get(commit);
      then.put(
          commit,
          texts == null
              ? Then.gone("the commits are not in this clone", "git fetch --unshallow")
              : Then.of(texts.without(texts.paths().stream().filter(read.negate()).toList())));
    }
    return then;
  }

  @Override
  public History history(String place) {
    List<Written> written = new ArrayList<>();
    Map<String, String> before = new HashMap<>();
    for (String name : names) {
      Map<String, String> after = new TreeMap<>();
      Texts state = Objects.requireNonNull(states.get(name));
      for (String path : state.paths()) {
        if (path.startsWith(place + "/")) {
          after.put(path, state.read(path, new ArrayList<>()).map(SourceFile::text).orElse(""));
        }
      }
      TreeSet<String> paths = new TreeSet<>(before.keySet());
      paths.addAll(after.keySet());
      for (String path : paths) {
        if (!Optional.ofNullable(before.get(path)).equals(Optional.ofNullable(after.get(path)))) {
          written.add(new Written(path, name, Optional.ofNullable(after.get(path))));
        }
      }
      before = after;
    }
    return new History(written, "");
  }
}
