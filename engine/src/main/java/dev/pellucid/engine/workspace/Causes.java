package dev.pellucid.engine.workspace;

import dev.pellucid.engine.resolve.DependsOn;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Choices;
import dev.pellucid.text.Plural;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is broken in feeds because of one line of the data, a premix or a profile, or because of a
 * share or a step of their own that stands where it may not: that line is told by itself, and all
 * that follows from it in one finding that comes after it and names it. Law that is broken is told
 * in a finding of its own, whatever its cause.
 */
public final class Causes {
  /** The code of what follows from a cause, told together. */
  public static final Code CODE = new Code("broken-because-of");

  /** The code of a premix that a recipe has forgotten. */
  public static final Code FORGOTTEN = new Code("premix-forgotten");

  /** So many feeds are named with what is broken in them. */
  private static final int FEEDS_NAMED = 8;

  /** So many of a recipe that follow from a line of its own are told together. */
  private static final int MANY = 2;

  /** So many feeds and records are named in the first line. */
  private static final int FEW = 3;

  private static final String BROKEN = " do not hold because of ";
  private static final String LEGAL = "the legal maximum";

  private final Shared shared;
  private final List<Suspect> suspects;
  private final Map<Suspect, List<Broken>> because = new LinkedHashMap<>();
  private final Map<Suspect, List<Broken>> ofLaw = new LinkedHashMap<>();
  private final Map<String, Suspect> causeOf = new HashMap<>();
  private final Set<Finding> folded = new HashSet<>();

  /** Something wrong with a feed of a code. */
  private record Broken(String code, Finding finding) {}

  private Causes(Shared shared, List<Suspect> suspects) {
    this.shared = shared;
    this.suspects = suspects;
  }

  /**
   * The findings of a folder with what follows from a cause told together.
   *
   * @param ofRecords what is said of batch records, by the path of their recipe or premix
   * @param findings of the folder, in no order
   */
  static List<Finding> fold(
      Shared shared,
      List<Summary> recipes,
      Map<String, List<Finding>> ofRecords,
      List<Finding> findings) {
    List<Suspect> suspects = Suspect.among(findings, shared.resolver().premixes());
    List<Finding> missing = new ArrayList<>();
    Set<Finding> ofMissing = new HashSet<>();
    for (Summary recipe : recipes) {
      Optional<ForgottenPremix> premix = ForgottenPremix.of(recipe, shared, recipes);
      if (premix.isPresent()) {
        missing.add(premix.get().finding());
        premix.get().overages(findings, ofMissing);
        suspects.removeIf(suspect -> ofMissing.contains(suspect.finding()));
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
    ofRecords.forEach(causes::records);
    List<Finding> all = new ArrayList<>(missing);
    for (Finding finding : findings) {
      if (!causes.folded.contains(finding) && !ofMissing.contains(finding)) {
        all.add(finding);
      }
    }
    causes.ofLaw.forEach((suspect, it) -> all.add(together(suspect, it, "legal limits")));
    causes.because.forEach((suspect, it) -> all.add(together(suspect, it, "limits or figures")));
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
        boolean open = !folded.contains(one.finding());
        if (open && suspect.explains(recipe.path(), one, hangs)) {
          explained.add(one);
        }
      }
      boolean own = suspect.path().equals(recipe.path());
      if (!own || explained.size() >= MANY) {
        for (Consequence one : explained) {
          take(suspect, recipe, one);
        }
      }
    }
  }

  private void take(Suspect suspect, Summary recipe, Consequence one) {
    causeOf.putIfAbsent(recipe.path(), suspect);
    add(one.law() ? ofLaw : because, suspect, new Broken(recipe.code(), one.finding()));
  }

  private void add(Map<Suspect, List<Broken>> to, Suspect suspect, Broken broken) {
    folded.add(broken.finding());
    to.computeIfAbsent(suspect, none -> new ArrayList<>()).add(broken);
  }

  /**
   * Records are held against the recipe or premix as it stands: where that has a slip, or feeds are
   * broken by one, what differs in its records follows from it too.
   */
  private void records(String path, List<Finding> said) {
    Optional<Suspect> suspect =
        Optional.ofNullable(causeOf.get(path))
            .or(() -> suspects.stream().filter(one -> one.path().equals(path)).findFirst());
    if (suspect.isEmpty()) {
      return;
    }
    for (Finding one : said) {
      if (one.severity() != Severity.NOTE) {
        boolean law = one.headline().contains(LEGAL);
        add(law ? ofLaw : because, suspect.get(), new Broken(one.span().file().stem(), one));
      }
    }
  }

  private static String words(Suspect suspect) {
    Span cause = suspect.finding().span();
    return cause.file().fileName() + ":" + cause.from().line();
  }

  private static Severity gravest(List<Finding> findings) {
    Severity gravest = Severity.NOTE;
    for (Finding one : findings) {
      gravest = one.severity().compareTo(gravest) < 0 ? one.severity() : gravest;
    }
    return gravest;
  }

  /** One finding for all that follows from a cause; a single one only tells its cause. */
  private static Finding together(Suspect suspect, List<Broken> broken, String what) {
    Finding first = broken.get(0).finding();
    Span cause = suspect.finding().span();
    if (broken.size() == 1) {
      return first.seeing("the cause", cause);
    }
    Map<String, Set<String>> feeds = new LinkedHashMap<>();
    List<Finding> all = new ArrayList<>();
    for (Broken one : broken) {
      feeds.computeIfAbsent(one.code(), none -> new TreeSet<>()).add(one.finding().headline());
      all.add(one.finding());
    }
    Finding told =
        Finding.of(
                CODE,
                gravest(all),
                first.span(),
                broken.size()
                    + " "
                    + what
                    + " of "
                    + named(feeds.keySet())
                    + BROKEN
                    + words(suspect))
            .seeing("the cause", cause)
            .about(first.about());
    int named = 0;
    for (Map.Entry<String, Set<String>> feed : feeds.entrySet()) {
      if (named++ < FEEDS_NAMED) {
        told = told.noting(feed.getKey() + ": " + String.join("; ", feed.getValue()));
      }
    }
    if (feeds.size() > FEEDS_NAMED) {
      told = told.noting("and in " + (feeds.size() - FEEDS_NAMED) + " more");
    }
    return told.helping("fix the cause first and check again");
  }

  private static String named(Set<String> codes) {
    return codes.size() > FEW ? Plural.of(codes.size(), "feed") : Choices.all(codes);
  }
}
