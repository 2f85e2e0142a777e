package dev.pellucid.engine.workspace;

import dev.pellucid.engine.resolve.Ref;
import dev.pellucid.engine.resolve.ResolveCodes;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.text.Choices;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A premix that a recipe has surely forgotten: several of its minima are broken, and a premix that
 * it does not hold is made to bring just these.
 *
 * @param finding at the mix of the recipe
 * @param suspect the same as a cause
 */
record ForgottenPremix(Finding finding, Suspect suspect) {

  /** So many minima must be broken that one premix brings. */
  private static final int LEAST = 2;

  private static final int NAMED = 4;

  /** Looks at one recipe beside all others. */
  static Optional<ForgottenPremix> of(Summary recipe, Shared shared, List<Summary> all) {
    Set<String> missing = new TreeSet<>();
    for (Consequence one : recipe.consequences()) {
      if (one.tooLittle() && one.contents().size() == 1) {
        missing.addAll(one.contents());
      }
    }
    if (missing.size() < LEAST) {
      return Optional.empty();
    }
    SortedSet<String> held = recipe.reads().names(Ref.Kind.PREMIX);
    Best best = new Best();
    for (ResolvedPremix premix : shared.resolver().premixes().values()) {
      SortedSet<String> brings = new TreeSet<>();
      premix.supplies().forEach(supply -> brings.add(supply.nutrient().name()));
      boolean another = brings.stream().noneMatch(one -> isSupplied(one, held, shared));
      SortedSet<String> wanted = new TreeSet<>(brings);
      wanted.retainAll(missing);
      if (another && wanted.size() >= LEAST) {
        best.take(premix, wanted, users(premix.code(), recipe, all));
      }
    }
    return best.premix.map(premix -> told(recipe, premix, best.wanted, shared));
  }

  /** Those of the findings that say its overage fits no line, which follows from it. */
  void overages(List<Finding> findings, Set<Finding> its) {
    for (Finding one : findings) {
      if (one.code().equals(ResolveCodes.OVERAGE_MATCHES_NOTHING)
          && one.span().file().path().equals(suspect.path())
          && one.span().text().equals(finding.about().subject())) {
        its.add(one);
      }
    }
  }

  /**
   * The one that brings most of what is missing, else the one that feeds of the same folder use.
   */
  private static final class Best {
    private Optional<ResolvedPremix> premix = Optional.empty();
    private SortedSet<String> wanted = new TreeSet<>();
    private long users = -1;

    void take(ResolvedPremix other, SortedSet<String> brings, long usedBy) {
      boolean more = brings.size() > wanted.size();
      boolean nearer = brings.size() == wanted.size() && usedBy > users;
      if (usedBy > users || usedBy == users && more || nearer) {
        premix = Optional.of(other);
        wanted = brings;
        users = usedBy;
      }
    }
  }

  private static boolean isSupplied(String nutrient, SortedSet<String> held, Shared shared) {
    for (String code : held) {
      ResolvedPremix premix = shared.resolver().premixes().get(code);
      boolean brings =
          premix != null
              && premix.supplies().stream().anyMatch(it -> it.nutrient().name().equals(nutrient));
      if (brings) {
        return true;
      }
    }
    return false;
  }

  /** How many recipes beside this one use a premix; those of the same folder count most. */
  private static long users(String premix, Summary recipe, List<Summary> all) {
    long users = 0;
    for (Summary other : all) {
      if (other.premixes().contains(premix) && !other.path().equals(recipe.path())) {
        users += folder(other.path()).equals(folder(recipe.path())) ? 1_000 : 1;
      }
    }
    return users;
  }

  private static String folder(String path) {
    return path.substring(0, path.lastIndexOf('/') + 1);
  }

  private static ForgottenPremix told(
      Summary recipe, ResolvedPremix premix, SortedSet<String> wanted, Shared shared) {
    Span place = mix(recipe, shared);
    String dose = premix.dose().map(share -> " " + share).orElse("");
    Finding finding =
        Finding.error(
                Causes.FORGOTTEN,
                place,
                "no line of this recipe brings " + some(wanted) + "; " + premix.code() + " does")
            .helping("write a line for it under mix: " + premix.code() + dose)
            .about(new About(premix.code(), About.Side.NONE, List.of()));
    Set<String> brings = new TreeSet<>();
    premix.supplies().forEach(supply -> brings.add(supply.nutrient().name()));
    return new ForgottenPremix(finding, new Suspect(finding, recipe.path(), "mix", brings));
  }

  private static String some(SortedSet<String> names) {
    List<String> first = names.stream().limit(NAMED).toList();
    int more = names.size() - first.size();
    return more == 0 ? Choices.all(first) : String.join(", ", first) + " and " + more + " more";
  }

  /** The heading of the mix, else the beginning of the file. */
  private static Span mix(Summary recipe, Shared shared) {
    Optional<RecipeFile> tree = shared.trees().recipe(recipe.path(), new ArrayList<>());
    Optional<Span> heading = tree.flatMap(RecipeFile::mix).map(section -> section.heading());
    return heading.orElseGet(
        () -> recipe.consequences().get(0).finding().span().file().beginning());
  }
}
