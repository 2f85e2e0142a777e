package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.List;

/**
 * What the profiles of a folder show when they are held against each other: a figure ten times off,
 * one side written for the other, a basis or a part of batches left out, a line that is lost. None
 * of it needs a recipe.
 */
public final class ProfilesTogether {
  private final List<Profile> profiles;
  private final List<Finding> findings = new ArrayList<>();

  private ProfilesTogether(List<Profile> profiles) {
    this.profiles = new ArrayList<>();
    for (Profile profile : profiles) {
      if (!hasLostItsKind(profile)) {
        this.profiles.add(profile);
      }
    }
  }

  /** Law without its kind counts as a need, and what it asks differs from every need. */
  private static boolean hasLostItsKind(Profile profile) {
    return !profile.saysItsKind() && profile.jurisdiction().isPresent();
  }

  /**
   * Looks at the profiles of a folder.
   *
   * @param profiles all of the folder, those of law too
   */
  public static List<Finding> look(List<Profile> profiles) {
    ProfilesTogether together = new ProfilesTogether(profiles);
    together.look();
    return together.findings;
  }

  /**
   * Looks at the profiles that bound raw materials. These differ by their nature, so a figure is
   * doubted only where it is far from that of every other material.
   */
  public static List<Finding> ofMaterials(List<Profile> profiles) {
    ProfilesTogether together = new ProfilesTogether(profiles);
    Sisters all = new Sisters(together.profiles);
    LimitLost lost = new LimitLost(together.profiles, together.findings);
    for (Profile profile : together.profiles) {
      for (Limit limit : profile.limits()) {
        Sisters.Asked one = new Sisters.Asked(profile, limit);
        if (!LimitTermsDiffer.ofMaterials(one, together.profiles, together.findings)) {
          LimitTenTimesOff.ofMaterials(one, all, together.findings);
        }
      }
      lost.look(profile);
      HeadLineLost.look(profile, together.profiles, together.findings);
    }
    return together.findings;
  }

  private void look() {
    Sisters sisters = new Sisters(profiles);
    LimitLost lost = new LimitLost(profiles, findings);
    for (Profile profile : profiles) {
      for (Limit limit : profile.limits()) {
        limit(new Sisters.Asked(profile, limit), sisters);
      }
      lost.look(profile);
      HeadLineLost.look(profile, profiles, findings);
    }
  }

  /** One slip of a line is told once: first the side, then the terms, then the figure. */
  private void limit(Sisters.Asked one, Sisters sisters) {
    if (!LimitOnOtherSide.look(one, sisters, findings)
        && !LimitTermsDiffer.look(one, sisters, findings)) {
      LimitTenTimesOff.look(one, sisters, findings);
    }
  }
}
