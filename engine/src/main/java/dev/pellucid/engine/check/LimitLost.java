package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.HeadLine.Holds;
import dev.pellucid.text.Choices;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A limit that is gone: the head of the file says how many there are to be, or all sister profiles,
 * two or more, have it. Sisters are needs of the very same species, or law of one jurisdiction of
 * which half is about the same.
 */
final class LimitLost {
  static final Code CODE = new Code("limit-lost");

  /** A profile that lacks more is of another make. */
  private static final int MOST = 3;

  private final List<Profile> profiles;
  private final List<Finding> out;

  LimitLost(List<Profile> profiles, List<Finding> out) {
    this.profiles = profiles;
    this.out = out;
  }

  void look(Profile profile) {
    if (!profile.whole()) {
      return;
    }
    List<Profile> sisters = sisters(profile);
    List<String> lost = sisters.size() > 1 ? lost(profile, sisters) : List.of();
    if (profile.holds().isPresent()) {
      counted(profile, profile.holds().get(), sisters, lost);
    } else if (!lost.isEmpty() && lost.size() <= MOST) {
      out.add(
          Finding.warning(
                  CODE,
                  profile.declared(),
                  profile.name()
                      + " has no limit of "
                      + Choices.all(lost)
                      + "; "
                      + names(sisters)
                      + " have")
              .helping("if a line was lost, write it again")
              .helping(
                  "if none is meant, say so by the number: holds " + profile.lines() + " limits"));
    }
  }

  /** Who has counted the limits knows that there are no more. */
  private void counted(Profile profile, Holds holds, List<Profile> sisters, List<String> lost) {
    int there = profile.lines();
    int told = holds.count().value().intValue();
    if (there == told) {
      return;
    }
    Finding finding =
        Finding.error(
            CODE,
            holds.span(),
            profile.name()
                + " says that it holds "
                + Plural.of(told, "limit")
                + ", and there "
                + (there == 1 ? "is " : "are ")
                + there);
    if (there < told && !lost.isEmpty()) {
      finding =
          finding.noting(
              Choices.all(lost)
                  + (lost.size() == 1 ? " stands in " : " stand in ")
                  + names(sisters)
                  + ", not here");
    }
    out.add(
        finding
            .helping(
                there < told ? "write the lost line again" : "take the line out that is too many")
            .helping("if the others are all that is meant, write holds " + there + " limits")
            .fixing(holds.count().span(), String.valueOf(there)));
  }

  private static String names(List<Profile> sisters) {
    List<String> names = new ArrayList<>();
    for (Profile sister : sisters) {
      names.add(sister.name());
    }
    return Sisters.listed(names);
  }

  private static List<String> lost(Profile profile, List<Profile> sisters) {
    Set<String> shared = subjects(sisters.get(0));
    for (Profile sister : sisters) {
      shared.retainAll(subjects(sister));
    }
    shared.removeAll(subjects(profile));
    return List.copyOf(shared);
  }

  private List<Profile> sisters(Profile one) {
    List<Profile> sisters = new ArrayList<>();
    if (one.species().isEmpty()) {
      return sisters;
    }
    for (Profile other : profiles) {
      if (!other.name().equals(one.name())
          && other.kind() == one.kind()
          && areSisters(one, other)) {
        sisters.add(other);
      }
    }
    return sisters;
  }

  private static boolean areSisters(Profile one, Profile other) {
    if (one.kind() == Limit.Kind.LAW) {
      Set<String> shared = subjects(one);
      shared.retainAll(subjects(other));
      return Sisters.areAlike(one, other)
          && 2 * shared.size() > Math.max(one.lines(), other.lines());
    }
    return new HashSet<>(one.species()).equals(new HashSet<>(other.species()));
  }

  private static Set<String> subjects(Profile profile) {
    Set<String> subjects = new LinkedHashSet<>();
    for (Limit limit : profile.limits()) {
      subjects.add(limit.subject().text());
    }
    return subjects;
  }
}
