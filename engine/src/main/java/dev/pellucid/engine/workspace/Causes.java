package dev.pellucid.engine.workspace;

import dev.pellucid.engine.resolve.DependsOn;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Plural;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is broken in feeds because of one line of the data, a premix or a profile: that line is told
 * by itself, and all that follows from it in one finding that comes after it and names it. Law that
 * is broken is told by itself whatever its cause, and says the cause.
 */
public final class Causes {
  /** The code of what follows from a cause, told together. */
  public static final Code CODE = new Code("broken-because-of");

  /** The code of a premix that a recipe has forgotten. */
  public static final Code FORGOTTEN = new Code("premix-forgotten");

  /** So many feeds are named with what is broken in them. */
  private static final int FEEDS_NAMED = 8;

  private final Shared shared;
  private final List<Suspect> suspects;
  private final Map<Suspect, List<Broken>> because = new LinkedHashMap<>();
  private final Set<Finding> folded = new HashSet<>();
  private final Map<Finding, Finding> told = new LinkedHashMap<>();

  /** Something wrong with a feed of a code. */
  private record Broken(String code, Consequence consequence) {}

  private Causes(Shared shared, List<Suspect> suspects) {
    this.shared = shared;
    this.suspects = suspects;
  }

  /**
   * The findings of a folder with what follows from a cause told together.
   *
   * @param findings of the folder, in no order
   */
  static List<Finding> fold(Shared shared, List<Summary> recipes, List<Finding> findings) {
    List<Suspect> suspects = Suspect.among(findings, shared.resolver().premixes());
    List<Finding> missing = new ArrayList<>();
    for (Summary recipe : recipes) {
      Optional<ForgottenPremix> premix = ForgottenPremix.of(recipe, shared, recipes);
      if (premix.isPresent()) {
        missing.add(premix.get().finding());
        suspects.add(premix.get().suspect());
      }
    }
    if (suspects.isEmpty()) {
      return findings;
    }
    Causes causes = new Causes(shared, suspects);
    for (Summary recipe : recipes) {
      causes.look(recipe);
    }
    List<Finding> all = new ArrayList<>(missing);
    for (Finding finding : findings) {
      if (!causes.folded.contains(finding)) {
        all.add(causes.told.getOrDefault(finding, finding));
      }
    }
    causes.because.forEach((suspect, broken) -> all.add(together(suspect, broken)));
    return all;
  }

  private void look(Summary recipe) {
    if (recipe.consequences().isEmpty()) {
      return;
    }
    DependsOn hangs = shared.dependsOn(recipe.path(), recipe.reads());
    for (Suspect suspect : suspects) {
      List<Consequence> explained = new ArrayList<>();
      for (Consequence one : recipe.consequences()) {
        boolean open = !folded.contains(one.finding()) && !told.containsKey(one.finding());
        if (open && suspect.explains(recipe.path(), one, hangs)) {
          explained.add(one);
        }
      }
      for (Consequence one : explained) {
        take(suspect, recipe, one);
      }
    }
  }

  private void take(Suspect suspect, Summary recipe, Consequence one) {
    if (one.law()) {
      told.put(one.finding(), one.finding().seeing("because of", suspect.finding().span()));
      return;
    }
    folded.add(one.finding());
    because.computeIfAbsent(suspect, none -> new ArrayList<>()).add(new Broken(recipe.code(), one));
  }

  /** One finding for all that follows from a cause; a single one only tells its cause. */
  private static Finding together(Suspect suspect, List<Broken> broken) {
    Finding first = broken.get(0).consequence().finding();
    Span cause = suspect.finding().span();
    if (broken.size() == 1) {
      return first.seeing("because of", cause);
    }
    Map<String, Set<String>> feeds = new LinkedHashMap<>();
    Severity gravest = Severity.NOTE;
    for (Broken one : broken) {
      Finding finding = one.consequence().finding();
      feeds.computeIfAbsent(one.code(), none -> new TreeSet<>()).add(finding.headline());
      gravest = finding.severity().compareTo(gravest) < 0 ? finding.severity() : gravest;
    }
    Finding all =
        Finding.of(
                CODE,
                gravest,
                first.span(),
                Plural.of(broken.size(), "limit or declared figure", "limits or declared figures")
                    + " of "
                    + Plural.of(feeds.size(), "feed")
                    + " do not hold because of "
                    + cause.file().fileName()
                    + ":"
                    + cause.from().line())
            .seeing("the cause", cause)
            .about(first.about());
    int named = 0;
    for (Map.Entry<String, Set<String>> feed : feeds.entrySet()) {
      if (named++ < FEEDS_NAMED) {
        all = all.noting(feed.getKey() + ": " + String.join("; ", feed.getValue()));
      }
    }
    if (feeds.size() > FEEDS_NAMED) {
      all = all.noting("and in " + (feeds.size() - FEEDS_NAMED) + " more");
    }
    return all.helping("fix the cause first and check again");
  }
}
