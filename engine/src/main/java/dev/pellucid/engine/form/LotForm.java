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
            "    supplier: " + ToBeGiven.MARK,
            "    # The number that the supplier has for it, on the sack or the delivery note.",
            "    supplier-lot: " + ToBeGiven.MARK,
            "    received: " + received,
            "    best-before: " + ToBeGiven.MARK,
            "    quantity: " + FeedText.wanted("kg"),
            "    # waiting, passed or failed; no sheet names a lot that is not passed.",
            "    inspection: " + ToBeGiven.MARK,
            "    # What was measured of it stands under contents, the bin it lies in under bin.")
        + "\n";
  }
}
