package dev.pellucid.engine.yaml;

import dev.pellucid.text.Span;
import java.util.List;

/**
 * A node of a YAML file, with its place.
 *
 * <p>YAML's own ideas of numbers, dates, yes and no are not used: a scalar is the text that stands
 * in the file, so that {@code 012} or {@code no} is never something else.
 */
public sealed interface Yaml {
  Span span();

  /**
   * One piece of text; empty where a key has no value.
   *
   * @param plain whether it stands there without quotes and on one line, so that the text and the
   *     file agree letter for letter
   * @param span with the quotes, where there are any
   */
  record Scalar(String text, boolean plain, Span span) implements Yaml {
    public boolean isEmpty() {
      return text.isEmpty();
    }
  }

  /** A list. */
  record Sequence(List<Yaml> items, Span span) implements Yaml {
    public Sequence {
      items = List.copyOf(items);
    }
  }

  /** Keys and values, in the order of the file; no key stands twice. */
  record Mapping(List<Entry> entries, Span span) implements Yaml {
    public Mapping {
      entries = List.copyOf(entries);
    }
  }

  /** One key and its value. */
  record Entry(Scalar key, Yaml value) {}
}
