package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Species;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.BundledPath;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Whom the law of a folder binds: law of a jurisdiction that the settings do not name binds nobody,
 * and law that names all groups of species but one may have lost a line.
 */
final class LawCoverage {
  static final Code ELSEWHERE = new Code("law-elsewhere");
  static final Code NOT_FOR_ALL = new Code("law-not-for-all");
  private static final int NAMED = 5;

  private LawCoverage() {}

  static void look(Scope scope, List<Finding> findings) {
    Optional<String> here = scope.tables().settings().jurisdiction();
    for (String name : scope.profileNames()) {
      Profile profile = scope.profile(name).orElseThrow();
      // Where nothing is law here, that is told.
      if ((here.isEmpty() || !scope.law().isEmpty())
          && profile.kind() == Limit.Kind.LAW
          && !BundledPath.is(profile.declared().file().path())
          && profile.jurisdiction().isPresent()
          && !profile.jurisdiction().equals(here)) {
        findings.add(elsewhere(profile, profile.jurisdiction().get(), here));
      }
    }
    if (!scope.tables().nutrients().mendFirst().isEmpty()) {
      return;
    }
    Set<String> bound = new TreeSet<>();
    for (Profile law : scope.law()) {
      bound.addAll(law.species());
    }
    Set<String> said = new TreeSet<>();
    for (Profile law : scope.law()) {
      Optional<String> left = leftOut(law, bound, scope);
      if (left.isPresent()) {
        said.add(left.get());
        findings.add(notForAll(law, left.get(), scope));
      }
    }
    fewer(scope, said, findings);
  }

  private static Finding elsewhere(Profile profile, String there, Optional<String> here) {
    String headline =
        profile.name()
            + " is law of "
            + there
            + ", and this folder is under "
            + here.orElse("none")
            + ", so it binds no feed";
    Span at = profile.jurisdictionAt().orElse(profile.declared());
    List<String> near = here.isPresent() ? NearNames.of(there, List.of(here.get())) : List.of();
    Finding finding =
        near.isEmpty()
            ? Finding.note(ELSEWHERE, at, headline)
            : Finding.warning(ELSEWHERE, at, headline);
    return finding
        .helping(
            Meant.question(near)
                .orElse("name the jurisdiction in pellucid.yaml, or leave it as it is"))
        .about(new About(there, About.Side.NONE, List.of()));
  }

  /** The one name that a law of several leaves out, where no law bounds the same for it. */
  private static Optional<String> leftOut(Profile law, Set<String> bound, Scope scope) {
    List<String> left = new ArrayList<>();
    for (String name : bound) {
      if (!law.species().contains(name) && !overlaps(law, name, scope)) {
        left.add(name);
      }
    }
    boolean one = left.size() == 1 && law.species().size() > 1;
    return one && isUnboundFor(law, left.get(0), scope)
        ? Optional.of(left.get(0))
        : Optional.empty();
  }

  private static boolean overlaps(Profile law, String name, Scope scope) {
    for (Species species : scope.tables().species().values()) {
      if (species.is(name) && law.isFor(species)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isUnboundFor(Profile law, String name, Scope scope) {
    for (Profile other : scope.law()) {
      if (other.species().contains(name)) {
        for (Limit limit : other.limits()) {
          if (ProfileSisters.asks(law, limit)) {
            return false;
          }
        }
      }
    }
    return true;
  }

  /** A species that fewer laws bind than bind any other; there must be others to tell by. */
  private static void fewer(Scope scope, Set<String> said, List<Finding> findings) {
    List<Species> all = List.copyOf(scope.tables().species().values());
    for (Species one : all) {
      int its = count(one, scope);
      int fewest = Integer.MAX_VALUE;
      for (Species other : all) {
        fewest = other.name().equals(one.name()) ? fewest : Math.min(fewest, count(other, scope));
      }
      boolean known = said.contains(one.name());
      for (String name : said) {
        known |= one.is(name);
      }
      if (all.size() > 2 && its > 0 && its < fewest && !known) {
        findings.add(
            Finding.note(
                    NOT_FOR_ALL,
                    one.declared(),
                    its
                        + (its == 1 ? " law binds " : " laws bind ")
                        + one.name()
                        + ", and at least "
                        + fewest
                        + " bind every other species of this folder")
                .helping("look whether a file of law is lost, or the group that it names")
                .about(new About(one.name(), About.Side.NONE, List.of())));
      }
    }
  }

  private static int count(Species species, Scope scope) {
    int count = 0;
    for (Profile law : scope.law()) {
      count += law.isFor(species) ? 1 : 0;
    }
    return count;
  }

  private static Finding notForAll(Profile law, String name, Scope scope) {
    List<String> fed = new ArrayList<>();
    for (Species species : scope.tables().species().values()) {
      if (species.is(name)) {
        fed.add(species.name());
      }
    }
    List<String> asked = new ArrayList<>();
    for (Limit limit : law.limits()) {
      if (!asked.contains(limit.subject().text()) && asked.size() < NAMED) {
        asked.add(limit.subject().text());
      }
    }
    return Finding.warning(
            NOT_FOR_ALL,
            law.declared(),
            law.name()
                + " binds "
                + String.join(" and ", law.species())
                + ", and not "
                + name
                + ", which other law of this folder names")
        .noting(
            "no law here bounds "
                + String.join(", ", asked)
                + " for "
                + (fed.isEmpty() ? name : String.join(" and ", fed)))
        .helping("add a line to the head: species " + name)
        .helping("or keep law that is not for all in a file for each group")
        .about(new About(name, About.Side.NONE, List.of()));
  }
}
