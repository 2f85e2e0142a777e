package dev.pellucid.engine.workspace;

import dev.pellucid.engine.check.SharesTogether;
import dev.pellucid.engine.check.SmallShares;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Related;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What only all recipes together show: a share or a dose that no other of them bears out. And what
 * a recipe says of a premix steps back where the slip itself has been told of, in a profile or in
 * that premix.
 */
final class RecipesTogether {
  /** Codes of slips in premixes that are also seen by what a profile asks. */
  private static final Set<String> BY_PROFILE =
      Set.of("tenfold-slip", "salt-for-element", "supply-off-limit");

  private static final String OFF_DOSE = "premix-off-dose";

  private RecipesTogether() {}

  /**
   * @param findings all that is known so far; takes what more there is, and loses what steps back
   */
  static void look(Shared shared, List<Summary> recipes, List<Finding> findings) {
    Set<String> told = new HashSet<>();
    for (Finding finding : shared.findings()) {
      if (finding.code().toString().endsWith("-ten-times-off")
          || finding.code().toString().equals("limit-on-other-side")
          || finding.code().toString().equals("limit-terms-differ")) {
        told.add(line(finding.span()));
      }
    }
    List<SmallShares> shares = shares(recipes);
    Set<String> offDose = doses(shared, shares, findings);
    for (Finding finding : findings) {
      if (finding.code().toString().equals("supply-off-limit")) {
        told.add("of limit " + line(finding.span()));
      }
    }
    if (!told.isEmpty() || !offDose.isEmpty()) {
      findings.removeIf(one -> stepsBack(one, told, offDose));
    }
    outliers(shared, recipes, shares, findings);
  }

  /** An ingredient that tells its usual share is held to that alone. */
  private static boolean tellsUsual(Shared shared, String name) {
    Ingredient ingredient = shared.tables().ingredients().get(name);
    return ingredient == null || ingredient.usualShare().isPresent();
  }

  private static boolean stepsBack(Finding finding, Set<String> told, Set<String> offDose) {
    String code = finding.code().toString();
    if (code.equals(OFF_DOSE)) {
      return offDose.contains(finding.about().subject());
    }
    boolean own =
        code.equals("limit-ten-times-off") && finding.span().file().path().endsWith(Trees.RECIPE);
    if (!own && !BY_PROFILE.contains(code)) {
      return false;
    }
    for (Related related : finding.related()) {
      if (told.contains(line(related.span()))) {
        return true;
      }
    }
    return told.contains(line(finding.span()))
        || code.equals("tenfold-slip") && told.contains("of limit " + line(finding.span()));
  }

  private static String line(Span span) {
    return span.file().path() + ":" + span.from().line();
  }

  /** The premixes whose dose is at fault, and not the recipes. */
  private static Set<String> doses(
      Shared shared, List<SmallShares> recipes, List<Finding> findings) {
    Set<String> offDose = new HashSet<>();
    for (SharesTogether.Dose dose : SharesTogether.doses(shared.premixes(), recipes)) {
      offDose.add(dose.code());
      findings.add(dose.finding());
    }
    return offDose;
  }

  private static List<SmallShares> shares(List<Summary> recipes) {
    List<SmallShares> shares = new ArrayList<>(recipes.size());
    for (Summary recipe : recipes) {
      shares.add(recipe.shares());
    }
    return shares;
  }

  private static void outliers(
      Shared shared, List<Summary> recipes, List<SmallShares> shares, List<Finding> findings) {
    for (SharesTogether.Outlier one : SharesTogether.outliers(shares)) {
      Summary recipe = recipes.get(one.recipe());
      String beside = recipes.get(one.nearest()).code();
      Optional<SourceFile> text = shared.texts().read(recipe.path(), new ArrayList<>());
      if (text.isPresent() && !tellsUsual(shared, one.name())) {
        findings.add(one.finding(recipe.code(), beside, text.get()));
      }
    }
  }
}
