package dev.pellucid.engine.report;

import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Fact;
import dev.pellucid.engine.report.Block.Facts;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Signatures;
import dev.pellucid.engine.report.Block.Stamp;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Ticks;
import dev.pellucid.engine.report.Block.Title;
import dev.pellucid.engine.report.Block.Warnings;
import dev.pellucid.engine.report.Block.Words;
import java.util.List;

/** Blocks as plain text for a fixed-width font. */
final class TextPage {
  private static final int WIDTH = 100;
  private static final int ROOM = 10;
  private static final int NAME = 26;
  private final StringBuilder out = new StringBuilder();

  String render(List<Block> blocks) {
    blocks.forEach(this::block);
    return out.toString();
  }

  private void block(Block block) {
    if (block instanceof Title title) {
      line(title.code() + "  " + title.title());
      line("=".repeat(WIDTH));
    } else if (block instanceof Stamp stamp) {
      line("*** " + stamp.words() + " ***");
      stamp.because().forEach(reason -> wrapped("    ", "    ", reason));
      line("");
    } else if (block instanceof Heading heading) {
      heading(heading);
    } else if (block instanceof Words words) {
      wrapped("", "", words.words());
    } else if (block instanceof Facts facts) {
      facts.facts().forEach(this::fact);
    } else if (block instanceof Ticks ticks) {
      ticks.sentences().forEach(sentence -> wrapped("[ ] ", "    ", sentence));
    } else if (block instanceof Warnings warnings) {
      warnings.sentences().forEach(sentence -> wrapped("! ", "  ", sentence));
    } else if (block instanceof Table table) {
      table(table);
    } else if (block instanceof Signatures signatures) {
      signatures.who().forEach(who -> fact(new Fact(who, "")));
    }
  }

  private void heading(Heading heading) {
    if (!out.toString().endsWith("\n\n")) {
      line("");
    }
    line(heading.words());
    line((heading.newPage() ? "=" : "-").repeat(WIDTH));
  }

  private void fact(Fact fact) {
    String value = fact.value().isEmpty() ? "_".repeat(NAME) : fact.value();
    String name = padded(fact.name(), NAME, false) + "  ";
    wrapped(name, " ".repeat(length(name)), value);
  }

  private void table(Table table) {
    int[] widths = new int[table.columns().size()];
    for (int i = 0; i < widths.length; i++) {
      Column column = table.columns().get(i);
      widths[i] = Math.max(length(column.head()), column.holds() == Holds.ROOM ? ROOM : 0);
      for (List<String> row : table.rows()) {
        widths[i] = Math.max(widths[i], length(row.get(i)));
      }
    }
    List<String> heads = table.columns().stream().map(Column::head).toList();
    row(table, heads, widths, " ");
    rule(widths);
    for (int i = 0; i < table.rows().size(); i++) {
      boolean sum = table.total() && i == table.rows().size() - 1;
      if (sum) {
        rule(widths);
      }
      row(table, table.rows().get(i), widths, sum ? " " : "_");
    }
    line("");
  }

  private void row(Table table, List<String> cells, int[] widths, String room) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < widths.length; i++) {
      Holds holds = table.columns().get(i).holds();
      boolean blank = holds == Holds.ROOM && cells.get(i).isEmpty();
      text.append(i == 0 ? "" : "  ")
          .append(
              blank
                  ? room.repeat(widths[i])
                  : padded(cells.get(i), widths[i], holds == Holds.FIGURES));
    }
    line(text.toString());
  }

  private void rule(int[] widths) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < widths.length; i++) {
      text.append(i == 0 ? "" : "  ").append("-".repeat(widths[i]));
    }
    line(text.toString());
  }

  private void wrapped(String first, String next, String words) {
    StringBuilder text = new StringBuilder(first);
    int start = length(first);
    int at = start;
    for (String word : words.split(" ", -1)) {
      if (at > start && at + 1 + length(word) > WIDTH) {
        line(text.toString());
        text = new StringBuilder(next);
        start = length(next);
        at = start;
      }
      if (at > start) {
        text.append(' ');
        at++;
      }
      text.append(word);
      at += length(word);
    }
    line(text.toString());
  }

  private void line(String text) {
    out.append(text.stripTrailing()).append('\n');
  }

  private static String padded(String text, int width, boolean right) {
    String room = " ".repeat(Math.max(0, width - length(text)));
    return right ? room + text : text + room;
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }
}
