package dev.pellucid.engine.check;

import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.UnreadHead;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.List;

/**
 * A recipe that does not say for which species it is. What a species digests, its caps and its law
 * are then unknown: an approved recipe must not be made so, a draft is told what could not be
 * judged.
 */
final class SpeciesMissing implements Rule {
  private static final Code CODE = new Code("species-missing");

  private static final int NAMED = 5;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    ResolvedRecipe told = recipe.recipe();
    if (told.species().isPresent() || UnreadHead.mayHave(told.source(), "species")) {
      return;
    }
    List<String> unjudged = NotJudged.names(recipe, LimitStatus.State.FEED_NOT_TOLD);
    // What hangs on the process too is told once, where the process is missed.
    boolean draftMissesIt = !unjudged.isEmpty() && told.process().isTold();
    if (told.isApproved() || draftMissesIt) {
      out.accept(finding(recipe, unjudged));
    }
  }

  private static Finding finding(RuleContext recipe, List<String> unjudged) {
    ResolvedRecipe told = recipe.recipe();
    String headline = told.code() + " does not say for which species it is";
    Finding finding =
        told.isApproved()
            ? Finding.error(CODE, told.declared(), headline)
            : Finding.note(
                CODE, told.declared(), headline + ", so " + NotJudged.count(unjudged) + " judged");
    List<String> silent = new ArrayList<>();
    if (!unjudged.isEmpty()) {
      finding = finding.noting(NotJudged.words("no species is given", unjudged));
    }
    if (told.isApproved()) {
      silent.add("its own protein");
      silent.add("what a species takes at most of an ingredient");
      silent.add("the pellet for its fish");
      if (recipe.tables().settings().jurisdiction().isPresent()) {
        silent.add("the law for one group of species alone");
      }
      finding = finding.noting("not looked at either: " + String.join(", ", silent));
    }
    return finding.helping(help(recipe));
  }

  private static String help(RuleContext recipe) {
    List<String> known = List.copyOf(recipe.tables().species().keySet());
    String named = String.join(", ", known.subList(0, Math.min(NAMED, known.size())));
    return "add a line to the head: species, and one of this folder"
        + (known.isEmpty() ? "" : ", " + named)
        + (known.size() > NAMED ? " and so on" : "");
  }
}
