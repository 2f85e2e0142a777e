package dev.pellucid.engine.larder;

import dev.pellucid.engine.larder.Keys.Key;
import dev.pellucid.engine.yaml.Yaml;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Mapping;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.engine.yaml.Yaml.Sequence;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

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
  private final Span place;

  private Fields(Mapping mapping, Keys keys, Span place, Remarks remarks) {
    this.mapping = mapping;
    this.keys = keys;
    this.place = place;
    this.remarks = remarks;
    mapping.entries().forEach(this::sort);
    keys.names().forEach(this::require);
  }

  private Fields(Fields same, Remarks remarks) {
    this.mapping = same.mapping;
    this.keys = same.keys;
    this.place = same.place;
    this.remarks = remarks;
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
      remarks.add(KeyFindings.unknownKey(entry.key(), keys));
    }
  }

  private void require(Key key) {
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

  boolean has(String name) {
    return named.containsKey(name);
  }

  boolean isEmpty() {
    return mapping.entries().isEmpty();
  }

  /** Where the value of a key stands, or the first key where it is missing. */
  Span placeOf(String name) {
    Entry entry = named.get(name);
    return entry == null ? place : placeOf(entry.value(), entry.key().span());
  }

  /** The entries whose keys are names of things. */
  List<Entry> others() {
    return others;
  }

  Optional<Scalar> text(String name) {
    return Optional.ofNullable(named.get(name)).flatMap(this::textOf);
  }

  /** The text of any entry. */
  Optional<Scalar> textOf(Entry entry) {
    if (isBare(entry)) {
      return Optional.empty();
    }
    return scalar(entry.value(), entry.key().span());
  }

  List<Scalar> texts(String name) {
    List<Scalar> texts = new ArrayList<>();
    for (Yaml item : items(name, KeyFindings::listOfTexts)) {
      scalar(item, placeOf(name)).ifPresent(texts::add);
    }
    return texts;
  }

  /** One word of a closed list. */
  Optional<Scalar> word(String name, String what, Collection<String> words) {
    return text(name).filter(word -> isOneOf(word, what, words));
  }

  /** One of the words of an enum. */
  <E extends Enum<E>> Optional<E> oneOf(String name, String what, Class<E> type) {
    return word(name, what, Vocabulary.words(type.getEnumConstants()))
        .map(word -> Vocabulary.named(type, word.text()));
  }

  /** Words of an enum. */
  <E extends Enum<E>> List<E> allOf(String name, String what, Class<E> type) {
    return words(name, what, Vocabulary.words(type.getEnumConstants())).stream()
        .map(word -> Vocabulary.named(type, word.text()))
        .toList();
  }

  /** Words of a closed list. */
  List<Scalar> words(String name, String what, Collection<String> words) {
    return texts(name).stream().filter(word -> isOneOf(word, what, words)).toList();
  }

  Optional<Fields> block(String name, Keys inner) {
    return Optional.ofNullable(named.get(name)).flatMap(entry -> blockOf(entry, inner));
  }

  /** The block behind any entry. */
  Optional<Fields> blockOf(Entry entry, Keys inner) {
    return isBare(entry) ? Optional.empty() : of(entry.value(), inner, entry.key().span(), remarks);
  }

  List<Fields> blocks(String name, Keys inner) {
    List<Fields> blocks = new ArrayList<>();
    String shape =
        "begin each entry with a dash, as in \"  - "
            + inner.words().get(0)
            + ": \", and write its other keys below";
    for (Yaml item : items(name, found -> shape)) {
      of(item, inner, placeOf(item, placeOf(name)), remarks).ifPresent(blocks::add);
    }
    return blocks;
  }

  private List<Yaml> items(String name, Function<Yaml, String> shape) {
    Entry entry = named.get(name);
    if (entry == null || isBare(entry)) {
      return List.of();
    }
    if (entry.value() instanceof Sequence sequence) {
      return sequence.items();
    }
    remarks.add(KeyFindings.noList(placeOf(name), entry.value(), shape.apply(entry.value())));
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
