package dev.pellucid.engine.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is printed of a feed or premix, on its sheet and its label, so far as a comparison tells it;
 * nothing of one that must not be made.
 *
 * @param facts of the head and of the work that are told before and after, by their names
 * @param parts what each part of the sheet and of the label is made of, by its heading: not the
 *     words, which would be many, but a number that is another where anything is otherwise
 */
public record Printed(Map<String, String> facts, Map<String, Long> parts) {
  public static final Printed NONE = new Printed(Map.of(), Map.of());

  public Printed {
    facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
    parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
  }

  /**
   * What is printed otherwise.
   *
   * @param facts a sentence each: {@code shelf life 60 d -> 90 d}
   * @param parts headings of the sheet and of the label
   */
  public record Moved(List<String> facts, List<String> parts) {
    public static final Moved NONE = new Moved(List.of(), List.of());

    public Moved {
      facts = List.copyOf(facts);
      parts = List.copyOf(parts);
    }

    public boolean isNone() {
      return facts.isEmpty() && parts.isEmpty();
    }
  }

  /** Of one that is printed on one side only there is nothing to tell; its findings say why. */
  static Moved between(Printed was, Printed is) {
    if (was.equals(is) || was.parts.isEmpty() || is.parts.isEmpty()) {
      return Moved.NONE;
    }
    List<String> facts = new ArrayList<>();
    for (String name : names(was.facts, is.facts)) {
      String before = was.facts.getOrDefault(name, "none");
      String after = is.facts.getOrDefault(name, "none");
      if (!before.equals(after)) {
        facts.add(name + " " + before + " -> " + after);
      }
    }
    List<String> parts = new ArrayList<>();
    for (String heading : names(was.parts, is.parts)) {
      Long before = was.parts.get(heading);
      if (before == null || !before.equals(is.parts.get(heading))) {
        parts.add(heading);
      }
    }
    return new Moved(facts, parts);
  }

  private static Set<String> names(Map<String, ?> was, Map<String, ?> is) {
    Set<String> names = new LinkedHashSet<>(is.keySet());
    names.addAll(was.keySet());
    return names;
  }
}
