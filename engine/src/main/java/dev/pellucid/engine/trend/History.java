package dev.pellucid.engine.trend;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The batches of one recipe and the courses of their figures.
 *
 * @param batches as they were made
 * @param courses by kind, then by name
 */
public record History(List<MeasuredBatch> batches, List<Course> courses) {
  public History {
    batches = List.copyOf(batches);
    courses = List.copyOf(courses);
  }

  /**
   * Of batches in any order.
   *
   * @param batches of one recipe
   */
  public static History of(List<MeasuredBatch> batches) {
    List<MeasuredBatch> inOrder = batches.stream().sorted(MeasuredBatch.AS_MADE).toList();
    Map<String, List<Course.Placed>> byName = new LinkedHashMap<>();
    for (int place = 0; place < inOrder.size(); place++) {
      for (Measured figure : inOrder.get(place).figures()) {
        byName
            .computeIfAbsent(figure.name(), none -> new ArrayList<>())
            .add(new Course.Placed(place, inOrder.get(place), figure));
      }
    }
    List<Course> courses = new ArrayList<>();
    byName.values().forEach(figures -> courses.add(Course.of(figures)));
    courses.sort(Comparator.comparing(Course::what).thenComparing(Course::name));
    return new History(inOrder, courses);
  }

  /** What came into the bags, batch by batch and together. */
  public YieldTotals yields() {
    return YieldTotals.of(batches);
  }
}
