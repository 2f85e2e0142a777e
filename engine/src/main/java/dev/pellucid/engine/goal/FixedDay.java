package dev.pellucid.engine.goal;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Plural;
import dev.pellucid.text.SourceFile;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Optional;

/**
 * A day that was given to a run and lies far from the one by the clock. What hangs on a day is then
 * judged for one that is past or not yet here: a waiver never ends, a lot never expires, and the
 * bags carry the use-by day of another year.
 */
public record FixedDay(LocalDate day, LocalDate today) {
  static final Code CODE = new Code("day-far-off");

  /** A check of last month's state, or of a plan for the next, is nothing odd. */
  private static final long NEAR_DAYS = 30;

  /** Empty where the day given is near today. */
  public static Optional<FixedDay> of(LocalDate day, LocalDate today) {
    return Math.abs(ChronoUnit.DAYS.between(day, today)) > NEAR_DAYS
        ? Optional.of(new FixedDay(day, today))
        : Optional.empty();
  }

  /** {@code the day is 2026-11-25, which is 400 days before today, 2027-12-30}. */
  public String sentence() {
    long days = ChronoUnit.DAYS.between(day, today);
    return "the day is "
        + day
        + ", which is "
        + Plural.of(Math.abs(days), "day")
        + (days > 0 ? " before today, " : " after today, ")
        + today;
  }

  Finding warning(Texts folder) {
    SourceFile settings =
        Optional.of(Texts.SETTINGS)
            .filter(folder::has)
            .flatMap(path -> folder.read(path, new ArrayList<>()))
            .orElseGet(() -> new SourceFile(Texts.SETTINGS, ""));
    return Finding.warning(CODE, settings.beginning(), sentence())
        .noting("by that day waivers end, lots expire, prices count and use-by days are computed")
        .helping("take pellucid.day out of pom.xml, then each run has the day of the clock")
        .helping("where it is fixed on purpose, say so: pellucid.fixedDay is true");
  }
}
