package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Keys.Holds.Block;
import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Holds.Named;
import dev.pellucid.engine.data.Keys.Holds.OneText;
import dev.pellucid.engine.data.Keys.Holds.Words;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.yaml.Yaml;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Mapping;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.engine.yaml.Yaml.Sequence;
import dev.pellucid.text.NearNames;
import dev.pellucid.text.Span;
import dev.pellucid.text.ToBeGiven;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One mapping, read by its {@link Keys}: what is unknown, missing, empty or of another shape is a
 * finding, once, and reads as absent.
 */
final class Fields {
  private final Mapping mapping;
  private final Keys keys;
  private final Remarks remarks;
  private final Map<String, Entry> named = new HashMap<>();
  private final List<Entry> others = new ArrayList<>();
  private final List<Entry> unknown = new ArrayList<>();
  private final Set<Span> toBeGiven;
  private final Span place;

  private Fields(Mapping mapping, Keys keys, Span place, Remarks remarks) {
    this.mapping = mapping;
    this.keys = keys;
    this.place = place;
    this.remarks = remarks;
    this.toBeGiven = new HashSet<>();
    for (Entry entry : mapping.entries()) {
      sort(entry);
    }
    for (Entry entry : unknown) {
      take(entry);
    }
    for (Key<?> key : keys.names()) {
      require(key);
    }
  }

  private Fields(Fields same, Remarks remarks) {
    this.mapping = same.mapping;
    this.keys = same.keys;
    this.place = same.place;
    this.remarks = remarks;
    this.toBeGiven = same.toBeGiven;
    this.named.putAll(same.named);
    this.others.addAll(same.others);
  }

  /**
   * @param place where to point when a key is missing and the mapping has no key at all
   */
  static Optional<Fields> of(Yaml node, Keys keys, Span place, Remarks remarks) {
    if (node instanceof Mapping mapping) {
      Span first = mapping.entries().isEmpty() ? place : mapping.entries().get(0).key().span();
      return Optional.of(new Fields(mapping, keys, first, remarks));
    }
    remarks.add(KeyFindings.shape(placeOf(node, place), keys.thing(), node));
    return Optional.empty();
  }

  private void sort(Entry entry) {
    if (keys.has(entry.key().text())) {
      named.put(entry.key().text(), entry);
    } else if (keys.others().isPresent()) {
      others.add(entry);
    } else {
      unknown.add(entry);
    }
  }

  /**
   * A key that is none. Where it is surely a misspelt one that is missing, it is told and counts as
   * that one, so that nothing else is said to be missing because of it.
   */
  private void take(Entry entry) {
    remarks.add(KeyFindings.unknownKey(entry.key(), keys));
    List<String> near = NearNames.of(entry.key().text(), keys.words());
    if (near.size() == 1) {
      named.putIfAbsent(near.get(0), entry);
    }
  }

  private void require(Key<?> key) {
    if (key.required() && !named.containsKey(key.name())) {
      remarks.add(KeyFindings.missing(place, key, keys));
    }
  }

  /** The first key, as the place of the whole. */
  Span place() {
    return place;
  }

  Keys keys() {
    return keys;
  }

  /** Where what is wrong with it is said. */
  Remarks remarks() {
    return remarks;
  }

  /** The same, of which what is wrong is said elsewhere. */
  Fields into(Remarks elsewhere) {
    return new Fields(this, elsewhere);
  }

  /** What stands there for a key, which must be one of those by which this is read. */
  private @Nullable Entry entry(Key<?> key) {
    if (!keys.has(key)) {
      throw new IllegalArgumentException(keys.thing() + " has no such key: " + key.name());
    }
    return named.get(key.name());
  }

  boolean has(Key<?> key) {
    return entry(key) != null;
  }

  boolean isEmpty() {
    return mapping.entries().isEmpty();
  }

  /** Where the value of a key stands, or the first key where it is missing. */
  Span placeOf(Key<?> key) {
    Entry entry = entry(key);
    return entry == null ? place : placeOf(entry.value(), entry.key().span());
  }

  /** The entries whose keys are names of things. */
  List<Entry> others() {
    return others;
  }

  Optional<Scalar> text(Key<? extends OneText> key) {
    Entry entry = entry(key);
    return entry == null ? Optional.empty() : textOf(entry);
  }

  /**
   * The text behind a key; empty where a mark stands in its place, of which whoever asks has more
   * to say than that it is still to be given.
   */
  Optional<Scalar> textOrMark(Key<? extends OneText> key) {
    Entry entry = entry(key);
    return entry == null || isBare(entry)
        ? Optional.empty()
        : scalar(entry.value(), entry.key().span())
            .filter(text -> !text.plain() || !ToBeGiven.isIn(text.text()));
  }

  /** The text behind a key as a string; the other one where there is none. */
  String textOr(Key<? extends OneText> key, String otherwise) {
    Optional<Scalar> text = text(key);
    return text.isPresent() ? text.get().text() : otherwise;
  }

  /** The text behind a key as a string. */
  Optional<String> string(Key<? extends OneText> key) {
    Optional<Scalar> text = text(key);
    return text.isPresent() ? Optional.of(text.get().text()) : Optional.empty();
  }

