package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Label;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.Optional;

/** A label that nothing is held against, since the folder names no rules for labels. */
final class LabelWithoutRules implements Rule {
  private static final Code CODE = new Code("label-without-rules");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public boolean isConsequence() {
    return true;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Optional<Label> label = recipe.recipe().label();
    if (label.isPresent() && recipe.tables().settings().label().isEmpty()) {
      out.accept(finding(recipe, label.get()));
    }
  }

  private static Finding finding(RuleContext recipe, Label label) {
    return Finding.note(
            CODE, label.heading(), "the label of " + recipe.recipe().code() + " is not checked")
        .noting("pellucid.yaml names no label rules")
        .helping("write label: and the name of a file of label/ in pellucid.yaml");
  }
}
