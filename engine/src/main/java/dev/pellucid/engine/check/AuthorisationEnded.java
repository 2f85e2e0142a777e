package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Additive;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Source;
import dev.pellucid.engine.data.Source.Ending;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * An act of law whose authorisation has ended by its own words, while this folder keeps an additive
 * that needs it. It is no error: where a renewal was asked for in time, the authorisation goes on
 * until that is decided. Whoever has looked it up writes the day and what was found, and is not
 * asked again for a year.
 */
final class AuthorisationEnded {
  static final Code CODE = new Code("authorisation-ended");

  /** So long what was looked up holds, before it is looked up again; no source. */
  private static final int DAYS = 365;

  private AuthorisationEnded() {}

  static void look(
      FeedTables tables, Iterable<Profile> profiles, LocalDate day, Consumer<Finding> out) {
    Optional<String> here = tables.settings().jurisdiction();
    Set<String> seen = new HashSet<>();
    for (Profile profile : profiles) {
      boolean binds = here.isPresent() && profile.jurisdiction().equals(here);
      for (Limit limit : binds ? profile.limits() : List.<Limit>of()) {
        Optional<Source> source = limit.origin().source();
        if (limit.origin().kind() == Limit.Kind.LAW
            && source.isPresent()
            && hasEnded(source.get(), day)
            && !seen.contains(source.get().id())) {
          List<String> additives = additives(tables, limit);
          if (!additives.isEmpty()) {
            seen.add(source.get().id());
            out.accept(finding(source.get(), limit, additives, day));
          }
        }
      }
    }
  }

  private static boolean hasEnded(Source source, LocalDate day) {
    return source.ending().isPresent()
        && source.ending().get().day().isBefore(day)
        && !isLookedUp(source.ending().get(), day);
  }

  /** A day far ahead is a slip, and would silence this for as long. */
  private static boolean isLookedUp(Ending ending, LocalDate day) {
    if (ending.lookedUp().isEmpty() || ending.found().isEmpty()) {
      return false;
    }
    LocalDate looked = ending.lookedUp().get();
    return !looked.plusDays(DAYS).isBefore(day) && !looked.minusDays(DAYS).isAfter(day);
  }

  /** The ingredients of the folder that are additives of what a limit bounds. */
  private static List<String> additives(FeedTables tables, Limit limit) {
    List<String> names = new ArrayList<>();
    for (Ingredient one : tables.ingredients().values()) {
      Optional<String> nutrient = one.additive().flatMap(Additive::nutrient);
      for (Nutrient bounded : limit.subject().addends()) {
        if (nutrient.isPresent() && nutrient.get().equals(bounded.name())) {
          names.add(one.name());
        }
      }
    }
    return names;
  }

  private static Finding finding(
      Source source, Limit limit, List<String> additives, LocalDate day) {
    Ending ending = source.ending().orElseThrow();
    Finding finding =
        Finding.warning(
                CODE,
                ending.at(),
                "the authorisation of "
                    + limit.subject().text()
                    + " by "
                    + source.id()
                    + " ended on "
                    + ending.day()
                    + ", and "
                    + String.join(" and ", additives)
                    + (additives.size() == 1 ? " adds it" : " add it"))
            .seeing("limit written", limit.origin().span())
            .noting(
                "it may still be valid: where a renewal was asked for in time,"
                    + " it continues until that is decided");
    return looked(finding, ending, day)
        .helping(
            "look into the register of feed additives, and write under "
                + source.id()
                + ": end-looked-up, with the day, and end-found, with what it says")
        .helping("where a newer act is in force, write its maxima, its end and its number here")
        .about(new About(source.id(), About.Side.NONE, List.of()));
  }

  private static Finding looked(Finding finding, Ending ending, LocalDate day) {
    if (ending.lookedUp().isEmpty()) {
      return finding;
    }
    String on = "it was looked up on " + ending.lookedUp().get();
    if (ending.found().isEmpty()) {
      return finding.noting(on + ", and what was found is not given");
    }
    boolean ahead = ending.lookedUp().get().isAfter(day);
    return finding.noting(
        on
            + (ahead ? ", and that is far ahead of today: " : ", more than a year ago: ")
            + ending.found().get());
  }
}
