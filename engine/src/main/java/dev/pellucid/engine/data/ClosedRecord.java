package dev.pellucid.engine.data;

import dev.pellucid.engine.yaml.Yaml;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Mapping;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.engine.yaml.Yaml.Sequence;
import dev.pellucid.engine.yaml.YamlReader;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The part of a batch record that is closed once the batch is released: everything but what has a
 * day and a name of its own and is written later. It is held against an earlier text of the same
 * record key by key, as it is written, so that it hangs on nothing else of the folder. Layout,
 * comments and zeros behind a figure are no change.
 */
public final class ClosedRecord {
  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(?:\\.[0-9]+)?");

  private final SourceFile file;
  private final Map<String, Leaf> leaves = new LinkedHashMap<>();
  private final boolean closed;

  /**
   * One piece of text.
   *
   * @param top the key at the top that it stands under
   * @param item the line or the like that it belongs to; empty where to none
   * @param key its own
   */
  private record Leaf(String top, String item, String key, String text, Span span) {
    boolean isLike(Leaf other) {
      return plain(text).equals(plain(other.text));
    }
  }

  /**
   * Something that is otherwise than it was.
   *
   * @param names by which a correction may call it: its line, its keys
   * @param what it is, in words
   * @param was empty where it was not there
   * @param is empty where it is no longer there
   * @param place where it stands, or the record where it does not
   */
  public record Change(List<String> names, String what, String was, String is, Span place) {
    public Change {
      names = List.copyOf(names);
    }

    /** Whether it is called so, and was so. */
    public boolean isMeant(Optional<String> line, Optional<String> before) {
      return (line.isEmpty() || names.contains(line.get()))
          && (before.isEmpty() || plain(before.get()).equals(plain(was)));
    }
  }

  private ClosedRecord(SourceFile file) {
    this.file = file;
    Optional<Mapping> root = YamlReader.read(file).root().flatMap(ClosedRecord::mapping);
    this.closed =
        root.filter(ClosedRecord::isReleased).filter(ClosedRecord::tellsState).isPresent();
    root.ifPresent(
        all -> {
          for (Entry entry : all.entries()) {
            if (!isLater(entry.key().text())) {
              take(entry.key().text(), "", entry.key().text(), entry.value());
            }
          }
        });
  }

  /** A text of a record. */
  public static ClosedRecord of(SourceFile file) {
    return new ClosedRecord(file);
  }

  /**
   * Whether the batch was released in it, then or by a later decision, and it says what it was made
   * from. A record that does not was kept before anybody held records to their day.
   */
  public boolean isClosed() {
    return closed;
  }

  private static boolean tellsState(Mapping root) {
    return value(root, BatchVocabulary.MADE_FROM.name()).isPresent();
  }

  private static boolean isReleased(Mapping root) {
    return value(root, BatchVocabulary.RELEASE.name()).filter(ClosedRecord::decides).isPresent()
        || value(root, SinceVocabulary.DECIDED_LATER.name())
            .flatMap(ClosedRecord::sequence)
            .filter(all -> all.items().stream().anyMatch(ClosedRecord::decides))
            .isPresent();
  }

  private static boolean decides(Yaml node) {
    return mapping(node)
        .flatMap(one -> value(one, BatchVocabulary.RELEASE_DECISION.name()))
        .flatMap(ClosedRecord::scalar)
        .filter(word -> word.text().equals("released"))
        .isPresent();
  }

  private static boolean isLater(String key) {
    return SinceVocabulary.isLater(key) || key.equals(BatchVocabulary.CLOSED.name());
  }

  private static Optional<Yaml> value(Mapping mapping, String key) {
    return mapping.entries().stream()
        .filter(entry -> entry.key().text().equals(key))
        .map(Entry::value)
        .findFirst();
  }

  private static Optional<Mapping> mapping(Yaml node) {
    return node instanceof Mapping one ? Optional.of(one) : Optional.empty();
  }

  private static Optional<Sequence> sequence(Yaml node) {
    return node instanceof Sequence one ? Optional.of(one) : Optional.empty();
  }

  private static Optional<Scalar> scalar(Yaml node) {
    return node instanceof Scalar one ? Optional.of(one) : Optional.empty();
  }

