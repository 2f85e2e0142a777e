package dev.pellucid.engine.report;

import java.util.List;

/** A piece of a sheet, in words: what the text and the HTML renderer have in common. */
sealed interface Block {
  /** The head of the sheet. */
  record Title(String code, String title) implements Block {}

  /**
   * What stands on every page that is printed, beside its number.
   *
   * @param above for the upper margin; may be empty
   */
  record Running(String above, String words) implements Block {}

  /** Says that a sheet is not to be used, and why. */
  record Stamp(String words, List<String> because) implements Block {
    public Stamp {
      because = List.copyOf(because);
    }
  }

  /**
   * The beginning of a part.
   *
   * @param newPage whether it begins a page
   */
  record Heading(String words, boolean newPage) implements Block {}

  /** A sentence or more. */
  record Words(String words) implements Block {}

  /** What is told, by name; an empty value is room to write. */
  record Facts(List<Fact> facts) implements Block {
    public Facts {
      facts = List.copyOf(facts);
    }
  }

  /** One thing told. */
  record Fact(String name, String value) {}

  /** Sentences to tick off. */
  record Ticks(List<String> sentences) implements Block {
    public Ticks {
      sentences = List.copyOf(sentences);
    }
  }

  /** Sentences that keep from harm. */
  record Warnings(List<String> sentences) implements Block {
    public Warnings {
      sentences = List.copyOf(sentences);
    }
  }

  /**
   * A table; an empty cell is room to write. A row that does not fit its head is a bug, and no
   * table is made of it.
   *
   * @param total whether the last row sums up the others
   */
  record Table(List<Column> columns, List<List<String>> rows, boolean total) implements Block {
    public Table {
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
      for (List<String> row : rows) {
        if (row.size() != columns.size()) {
          throw new IllegalArgumentException(
              row.size() + " cells under " + columns.size() + " heads: " + row);
        }
      }
    }
  }

  /** What a column holds. */
  enum Holds {
    WORDS,
    /** A short name, kept on one line. */
    NAME,
    FIGURES,
    /** Room to write. */
    ROOM,
    /** Room for a tick or initials. */
    INITIALS
  }

  /** A column. */
  record Column(String head, Holds holds) {}

  /** Names below lines to sign on. */
  record Signatures(List<String> who) implements Block {
    public Signatures {
      who = List.copyOf(who);
    }
  }
}
