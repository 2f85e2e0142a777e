package dev.pellucid.engine.report;

import dev.pellucid.engine.report.Flow.Arrow;
import dev.pellucid.engine.report.Flow.Box;
import dev.pellucid.engine.report.Flow.Place;
import dev.pellucid.engine.trace.Kilograms;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A flow of many boxes made one of few that can be read: where a place has too many, those of one
 * code become one box, and where that does not do, all that are certain and all that are not.
 * Arrows between the same boxes become one, with their kg and bags summed up; what passes among
 * those that are one box is left to the tables.
 */
final class FlowFolding {
  /** So many boxes of a place are drawn one by one. */
  static final int MOST = 12;

  private static final String SEVERAL = "several ways";

  private final Map<String, String> keys = new HashMap<>();
  private final List<Box> boxes = new ArrayList<>();

  private FlowFolding() {}

  static Flow of(Flow flow) {
    FlowFolding folding = new FlowFolding();
    for (Place place : Place.values()) {
      folding.place(flow.boxes().stream().filter(box -> box.place() == place).toList());
    }
    return new Flow(folding.boxes, folding.arrows(flow.arrows()));
  }

  private void place(List<Box> all) {
    if (all.size() <= MOST) {
      all.forEach(this::keep);
      return;
    }
    Map<String, List<Box>> byCode = grouped(all, true);
    Map<String, List<Box>> groups = byCode.size() <= MOST ? byCode : grouped(all, false);
    groups.values().forEach(this::fold);
  }

  private void keep(Box box) {
    keys.put(box.key(), box.key());
    boxes.add(box);
  }

  /** What is asked for always stands by itself. */
  private static Map<String, List<Box>> grouped(List<Box> all, boolean byCode) {
    Map<String, List<Box>> groups = new LinkedHashMap<>();
    for (Box box : all) {
      String group = box.asked() ? box.key() : byCode ? "of " + box.of() : "";
      groups.computeIfAbsent(box.certain() + " " + group, none -> new ArrayList<>()).add(box);
    }
    return groups;
  }

  private void fold(List<Box> group) {
    Box first = group.get(0);
    if (group.size() == 1) {
      keep(first);
      return;
    }
    String key = "folded " + boxes.size() + " " + first.key();
    group.forEach(box -> keys.put(box.key(), key));
    boolean same = group.stream().allMatch(box -> box.of().equals(first.of()));
    String of = same ? first.of() : "";
    String name = group.size() + " " + first.place().many() + (of.isEmpty() ? "" : " of " + of);
    boxes.add(
        new Box(key, first.place(), of, name, days(group), first.day(), first.certain(), false));
  }

  private static String days(List<Box> group) {
    List<LocalDate> days = group.stream().map(Box::day).flatMap(Optional::stream).sorted().toList();
    if (days.isEmpty()) {
      return "";
    }
    LocalDate last = days.get(days.size() - 1);
    return days.get(0).equals(last) ? last.toString() : days.get(0) + " to " + last;
  }

  private List<Arrow> arrows(List<Arrow> all) {
    Map<String, Arrow> folded = new LinkedHashMap<>();
    for (Arrow arrow : all) {
      String from = key(arrow.from());
      String to = key(arrow.to());
      boolean isFolded = !from.equals(arrow.from()) || !to.equals(arrow.to());
      if (!from.equals(to) || !isFolded) {
        Arrow moved =
            new Arrow(
                from, to, arrow.kind(), arrow.kg(), arrow.most(), arrow.bags(), arrow.certain());
        String kind = isFolded ? "" : arrow.kind();
        folded.merge(
            from + "\n" + to + "\n" + kind + arrow.certain(), moved, FlowFolding::together);
      }
    }
    return List.copyOf(folded.values());
  }

  private String key(String of) {
    String key = keys.get(of);
    if (key == null) {
      throw new IllegalArgumentException("no box of " + of);
    }
    return key;
  }

  private static Arrow together(Arrow one, Arrow other) {
    Optional<Kilograms> kg =
        one.kg().isPresent() && other.kg().isPresent()
            ? Optional.of(plus(one.kg().get(), other.kg().get()))
            : one.kg().or(other::kg);
    OptionalInt bags =
        one.bags().isPresent() || other.bags().isPresent()
            ? OptionalInt.of(one.bags().orElse(0) + other.bags().orElse(0))
            : OptionalInt.empty();
    String kind = one.kind().equals(other.kind()) ? one.kind() : SEVERAL;
    return new Arrow(
        one.from(), one.to(), kind, kg, one.most() || other.most(), bags, one.certain());
  }

  private static Kilograms plus(Kilograms one, Kilograms other) {
    return new Kilograms(one.told() + other.told(), one.whole() && other.whole());
  }
}
