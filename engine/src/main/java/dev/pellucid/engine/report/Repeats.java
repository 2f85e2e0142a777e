package dev.pellucid.engine.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What is done more than once in a batch, and what each of them is called. */
enum Repeats {
  LOADS("Load"),
  ROUNDS("Round");

  /** Beyond so many a sheet has no room for each. */
  private static final int MOST_ON_A_SHEET = 3;

  private final String word;

  Repeats(String word) {
    this.word = word;
  }

  /**
   * One of them.
   *
   * @param number as it stands on the sheet
   * @param alone whether there is no other
   */
  record One(String word, String number, String of, boolean alone) {
    /** {@code Load 2}. */
    String name() {
      return word + " " + number;
    }

    /** {@code Load 2 of 3, into the mixer}. */
    String before(String words) {
      return alone ? TaskWords.capital(words) : name() + " of " + of + ", " + words;
    }
  }

  /** All of them, or one whose number is written by hand where there are too many. */
  List<One> of(int count) {
    List<One> all = new ArrayList<>();
    if (count > MOST_ON_A_SHEET) {
      all.add(new One(word, "____", String.valueOf(count), false));
      return all;
    }
    for (int i = 1; i <= count; i++) {
      all.add(new One(word, String.valueOf(i), String.valueOf(count), count == 1));
    }
    return all;
  }

  /** Says that a sheet is for one of them, where there are too many for one sheet. */
  Optional<String> aSheetForEach(int count) {
    return count > MOST_ON_A_SHEET
        ? Optional.of(
            "One sheet for each of the "
                + count
                + " "
                + word.toLowerCase(Locale.ROOT)
                + "s: write the number of this one where it is left open.")
        : Optional.empty();
  }
}