  private void take(String top, String item, String key, Yaml node) {
    scalar(node)
        .ifPresent(
            one ->
                leaves.put(
                    top + "\n" + item + "\n" + key,
                    new Leaf(top, item, key, one.text(), node.span())));
    mapping(node)
        .ifPresent(
            all -> all.entries().forEach(one -> take(top, item, one.key().text(), one.value())));
    sequence(node).ifPresent(all -> items(top, all));
  }

  /** Each is called by what it names first, or by its number; a second one of a name by both. */
  private void items(String top, Sequence all) {
    Map<String, Integer> seen = new HashMap<>();
    int number = 0;
    for (Yaml one : all.items()) {
      number++;
      String name = mapping(one).flatMap(ClosedRecord::first).orElse("the " + number + ".");
      int times = seen.merge(name, 1, Integer::sum);
      take(top, times == 1 ? name : name + " (" + times + ".)", top, one);
    }
  }

  private static Optional<String> first(Mapping item) {
    return item.entries().isEmpty()
        ? Optional.empty()
        : scalar(item.entries().get(0).value()).map(Scalar::text);
  }

  /** What is otherwise here than in an earlier text. */
  public List<Change> since(ClosedRecord then) {
    List<Change> changes = new ArrayList<>();
    Set<String> told = new TreeSet<>();
    for (Map.Entry<String, Leaf> leaf : leaves.entrySet()) {
      Leaf before = then.leaves.get(leaf.getKey());
      Leaf now = leaf.getValue();
      if (before == null && told.add(group(now))) {
        boolean isNew = then.leaves.values().stream().noneMatch(it -> group(it).equals(group(now)));
        changes.add(isNew ? whole(now, "", words(now), now.span()) : one(now, "", now.text()));
      } else if (before != null && !now.isLike(before)) {
        changes.add(one(now, before.text(), now.text()));
      }
    }
    for (Map.Entry<String, Leaf> leaf : then.leaves.entrySet()) {
      Leaf before = leaf.getValue();
      if (!leaves.containsKey(leaf.getKey()) && told.add("no longer " + group(before))) {
        boolean isGone = leaves.values().stream().noneMatch(it -> group(it).equals(group(before)));
        changes.add(
            isGone
                ? whole(before, then.words(before), "", placeOf(before.top()))
                : new Change(
                    names(before), what(before), before.text(), "", placeOf(before.top())));
      }
    }
    return changes;
  }

  /** What is there or gone together: a line of a list, or all of a key. */
  private static String group(Leaf leaf) {
    return leaf.top() + "\n" + leaf.item();
  }

  private Change one(Leaf leaf, String was, String is) {
    return new Change(names(leaf), what(leaf), was, is, leaf.span());
  }

  private static Change whole(Leaf leaf, String was, String is, Span place) {
    String what = leaf.item().isEmpty() ? leaf.top() : leaf.top() + " of " + leaf.item();
    return new Change(names(leaf), what, was, is, place);
  }

  private static List<String> names(Leaf leaf) {
    return List.of(leaf.item(), leaf.top(), leaf.key());
  }

  private static String what(Leaf leaf) {
    if (leaf.item().isEmpty()) {
      return leaf.top().equals(leaf.key()) ? leaf.key() : leaf.top() + " " + leaf.key();
    }
    return leaf.top().equals(leaf.key())
        ? leaf.top() + ", " + leaf.item()
        : leaf.key() + " of " + leaf.item();
  }

  /** All that belongs to the same line or key, as one text. */
  private String words(Leaf of) {
    List<String> words = new ArrayList<>();
    for (Leaf leaf : leaves.values()) {
      if (group(leaf).equals(group(of))) {
        words.add(leaf.key().equals(leaf.top()) ? leaf.text() : leaf.key() + " " + leaf.text());
      }
    }
    return String.join(", ", words);
  }

  private Span placeOf(String top) {
    return leaves.values().stream()
        .filter(leaf -> leaf.top().equals(top))
        .map(Leaf::span)
        .findFirst()
        .orElse(file.beginning());
  }

  /** With every number in its shortest form. */
  private static String plain(String text) {
    Matcher number = NUMBER.matcher(text.strip());
    return number.replaceAll(it -> new BigDecimal(it.group()).stripTrailingZeros().toPlainString());
  }
}
