package dev.pellucid.parse;

import dev.pellucid.measure.Calendar;
import dev.pellucid.syntax.Word;
import java.time.LocalDate;
import org.antlr.v4.runtime.Token;

/** A day as it stands in a line; a finding where it can be none. */
final class DayWord {
  private DayWord() {}

  /**
   * A day that is none stays in the tree as it was written, so that a waiver counts as expired and
   * a review as none.
   */
  static Word of(Token token, Pieces pieces) {
    Word day = pieces.word(token);
    if (!Days.isDay(day.text())) {
      pieces.remark(Complaints.dayForm(day));
    } else if (!Calendar.holds(LocalDate.parse(day.text()))) {
      pieces.say(Complaints.dayOutOfBounds(day));
    }
    return day;
  }
}
