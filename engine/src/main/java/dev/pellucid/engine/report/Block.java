package dev.pellucid.engine.report;

import j2html.tags.DomContent;
import java.util.List;

/** A piece of a sheet, in words: what the text and the HTML renderer have in common. */
sealed interface Block {
  /** Hands this block to the one method of the renderer that is for its kind. */
  void to(Renderer renderer);

  /** Answers every kind of block; a kind that is new does not compile until all renderers do. */
  interface Renderer {
    void running(Running running);

    void title(Title title);

    void stamp(Stamp stamp);

    void heading(Heading heading);

    void words(Words words);

    void folded(Folded folded);

    void together(Together together);

    void facts(Facts facts);

    void ticks(Ticks ticks);

    void warnings(Warnings warnings);

    void table(Table table);

    void signatures(Signatures signatures);

    void points(Points points);

    void verbatim(Verbatim verbatim);

    void picture(Picture picture);
  }

  /** The head of the sheet. */
  record Title(String code, String title) implements Block {
    @Override
    public void to(Renderer renderer) {
      renderer.title(this);
    }
  }

  /**
   * What stands on every page that is printed, beside its number.
   *
   * @param above for the upper margin; may be empty
   */
  record Running(String above, String words) implements Block {
    @Override
    public void to(Renderer renderer) {
      renderer.running(this);
    }
  }

  /** Says that a sheet is not to be used, and why. */
  record Stamp(String words, List<String> because) implements Block {
    public Stamp {
      because = List.copyOf(because);
    }

    @Override
    public void to(Renderer renderer) {
      renderer.stamp(this);
    }
  }

  /**
   * The beginning of a part.
   *
   * @param newPart whether it begins what another reader gets
   */
  record Heading(String words, boolean newPart) implements Block {
    @Override
    public void to(Renderer renderer) {
      renderer.heading(this);
    }
  }

  /** A sentence or more. */
  record Words(String words) implements Block {
    @Override
    public void to(Renderer renderer) {
      renderer.words(this);
    }
  }

  /**
   * Blocks that a reader opens when they are wanted.
   *
   * @param words that stand there in their place
   */
  record Folded(String words, List<Block> blocks) implements Block {
    public Folded {
      blocks = List.copyOf(blocks);
    }

    @Override
    public void to(Renderer renderer) {
      renderer.folded(this);
    }
  }

  /** How blocks stand together on paper. */
  enum Look {
    /** On one page. */
    KEPT,
    /** Small, beside the work. */
    ASIDE
  }

  /** Blocks that belong together. */
  record Together(Look look, List<Block> blocks) implements Block {
    public Together {
      blocks = List.copyOf(blocks);
    }

    @Override
    public void to(Renderer renderer) {
      renderer.together(this);
    }
  }

  /** What is told, by name; an empty value is room to write. */
  record Facts(List<Fact> facts) implements Block {
    public Facts {
      facts = List.copyOf(facts);
    }

    @Override
    public void to(Renderer renderer) {
      renderer.facts(this);
    }
  }

  /** One thing told. */
  record Fact(String name, String value) {}

  /** Sentences to tick off. */
  record Ticks(List<String> sentences) implements Block {
    public Ticks {
      sentences = List.copyOf(sentences);
    }

    @Override
    public void to(Renderer renderer) {
      renderer.ticks(this);
    }
  }

  /** Sentences that keep from harm. */
  record Warnings(List<String> sentences) implements Block {
    public Warnings {
      sentences = List.copyOf(sentences);
    }

    @Override
    public void to(Renderer renderer) {
      renderer.warnings(this);
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

    @Override
    public void to(Renderer renderer) {
      renderer.table(this);
    }
  }

  /** What a column holds. */
  enum Holds {
    WORDS,
    /** A short name, kept on one line. */
    NAME,
    FIGURES,
    /** What a scale is to show; nothing else on a sheet looks like it. */
    WEIGHT,
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

    @Override
    public void to(Renderer renderer) {
      renderer.signatures(this);
    }
  }

  /** Sentences, one below the other. */
  record Points(List<String> sentences) implements Block {
    public Points {
      sentences = List.copyOf(sentences);
    }

    @Override
    public void to(Renderer renderer) {
      renderer.points(this);
    }
  }

  /** Lines as they stand in a file: a diff, commands. */
  record Verbatim(List<String> lines) implements Block {
    public Verbatim {
      lines = List.copyOf(lines);
    }

    @Override
    public void to(Renderer renderer) {
      renderer.verbatim(this);
    }
  }

  /** A picture of figures that stand beside it in words too; only a page shows it. */
  record Picture(DomContent svg) implements Block {
    @Override
    public void to(Renderer renderer) {
      renderer.picture(this);
    }
  }
}
