package dev.pellucid.parse;

import dev.pellucid.syntax.FeedFile;
import dev.pellucid.syntax.HeadLine;
import dev.pellucid.syntax.Section;
import dev.pellucid.text.Span;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** What a tree says, line by line and without places, for two trees to be compared. */
final class TreeText {
  private static final ClassValue<RecordComponent[]> COMPONENTS =
      new ClassValue<>() {
        @Override
        protected RecordComponent[] computeValue(Class<?> type) {
          return type.getRecordComponents();
        }
      };

  private TreeText() {}

  /** Each line that was read, by its number: the section it is in and what it says. */
  static SortedMap<Integer, String> byLine(FeedFile file) {
    SortedMap<Integer, String> lines = new TreeMap<>();
    file.opening().ifPresent(opening -> put(lines, "opening", opening));
    for (HeadLine line : file.head()) {
      put(lines, "head", line);
    }
    for (RecordComponent component : COMPONENTS.get(file.getClass())) {
      if (value(file, component) instanceof Optional<?> optional
          && optional.isPresent()
          && optional.get() instanceof Section<?> section) {
        section.lines().forEach(line -> put(lines, component.getName(), line));
      }
    }
    return lines;
  }

  /** Every record in a tree, parents before children. */
  static List<Object> nodes(Object value) {
    List<Object> nodes = new ArrayList<>();
    gather(value, nodes);
    return nodes;
  }

  private static void put(SortedMap<Integer, String> lines, String section, Object line) {
    lines.put(span(line).from().line(), section + " " + say(line));
  }

  static Span span(Object node) {
    for (RecordComponent component : COMPONENTS.get(node.getClass())) {
      if (component.getName().equals("span")) {
        return (Span) value(node, component);
      }
    }
    throw new IllegalStateException("no span in " + node);
  }

  static boolean hasSpan(Object node) {
    for (RecordComponent component : COMPONENTS.get(node.getClass())) {
      if (component.getName().equals("span")) {
        return true;
      }
    }
    return false;
  }

  private static String say(Object value) {
    if (value instanceof Optional<?> optional) {
      return optional.map(TreeText::say).orElse("-");
    }
    if (value instanceof List<?> list) {
      return list.stream().map(TreeText::say).toList().toString();
    }
    if (!(value instanceof Record)) {
      return value.toString();
    }
    StringBuilder out = new StringBuilder(value.getClass().getSimpleName()).append('(');
    for (RecordComponent component : COMPONENTS.get(value.getClass())) {
      if (component.getType() != Span.class) {
        out.append(say(value(value, component))).append(' ');
      }
    }
    return out.append(')').toString();
  }

  private static void gather(Object value, List<Object> nodes) {
    if (value instanceof Optional<?> optional) {
      optional.ifPresent(inside -> gather(inside, nodes));
    } else if (value instanceof List<?> list) {
      list.forEach(inside -> gather(inside, nodes));
    } else if (value instanceof Record && !(value instanceof Span)) {
      nodes.add(value);
      for (RecordComponent component : COMPONENTS.get(value.getClass())) {
        gather(value(value, component), nodes);
      }
    }
  }

  private static Object value(Object node, RecordComponent component) {
    try {
      return component.getAccessor().invoke(node);
    } catch (ReflectiveOperationException broken) {
      throw new IllegalStateException(broken);
    }
  }
}
