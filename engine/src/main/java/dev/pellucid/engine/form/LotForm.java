package dev.pellucid.engine.form;

import dev.pellucid.text.ToBeGiven;
import java.time.LocalDate;

/** A new lot of the store, as it comes in. */
public final class LotForm {
  private LotForm() {}

  /** Its text. */
  public static String text(String number, String ingredient, LocalDate received) {
    return """
        lots:
          - number: %s
            ingredient: %s
            received: %s
            best-before: %s
            quantity: %s kg
            # passed or failed; no sheet names a lot that was not looked at.
            inspection: %s
            # What was measured of it stands under contents, as in a file of ingredients/; who sent it
            # under supplier.
        """
        .formatted(number, ingredient, received, ToBeGiven.MARK, ToBeGiven.MARK, ToBeGiven.MARK);
  }
}
