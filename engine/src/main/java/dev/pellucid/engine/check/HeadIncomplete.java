package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.UnreadHead;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;

/**
 * A line of the head that an approved recipe does without, so that rules which need it fall silent.
 * A recipe that has all of an approved one but its status is told that too, since it counts as a
 * draft and is asked less.
 */
final class HeadIncomplete implements Rule {
  private static final Code CODE = new Code("head-incomplete");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    ResolvedRecipe told = recipe.recipe();
    if (!told.isApproved()) {
      status(told, out);
      return;
    }
    if (told.fish().isEmpty()) {
      missing(
          told,
          "fish",
          "does not say for which size of fish it is",
          "the die against the pellet they take, the profiles against their size, the crumbs of"
              + " a premix in their meal",
          "fish 50 to 250 g",
          out);
    }
    if (told.habit().isEmpty() && told.process().isTold()) {
      missing(
          told,
          "habit",
          "does not say whether it floats or sinks",
          "starch for its habit",
          "habit sinking",
          out);
    }
    // Overage that is told per weighing asks for the batch by itself.
    if (told.batch().isEmpty() && !told.source().text().contains("per weighing")) {
      missing(
          told,
          "batch",
          "does not say how much is made at once",
          "the fill of the mixer, what the scales can weigh, weights as they are rounded",
          "batch 500 kg weighed",
          out);
    }
  }

  /** What has a label, a batch and a store is meant to be made. */
  private static void status(ResolvedRecipe told, Remarks out) {
    boolean meant =
        told.label().isPresent()
            && told.batch().isPresent()
            && told.process().isTold()
            && told.fish().isPresent();
    if (meant && !UnreadHead.mayHave(told.source(), "status")) {
      out.accept(
          Finding.warning(
                  CODE,
                  told.declared(),
                  told.code() + " has a label and no status, so it counts as a draft")
              .noting("not asked of a draft: species, need, shelf life, cooling, sizes, settings")
              .helping("add a line to the head: status approved, or status draft while it is one")
              .about(new About("status", About.Side.NONE, List.of())));
    }
  }

  private static void missing(
      ResolvedRecipe told, String word, String what, String silent, String line, Remarks out) {
    if (!UnreadHead.mayHave(told.source(), word)) {
      out.accept(
          Finding.warning(CODE, told.declared(), told.code() + " " + what)
              .noting("not looked at: " + silent)
              .helping("add a line to the head: " + line + ", with your own")
              .about(new About(word, About.Side.NONE, List.of())));
    }
  }
}
