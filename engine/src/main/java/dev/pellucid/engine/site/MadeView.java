package dev.pellucid.engine.site;

import dev.pellucid.engine.trend.History;
import dev.pellucid.engine.trend.Told;
import java.time.LocalDate;
import java.util.List;

/**
 * The batches of one recipe that were made.
 *
 * @param title of the recipe
 * @param history one batch or more
 * @param others how many more were made and could not be judged
 * @param findings about their records, as they are printed
 */
public record MadeView(
    String code, String title, History history, int others, List<String> findings) {
  public MadeView {
    findings = List.copyOf(findings);
  }

  /** What is told of them today: titles of the figures that drift. */
  List<String> drifting(LocalDate today) {
    return history.courses().stream()
        .filter(course -> Told.of(course, today).isPresent())
        .map(course -> course.title())
        .toList();
  }
}
