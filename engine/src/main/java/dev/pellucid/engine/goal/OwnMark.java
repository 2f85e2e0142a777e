package dev.pellucid.engine.goal;

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

  static OwnMark ofSheet(String code) {
    String its = Pattern.quote(code);
    return new OwnMark("Batch sheet " + its + "</title>", "(?m)^" + its + " (?s:.*)" + RULE);
  }

  static OwnMark ofLabel(String code) {
    String its = Pattern.quote(code);
    return new OwnMark("Label " + its + "</title>", "\\A={64}\n(?s:.*)\n" + its + "\n");
  }

  static OwnMark ofPurchases() {
    return new OwnMark("Purchase list ", "\\APurchase list (?s:.*)" + RULE);
  }

  boolean isOnText(String beginning) {
    return text.matcher(beginning).find();
  }

  boolean isOnHtml(String beginning) {
    return Pattern.compile(title).matcher(beginning).lookingAt();
  }
}
