package dev.pellucid.engine.report;

import dev.pellucid.engine.label.BagLabel;
import dev.pellucid.engine.label.BagLabel.Fact;
import dev.pellucid.engine.label.BagLabel.Statement;
import java.util.ArrayList;
import java.util.List;

/** A bag label as plain text, 64 wide; lines end in {@code \n}. */
public final class LabelText {
  private static final int WIDTH = 64;
  private static final int NAME = 30;
  private static final String ROOM = "_".repeat(24);

  private final StringBuilder out = new StringBuilder();

  private LabelText() {}

  /** The whole label. */
  public static String of(BagLabel label) {
    LabelText text = new LabelText();
    text.label(label);
    return text.out.toString();
  }

  private void label(BagLabel label) {
    line("=".repeat(WIDTH));
    wrapped("", label.title());
    line(label.code());
    wrapped("", label.what());
    if (!label.draftBecause().isEmpty()) {
      line("*** " + LabelHtml.DRAFT + " ***");
      label.draftBecause().forEach(reason -> wrapped("    ", reason));
    }
    label.statements().forEach(this::statement);
    line("-".repeat(WIDTH));
    label.facts().forEach(this::fact);
    line("=".repeat(WIDTH));
    line("");
    line(LabelHtml.ASIDE);
    label.aside().forEach(sentence -> wrapped("  ", sentence));
  }

  private void statement(Statement statement) {
    line("-".repeat(WIDTH));
    line(statement.heading());
    if (statement instanceof Statement.Figures figures) {
      figures.figures().forEach(this::fact);
    } else if (statement instanceof Statement.Names names) {
      wrapped("  ", String.join("; ", names.names()) + ".");
    } else if (statement instanceof Statement.Sentences sentences) {
      sentences.sentences().forEach(sentence -> wrapped("  ", sentence));
    }
  }

  private void fact(Fact fact) {
    String value = fact.value().isEmpty() ? ROOM : fact.value();
    List<String> name = wrap(fact.name(), WIDTH - 2 - 2 - length(value));
    for (int i = 0; i < name.size() - 1; i++) {
      line("  " + name.get(i));
    }
    String last = name.get(name.size() - 1);
    int gap = Math.max(2, Math.max(NAME, length(last) + 2) - length(last));
    int right = WIDTH - 2 - length(last) - length(value);
    line("  " + last + " ".repeat(Math.max(2, Math.min(gap, right))) + value);
  }

  private void wrapped(String indent, String words) {
    wrap(words, WIDTH - indent.length()).forEach(row -> line(indent + row));
  }

  private static List<String> wrap(String words, int width) {
    List<String> rows = new ArrayList<>();
    StringBuilder row = new StringBuilder();
    for (String word : words.split(" ", -1)) {
      if (row.length() > 0 && length(row.toString()) + 1 + length(word) > width) {
        rows.add(row.toString());
        row = new StringBuilder();
      }
      row.append(row.length() > 0 ? " " : "").append(word);
    }
    rows.add(row.toString());
    return rows;
  }

  private void line(String text) {
    out.append(text.stripTrailing()).append('\n');
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }
}
