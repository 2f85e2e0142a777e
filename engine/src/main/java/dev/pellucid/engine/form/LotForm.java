package dev.pellucid.engine.form;

import dev.pellucid.text.ToBeGiven;
import java.time.LocalDate;

/** A new lot of the store, as it comes in. */
public final class LotForm {
  private LotForm() {}

  /** Its text. */
  public static String text(String number, String ingredient, LocalDate received) {
    return String.join(
            "\n",
            "lots:",
            "  - number: " + number,
            "    ingredient: " + ingredient,
            "    received: " + received,
            "    best-before: " + ToBeGiven.MARK,
            "    quantity: " + FeedText.wanted("kg"),
            "    # passed or failed; no sheet names a lot that was not looked at.",
            "    inspection: " + ToBeGiven.MARK,
            "    # Who sent it stands under supplier, what was measured of it under contents.")
        + "\n";
  }
}