  /** The texts of a list as strings. */
  List<String> strings(Key<? extends ListOf<? extends OneText>> key) {
    List<String> strings = new ArrayList<>();
    for (Scalar text : texts(key)) {
      strings.add(text.text());
    }
    return strings;
  }

  /** The text of any entry. */
  Optional<Scalar> textOf(Entry entry) {
    if (isBare(entry)) {
      return Optional.empty();
    }
    Optional<Scalar> text = scalar(entry.value(), entry.key().span());
    return text.isPresent() && isToBeGiven(text.get(), entry.key().text())
        ? Optional.empty()
        : text;
  }

  /** A mark in place of a value, which a person is still to write; told once, and absent. */
  private boolean isToBeGiven(Scalar value, String key) {
    boolean marked = value.plain() && ToBeGiven.isIn(value.text());
    if (marked && toBeGiven.add(value.span())) {
      remarks.add(KeyFindings.toBeGiven(value, key, !keys.has(key) && tellsContents()));
    }
    return marked;
  }

  /** Whether its other keys are names of what can be none, as contents are and prices are not. */
  private boolean tellsContents() {
    return keys.others().filter(one -> !one.holds().equals(Vocabulary.AMOUNT)).isPresent();
  }

  List<Scalar> texts(Key<? extends ListOf<? extends OneText>> key) {
    List<Scalar> texts = new ArrayList<>();
    for (Yaml item : items(key)) {
      Optional<Scalar> text = scalar(item, placeOf(key));
      if (text.isPresent() && !isToBeGiven(text.get(), key.name())) {
        texts.add(text.get());
      }
    }
    return texts;
  }

  /** One word of a closed list. */
  Optional<Scalar> word(Key<? extends Words> key, String what) {
    Optional<Scalar> word = text(key);
    return word.isPresent() && isOneOf(word.get(), what, key.holds().words())
        ? word
        : Optional.empty();
  }

  /** One of the words of an enum. */
  <E extends Enum<E>> Optional<E> oneOf(Key<Named<E>> key, String what) {
    Optional<Scalar> word = word(key, what);
    return word.isPresent()
        ? Optional.of(Vocabulary.named(key.holds().type(), word.get().text()))
        : Optional.empty();
  }

  /** Words of an enum. */
  <E extends Enum<E>> List<E> allOf(Key<ListOf<Named<E>>> key, String what) {
    List<E> values = new ArrayList<>();
    for (Scalar word : words(key, what)) {
      values.add(Vocabulary.named(key.holds().item().type(), word.text()));
    }
    return values;
  }

  /** Words of a closed list. */
  List<Scalar> words(Key<? extends ListOf<? extends Words>> key, String what) {
    List<String> words = key.holds().item().words();
    List<Scalar> known = new ArrayList<>();
    for (Scalar word : texts(key)) {
      if (isOneOf(word, what, words)) {
        known.add(word);
      }
    }
    return known;
  }

  Optional<Fields> block(Key<Block> key) {
    Entry entry = entry(key);
    return entry == null ? Optional.empty() : blockOf(entry, key.holds().keys());
  }

  /** The block behind any entry. */
  Optional<Fields> blockOf(Entry entry, Keys inner) {
    return isBare(entry) ? Optional.empty() : of(entry.value(), inner, entry.key().span(), remarks);
  }

  List<Fields> blocks(Key<ListOf<Block>> key) {
    Keys inner = key.holds().item().keys();
    List<Fields> blocks = new ArrayList<>();
    for (Yaml item : items(key)) {
      Optional<Fields> block = of(item, inner, placeOf(item, placeOf(key)), remarks);
      if (block.isPresent()) {
        blocks.add(block.get());
      }
    }
    return blocks;
  }

  private List<Yaml> items(Key<? extends ListOf<?>> key) {
    Entry entry = entry(key);
    if (entry == null || isBare(entry)) {
      return List.of();
    }
    if (entry.value() instanceof Sequence sequence) {
      return sequence.items();
    }
    remarks.add(KeyFindings.noList(placeOf(key), entry.value(), key.holds()));
    return List.of();
  }

  private boolean isBare(Entry entry) {
    if (entry.value() instanceof Scalar text && text.text().isBlank()) {
      remarks.add(KeyFindings.empty(entry.key()));
      return true;
    }
    return false;
  }

  private Optional<Scalar> scalar(Yaml node, Span otherwise) {
    if (node instanceof Scalar text) {
      if (text.text().isBlank()) {
        remarks.add(KeyFindings.emptyItem(placeOf(node, otherwise)));
        return Optional.empty();
      }
      return Optional.of(text);
    }
    remarks.add(KeyFindings.shape(placeOf(node, otherwise), "text", node));
    return Optional.empty();
  }

  private boolean isOneOf(Scalar word, String what, Collection<String> words) {
    boolean known = words.contains(word.text());
    if (!known) {
      remarks.add(KeyFindings.unknownWord(word, what, words));
    }
    return known;
  }

  /** Blocks are long; their first line is place enough. */
  private static Span placeOf(Yaml node, Span otherwise) {
    Span span = node.span();
    if (span.start() == span.end()) {
      return otherwise;
    }
    String text = span.text();
    int end = 0;
    while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
      end++;
    }
    return span.file()
        .span(span.start(), span.start() + text.substring(0, end).stripTrailing().length());
  }
}
