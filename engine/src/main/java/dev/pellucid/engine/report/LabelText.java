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
    label.facts().forEach(fact -> fact(fact).forEach(this::line));
    line("=".repeat(WIDTH));
    line("");
    line(LabelHtml.ASIDE);
    label.aside().forEach(sentence -> wrapped("  ", sentence));
  }

  private void statement(Statement statement) {
    line("-".repeat(WIDTH));
    line(statement.heading());
    statement.accept(new Content()).forEach(this::line);
  }

  /** What stands under a heading, as lines. */
  private static final class Content implements Statement.Visitor<List<String>> {
    @Override
    public List<String> figures(Statement.Figures figures) {
      return figures.figures().stream().flatMap(fact -> fact(fact).stream()).toList();
    }

    @Override
    public List<String> names(Statement.Names names) {
      return indented("  ", String.join("; ", names.names()) + ".");
    }

    @Override
    public List<String> groups(Statement.Groups groups) {
      return groups.groups().stream()
          .flatMap(group -> indented("  ", group.words()).stream())
          .toList();
    }

    @Override
    public List<String> sentences(Statement.Sentences sentences) {
      return sentences.sentences().stream()
          .flatMap(sentence -> indented("  ", sentence).stream())
          .toList();
    }
  }

  private static List<String> fact(Fact fact) {
    String value = fact.value().isEmpty() ? ROOM : fact.value();
    if (length(value) > WIDTH - NAME) {
      List<String> under = new ArrayList<>();
      under.add("  " + fact.name());
      under.addAll(indented("    ", value));
      return under;
    }
    List<String> name = wrap(fact.name(), WIDTH - 2 - 2 - length(value));
    List<String> rows = new ArrayList<>();
    name.forEach(row -> rows.add("  " + row));
    String last = name.get(name.size() - 1);
    int gap = Math.max(2, Math.max(NAME, length(last) + 2) - length(last));
    int right = WIDTH - 2 - length(last) - length(value);
    rows.set(rows.size() - 1, "  " + last + " ".repeat(Math.max(2, Math.min(gap, right))) + value);
    return rows;
  }

  private static List<String> indented(String indent, String words) {
    return wrap(words, WIDTH - indent.length()).stream().map(row -> indent + row).toList();
  }

  private void wrapped(String indent, String words) {
    indented(indent, words).forEach(this::line);
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
