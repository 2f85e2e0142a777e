package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Keys.Holds;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.yaml.Yaml;
import dev.pellucid.engine.yaml.YamlReader;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Where in the data files of a folder the keys of the vocabulary stand, and the words that stand
 * for one of a few. A key is called by its kind of file, the block that it is of, and its name.
 */
public final class KeyPlaces {
  private final SortedMap<String, SourceFile> files;
  private final TablesState state;
  private final SortedMap<String, Span> keys = new TreeMap<>();
  private final NavigableMap<String, Span> words = new TreeMap<>();

  private KeyPlaces(SortedMap<String, SourceFile> files) {
    this.files = files;
    this.state = TablesState.empty().next(files, new TreeMap<>());
  }

  /**
   * Of some files.
   *
   * @param files by their paths below a folder
   */
  public static KeyPlaces of(SortedMap<String, SourceFile> files) {
    KeyPlaces places = new KeyPlaces(files);
    files.forEach(places::look);
    return places;
  }

  /** Every key that a data file may have. */
  public static NavigableSet<String> declared() {
    NavigableSet<String> declared = new TreeSet<>();
    for (DataFileKind kind : DataFileKind.values()) {
      declare(kind.word(), kind.keys(), declared, new HashSet<>());
    }
    return declared;
  }

  private static void declare(String kind, Keys keys, Set<String> declared, Set<String> seen) {
    if (seen.add(keys.thing())) {
      for (Key<?> key : keys.names()) {
        declared.add(id(kind, keys, key.name()));
        block(key.holds()).ifPresent(inner -> declare(kind, inner, declared, seen));
      }
      keys.others()
          .flatMap(others -> block(others.holds()))
          .ifPresent(inner -> declare(kind, inner, declared, seen));
    }
  }

  private static Optional<Keys> block(Holds holds) {
    return holds.byKind(
        text -> Optional.empty(),
        words -> Optional.empty(),
        list -> block(list.item()),
        block -> Optional.of(block.keys()));
  }

  private static String id(String kind, Keys keys, String name) {
    return kind + ": " + keys.thing() + ": " + name;
  }

  private void look(String path, SourceFile file) {
    DataFileKind.of(path)
        .ifPresent(
            kind ->
                YamlReader.read(file)
                    .root()
                    .ifPresent(root -> block(kind.word(), kind.keys(), root)));
  }

  private void block(String kind, Keys keys, Yaml node) {
    if (node instanceof Yaml.Mapping mapping) {
      for (Yaml.Entry entry : mapping.entries()) {
        Optional<Key<?>> key =
            keys.names().stream().filter(one -> one.name().equals(entry.key().text())).findFirst();
        if (key.isPresent()) {
          String id = id(kind, keys, key.get().name());
          this.keys.putIfAbsent(id, entry.key().span());
          value(id, kind, key.get().holds(), entry.value());
        } else {
          keys.others()
              .ifPresent(
                  others ->
                      value(id(kind, keys, others.what()), kind, others.holds(), entry.value()));
        }
      }
    }
  }

  private void value(String id, String kind, Holds holds, Yaml value) {
    Runnable look =
        holds.byKind(
            text -> () -> {},
            word ->
                () -> {
                  if (value instanceof Yaml.Scalar scalar && scalar.plain()) {
                    words.putIfAbsent(id, scalar.span());
                  }
                },
            list ->
                () -> {
                  if (value instanceof Yaml.Sequence sequence) {
                    sequence.items().forEach(item -> value(id, kind, list.item(), item));
                  }
                },
            block -> () -> block(kind, block.keys(), value));
    look.run();
  }

  /** Where each key stands that any of the files has. */
  public SortedMap<String, Span> keys() {
    return keys;
  }

  /** Where a word stands for one of a few, by the key that it stands behind. */
  public NavigableMap<String, Span> words() {
    return words;
  }

  /** The text of the file in which a place is, with other words in that place. */
  public String with(Span place, String other) {
    String text = place.file().text();
    return text.substring(0, place.start()) + other + text.substring(place.end());
  }

  /** What the reader says of a file when it has another text and had nothing to say before. */
  public List<Finding> said(String path, String text) {
    SortedMap<String, SourceFile> changed = new TreeMap<>(files);
    changed.put(path, new SourceFile(path, text));
    return state.next(changed, new TreeMap<>()).stocked().findings().stream()
        .filter(finding -> finding.span().file().path().equals(path))
        .toList();
  }

  /** What the reader says of the files as they are. */
  public List<Finding> said() {
    return state.stocked().findings();
  }

  public Map<String, SourceFile> files() {
    return files;
  }
}
