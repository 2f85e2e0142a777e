package dev.pellucid.engine.goal;

import dev.pellucid.engine.data.BatchNumber;
import java.util.regex.Pattern;

/**
 * How a sheet, a label or a purchase list of ours is known by its beginning, so that a file of
 * somebody else that only bears the same name is left alone.
 */
final class OwnMark {
  private static final String RULE = "\n" + "=".repeat(100) + "\n";

  private final String title;
  private final Pattern text;

  private OwnMark(String title, String text) {
    this.title = "<!DOCTYPE html>\n(?s:.*)<title>" + title;
    this.text = Pattern.compile(text);
  }

  /**
   * @param name the code of a recipe or premix, or the number of a batch: what its file is called
   */
  static OwnMark ofSheet(String name) {
    String code = code(name);
    String its = Pattern.quote(code);
    String number = name.equals(code) ? "" : "Batch number +" + Pattern.quote(name) + "\n";
    return new OwnMark(
        "Batch sheet (?:" + Pattern.quote(name) + "|" + its + ")</title>",
        "(?m)^" + its + " (?s:.*)" + RULE + "(?s:.*)" + number);
  }

  /**
   * @param name as for a sheet
   */
  static OwnMark ofLabel(String name) {
    String its = Pattern.quote(code(name));
    return new OwnMark("Label " + its + "</title>", "\\A={64}\n(?s:.*)\n" + its + "\n");
  }

  static OwnMark ofPurchases() {
    return new OwnMark("Purchase list ", "\\APurchase list (?s:.*)" + RULE);
  }

  private static String code(String name) {
    return BatchNumber.of(name).map(BatchNumber::code).orElse(name);
  }

  boolean isOnText(String beginning) {
    return text.matcher(beginning).find();
  }

  boolean isOnHtml(String beginning) {
    return Pattern.compile(title).matcher(beginning).lookingAt();
  }
}
