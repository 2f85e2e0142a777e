package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Word;
import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A line that the heads of all other profiles have and this one lacks: how many limits it holds,
 * which a folder does in all its profiles or in none; and what a feed must hold, beside two or more
 * needs of the same species.
 */
final class HeadLineLost {
  private static final int FEWEST_COUNTED = 3;
  private static final int FEWEST_SISTERS = 2;

  private HeadLineLost() {}

  static void look(Profile profile, List<Profile> all, List<Finding> out) {
    List<Profile> others = new ArrayList<>(all);
    others.removeIf(one -> one.name().equals(profile.name()));
    boolean counted = others.stream().allMatch(one -> one.holds().isPresent());
    if (counted
        && others.size() >= FEWEST_COUNTED
        && profile.holds().isEmpty()
        && profile.whole()) {
      String many = Plural.of(profile.lines(), "limit");
      out.add(
          Finding.warning(
                  LimitLost.CODE,
                  profile.declared(),
                  profile.name() + " does not say how many limits it holds, and all others do")
              .noting("without the number nobody sees that a line was lost")
              .helping("there are " + profile.lines() + " now; write in its head: holds " + many)
              .about(new About("holds", About.Side.NONE, List.of())));
    }
    if (profile.kind() == Limit.Kind.NEED && !profile.species().isEmpty()) {
      others.removeIf(
          one -> one.kind() != Limit.Kind.NEED || !one.species().equals(profile.species()));
      mustHold(profile, others, out);
    }
  }

  private static void mustHold(Profile profile, List<Profile> sisters, List<Finding> out) {
    if (sisters.size() < FEWEST_SISTERS) {
      return;
    }
    SortedSet<String> lost = held(sisters.get(0));
    for (Profile sister : sisters) {
      lost.retainAll(held(sister));
    }
    lost.removeAll(held(profile));
    for (String what : lost) {
      out.add(
          Finding.warning(
                  LimitLost.CODE,
                  profile.declared(),
                  profile.name() + " does not say must hold " + what + ", and others like it do")
              .helping("if the line was lost, write it again: must hold " + what)
              .about(new About(what, About.Side.NONE, List.of())));
    }
  }

  private static SortedSet<String> held(Profile profile) {
    SortedSet<String> held = new TreeSet<>();
    for (Word one : profile.mustHold()) {
      held.add(one.text());
    }
    return held;
  }
}
