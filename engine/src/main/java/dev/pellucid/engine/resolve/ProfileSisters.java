package dev.pellucid.engine.resolve;

import dev.pellucid.finding.About;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.List;

/**
 * A profile held against its sisters: needs of the same species for fish of other sizes, laws of
 * the same jurisdiction for other species. What each of at least two sisters bounds and it does not
 * may have been lost, for no feed tells that nothing was asked of it.
 */
final class ProfileSisters {
  /** One figure may well be law for some species and guidance for others. */
  private static final int FEWEST_OF_LAW = 2;

  private ProfileSisters() {}

  static void look(Scope scope, List<Finding> findings) {
    List<Profile> all = new ArrayList<>();
    for (String name : scope.profileNames()) {
      scope.profile(name).ifPresent(all::add);
    }
    for (Profile one : all) {
      if (!one.saysItsKind()) {
        kind(one, all, findings);
        continue;
      }
      List<Profile> sisters = new ArrayList<>();
      for (Profile other : all) {
        if (!other.name().equals(one.name())
            && other.saysItsKind()
            && areSisters(one, other, scope)) {
          sisters.add(other);
        }
      }
      species(one, all, findings);
      size(one, sisters, findings);
      guidance(one, all, findings);
    }
  }

  /** Guidance of which most is law elsewhere: law that lost its kind so is only advised. */
  private static void guidance(Profile one, List<Profile> all, List<Finding> findings) {
    if (one.kind() != Limit.Kind.GUIDANCE) {
      return;
    }
    for (Profile other : all) {
      if (other.kind() == Limit.Kind.LAW && other.jurisdiction().equals(one.jurisdiction())) {
        int law = 0;
        for (Limit limit : one.limits()) {
          law += asks(other, limit) ? 1 : 0;
        }
        if (law >= FEWEST_OF_LAW && law * 2 >= one.limits().size()) {
          findings.add(ofLaw(one, other, law));
          return;
        }
      }
    }
  }

  private static Finding ofLaw(Profile one, Profile other, int law) {
    return Finding.warning(
            ProfileHead.INCOMPLETE,
            one.declared(),
            one.name()
                + " is guidance, and "
                + law
                + " of its "
                + one.limits().size()
                + " limits are law in "
                + other.name())
        .seeing("the law", other.declared())
        .noting("a feed that is beyond guidance may be made, one beyond law may not")
        .helping("if it is law, write in its head: kind law")
        .about(new About("kind", About.Side.NONE, List.of()));
  }

  private static boolean areSisters(Profile one, Profile other, Scope scope) {
    if (one.kind() == Limit.Kind.LAW) {
      return scope.law().contains(one)
          && scope.law().contains(other)
          && one.species().size() == other.species().size()
          && !haveOneInCommon(one, other);
    }
    return one.kind() == Limit.Kind.NEED
        && other.kind() == Limit.Kind.NEED
        && haveOneInCommon(one, other);
  }

  private static boolean haveOneInCommon(Profile one, Profile other) {
    for (String name : one.species()) {
      if (other.species().contains(name)) {
        return true;
      }
    }
    return false;
  }

  /** Law that has lost its kind is told by its jurisdiction. */
  private static void kind(Profile one, List<Profile> all, List<Finding> findings) {
    boolean someSay = false;
    for (Profile other : all) {
      someSay |= other.saysItsKind();
    }
    // One that cannot be read stands here without a line.
    boolean read = !one.declared().file().text().isBlank();
    if (read
        && one.jurisdiction().isEmpty()
        && someSay
        && !UnreadHead.mayHave(one.declared().file(), "kind")) {
      findings.add(
          Finding.note(
                  ProfileHead.INCOMPLETE,
                  one.declared(),
                  one.name() + " does not say of which kind it is, and counts as a need")
              .helping("add a line to the head: kind need, kind practice or kind law")
              .about(new About("kind", About.Side.NONE, List.of())));
    }
  }

  /** A need without species is for any, and where the others tell theirs nobody expects that. */
  private static void species(Profile one, List<Profile> all, List<Finding> findings) {
    boolean others = false;
    for (Profile other : all) {
      others |= other.kind() == Limit.Kind.NEED && !other.species().isEmpty();
    }
    if (others
        && one.kind() == Limit.Kind.NEED
        && one.species().isEmpty()
        && !UnreadHead.mayHave(one.declared().file(), "species")) {
      findings.add(
          Finding.note(
                  ProfileHead.INCOMPLETE,
                  one.declared(),
                  one.name() + " is a need, and does not say of which species")
              .noting("a feed for any species may meet it without a word")
              .helping("add a line to the head: species, and one of this folder")
              .about(new About("species", About.Side.NONE, List.of())));
    }
  }

  /** Without sizes it covers all fish, and nobody notices a feed for others. */
  private static void size(Profile one, List<Profile> sisters, List<Finding> findings) {
    boolean others = !sisters.isEmpty() && one.kind() == Limit.Kind.NEED && one.fish().isEmpty();
    for (Profile sister : sisters) {
      others &= sister.fish().isPresent();
    }
    if (others && !UnreadHead.mayHave(one.declared().file(), "fish")) {
      findings.add(
          Finding.warning(
                  ProfileHead.INCOMPLETE,
                  one.declared(),
                  one.name() + " does not say for which size of fish it is, and others like it do")
              .seeing("a similar profile", sisters.get(0).declared())
              .noting("it counts for fish of every size")
              .helping("add a line to the head: fish 50 to 250 g, with its own")
              .about(new About("fish", About.Side.NONE, List.of())));
    }
  }

  /** Whether a profile bounds the same side of the same figure. */
  static boolean asks(Profile profile, Limit limit) {
    for (Limit its : profile.limits()) {
      if (its.side() == limit.side() && its.subject().text().equals(limit.subject().text())) {
        return true;
      }
    }
    return false;
  }
}
