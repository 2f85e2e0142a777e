package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.text.Choices;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * All that the profiles of a folder ask, by what it is about. The sisters of a limit are those of
 * other profiles that ask the like: law of the same jurisdiction among itself, needs and practice
 * among themselves. Where two or more are for the same species, only these count; one alone is no
 * measure.
 */
final class Sisters {
  private static final int FEWEST = 2;
  private static final int NAMED = 2;

  private final Map<String, List<Asked>> bySubject = new HashMap<>();

  Sisters(List<Profile> profiles) {
    for (Profile profile : profiles) {
      for (Limit limit : profile.limits()) {
        String subject = limit.subject().text();
        bySubject
            .computeIfAbsent(subject, none -> new ArrayList<>())
            .add(new Asked(profile, limit));
      }
    }
  }

  /** A limit and the profile that asks for it. */
  record Asked(Profile profile, Limit limit) {}

  /** Those of the same kind on either side, at least two; or none. */
  List<Asked> ofKind(Asked one) {
    List<Asked> found = new ArrayList<>();
    for (Asked other : others(one)) {
      if (other.profile().kind() == one.profile().kind()) {
        found.add(other);
      }
    }
    return nearest(one, found);
  }

  /** Those on the same side, of needs and practice together, at least two; or none. */
  List<Asked> onSide(Asked one) {
    List<Asked> found = new ArrayList<>();
    for (Asked other : others(one)) {
      if (other.limit().side() == one.limit().side()) {
        found.add(other);
      }
    }
    return nearest(one, found);
  }

  private List<Asked> others(Asked one) {
    List<Asked> found = new ArrayList<>();
    for (Asked other : bySubject.getOrDefault(one.limit().subject().text(), List.of())) {
      if (!other.profile().name().equals(one.profile().name())
          && areAlike(one.profile(), other.profile())) {
        found.add(other);
      }
    }
    return found;
  }

  /** Whether what two profiles ask can be held against each other. */
  static boolean areAlike(Profile one, Profile other) {
    boolean binds = one.kind().bindsByItself() || other.kind().bindsByItself();
    return !binds || one.kind() == other.kind() && one.jurisdiction().equals(other.jurisdiction());
  }

  private static List<Asked> nearest(Asked one, List<Asked> found) {
    List<Asked> same = new ArrayList<>();
    for (Asked other : found) {
      if (shareSpecies(one.profile(), other.profile())) {
        same.add(other);
      }
    }
    return profiles(same).size() >= FEWEST
        ? same
        : profiles(found).size() >= FEWEST ? found : List.of();
  }

  static boolean shareSpecies(Profile one, Profile other) {
    for (String species : one.species()) {
      if (other.species().contains(species)) {
        return true;
      }
    }
    return false;
  }

  private static Set<String> profiles(List<Asked> asked) {
    Set<String> names = new LinkedHashSet<>();
    for (Asked one : asked) {
      names.add(one.profile().name());
    }
    return names;
  }

  /** {@code catfish-starter, catfish-finisher and 7 more}. */
  static String named(List<Asked> asked) {
    return listed(List.copyOf(profiles(asked)));
  }

  /** The same of any names. */
  static String listed(List<String> names) {
    int more = names.size() - NAMED;
    return more > 1
        ? String.join(", ", names.subList(0, NAMED)) + " and " + more + " more"
        : Choices.all(names);
  }
}
