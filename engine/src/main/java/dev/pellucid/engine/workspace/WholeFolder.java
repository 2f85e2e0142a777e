package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.engine.resolve.ResolveCodes;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.BundledPath;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a folder lacks that no recipe of it misses: a file of practice whose rules fall silent, all
 * prices, a profile that nobody meets. A folder without an approved recipe is asked for nothing.
 */
public final class WholeFolder {
  static final Code PRACTICE = new Code("practice-missing");
  static final Code PRICES = new Code("prices-missing");
  static final Code UNMET = new Code("profile-unmet");

  private WholeFolder() {}

  /** Every code of what is said of a whole folder. */
  public static List<Code> codes() {
    return List.of(
        PRACTICE,
        PRICES,
        UNMET,
        Sisters.CODE,
        MakerNotTold.CODE,
        MadePerMonth.CODE,
        MadePerMonth.LEFT_OUT,
        MadeFarOff.CODE,
        PlannedFeeds.CODE);
  }

  static List<Finding> findings(Shared shared, List<Summary> recipes) {
    List<Finding> findings = new ArrayList<>();
    OwnTellsLess.look(shared.texts(), findings);
    if (!shared.tables().nutrients().mendFirst().isEmpty()) {
      return findings;
    }
    Set<String> fed = new TreeSet<>();
    boolean approved = false;
    boolean all = !recipes.isEmpty();
    for (Summary one : recipes) {
      all &= one.asked().isPresent() && !namesNoProfile(one);
      if (one.asked().isPresent() && one.asked().get().approved()) {
        approved = true;
        one.asked().get().species().ifPresent(fed::add);
      }
    }
    if (approved) {
      practice(shared, fed.size() > 1, findings);
      prices(shared, findings);
    }
    MakerNotTold.look(shared, recipes, findings);
    MadePerMonth.look(shared, recipes, findings);
    PlannedFeeds.look(shared, recipes, findings);
    findings.addAll(LostSections.of(recipes));
    if (all) {
      unmet(shared, recipes, findings);
    }
    return findings;
  }

  /** Where a recipe names a profile that is not there, or none, the profile it lacks is unmet. */
  private static boolean namesNoProfile(Summary recipe) {
    for (Finding finding : recipe.findings()) {
      if (ResolveCodes.isOfLostNeed(finding.code())) {
        return true;
      }
    }
    return false;
  }

  /** A file that is there and empty, or broken, has findings of its own. */
  private static void practice(Shared shared, boolean twoFed, List<Finding> findings) {
    List<String> lost = new ArrayList<>();
    List<String> silent = new ArrayList<>();
    if (isLost(shared, "bounds")) {
      lost.add("bounds");
      silent.add(
          "bounds: temperatures and times of steam, dryer and mixer, the screen against the die,"
              + " starch and fat before the die, oil on the kernel, moisture and shelf life");
    }
    if (isLost(shared, "sequence") && twoFed) {
      lost.add("sequence");
      silent.add("sequence: what may follow what on one line");
    }
    if (isLost(shared, "cautions")) {
      lost.add("cautions");
      silent.add("cautions: what the sheet warns the hand of, and what to look at before weighing");
    }
    if (isLost(shared, "densities") && lacksDensity(shared.tables())) {
      lost.add("densities");
      silent.add("densities: how full a mixer is of what gives no density of its own");
    }
    if (!lost.isEmpty()) {
      Severity severity = lost.contains("bounds") ? Severity.WARNING : Severity.NOTE;
      List<String> files = new ArrayList<>();
      for (String file : lost) {
        files.add("practice/" + file + ".yaml");
      }
      Finding finding =
          Finding.of(
              PRACTICE,
              severity,
              settings(shared),
              "this folder has no " + String.join(" and no ", files));
      for (String words : silent) {
        finding = finding.noting("silent without " + words);
      }
      findings.add(
          finding
              .helping("add it, or take it back from the history of the folder")
              .about(new About(String.join(", ", lost), About.Side.NONE, List.of())));
    }
  }

  private static boolean isLost(Shared shared, String file) {
    return !shared.texts().tells("practice/" + file + ".yaml")
        && !shared.texts().has("practice/" + file + ".yml");
  }

  private static boolean lacksDensity(FeedTables tables) {
    boolean mixes = false;
    for (Plant plant : tables.plants().values()) {
      mixes |= !plant.mixers().isEmpty();
    }
    if (!mixes) {
      return false;
    }
    for (Ingredient one : tables.ingredients().values()) {
      if (one.bulkDensity().isEmpty()) {
        return true;
      }
    }
    return false;
  }

  private static void prices(Shared shared, List<Finding> findings) {
    if (shared.tables().prices().isEmpty() && shared.tables().pricesWhole()) {
      findings.add(
          Finding.note(PRICES, settings(shared), "this folder has no prices, so no feed has a cost")
              .helping("add a file of prices/, or leave it where nobody asks for the cost"));
    }
  }

  private static Span settings(Shared shared) {
    return shared.tables().settings().place().file().beginning();
  }

  /** A profile that came along with the program may wait for the day when it is wanted. */
  private static void unmet(Shared shared, List<Summary> recipes, List<Finding> findings) {
    for (Profile profile : shared.resolver().profiles()) {
      boolean met =
          profile.kind().bindsByItself() || BundledPath.is(profile.declared().file().path());
      for (Summary one : recipes) {
        met |= one.asked().orElseThrow().meets(profile.name());
      }
      if (!met && profile.jurisdiction().isEmpty()) {
        findings.add(
            Finding.note(
                    UNMET, profile.declared(), "no recipe of this folder meets " + profile.name())
                .helping("name it with meets where it holds, or take it out of the folder")
                .about(new About(profile.name(), About.Side.NONE, List.of())));
      }
    }
  }
}
