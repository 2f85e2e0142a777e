package dev.pellucid.engine.goal;

import java.util.Optional;

/**
 * The batch sheet of a recipe or premix.
 *
 * @param code of the recipe or premix, or the number of a batch that is planned; no two are alike
 * @param draft whether it is stamped as a draft not to be made
 * @param premix whether it is of a premix
 * @param label what goes on the bag, where the recipe has a label and the folder label rules
 */
public record Sheet(
    String code,
    String text,
    String html,
    boolean draft,
    boolean premix,
    Optional<PrintedLabel> label) {

  /** A bag label, rendered. */
  public record PrintedLabel(String text, String html) {}
}
