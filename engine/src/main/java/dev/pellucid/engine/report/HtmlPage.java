package dev.pellucid.engine.report;

import dev.pellucid.engine.html.Inline;
import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Fact;
import dev.pellucid.engine.report.Block.Facts;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Running;
import dev.pellucid.engine.report.Block.Signatures;
import dev.pellucid.engine.report.Block.Stamp;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Ticks;
import dev.pellucid.engine.report.Block.Title;
import dev.pellucid.engine.report.Block.Warnings;
import dev.pellucid.engine.report.Block.Words;
import java.util.List;

/** Blocks as one HTML file; every word from a recipe is escaped. */
final class HtmlPage implements Block.Renderer {
  private static final String STYLE = Inline.text("report/sheet.css");

  /** A table to write in is kept on one page up to so many rows. */
  private static final int KEPT_WHOLE = 6;

  /** A table to read is set small beyond so many rows. */
  private static final int DENSE_FROM = 14;

  private final StringBuilder margins = new StringBuilder();
  private final StringBuilder body = new StringBuilder();

  String render(String title, List<Block> blocks) {
    blocks.forEach(block -> block.to(this));
    return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>"
        + escaped(title)
        + "</title>\n<style>\n"
        + STYLE
        + margins
        + "</style>\n</head>\n<body>\n"
        + body
        + "</body>\n</html>\n";
  }

  /**
   * Boxes in the margins of each printed page; a browser that knows no such boxes leaves them out,
   * and the heads of both parts still say where the sheet comes from.
   */
  @Override
  public void running(Running running) {
    margins
        .append("@page {\n  @top-center { content: ")
        .append(quoted(running.above()))
        .append("; font: bold 11pt sans-serif; }\n  @bottom-left { content: ")
        .append(quoted(running.words()))
        .append(
            """
            ; font: 8pt sans-serif; }
              @bottom-right { content: "page " counter(page) " of " counter(pages);\
             font: 8pt sans-serif; }
            }
            """);
  }

  /** As a string of a style sheet: all but letters, figures and plain marks by their numbers. */
  private static String quoted(String words) {
    StringBuilder text = new StringBuilder("\"");
    words
        .codePoints()
        .forEach(
            c -> {
              if (Character.isLetterOrDigit(c) || " ,.-:".indexOf(c) >= 0) {
                text.appendCodePoint(c);
              } else {
                text.append('\\').append(Integer.toHexString(c)).append(' ');
              }
            });
    return text.append('"').toString();
  }

  @Override
  public void title(Title title) {
    line("<h1>" + escaped(title.code() + "  " + title.title()) + "</h1>");
  }

  @Override
  public void stamp(Stamp stamp) {
    String reasons = escaped(String.join("; ", stamp.because()));
    String words = "<strong>" + escaped(stamp.words()) + "</strong>";
    line("<div class=\"stamp\">" + words + "<br>" + reasons + "</div>");
  }

  @Override
  public void heading(Heading heading) {
    String open = heading.newPage() ? "<h2 class=\"page\">" : "<h2>";
    line(open + escaped(heading.words()) + "</h2>");
  }

  @Override
  public void words(Words words) {
    line("<p>" + escaped(words.words()) + "</p>");
  }

  @Override
  public void facts(Facts facts) {
    line("<dl>");
    facts.facts().forEach(this::fact);
    line("</dl>");
  }

  @Override
  public void ticks(Ticks ticks) {
    list("tick", ticks.sentences());
  }

  @Override
  public void warnings(Warnings warnings) {
    list("warn", warnings.sentences());
  }

  private void fact(Fact fact) {
    String open = fact.value().isEmpty() ? "<dd class=\"write\">" : "<dd>";
    line("<dt>" + escaped(fact.name()) + "</dt>" + open + escaped(fact.value()) + "</dd>");
  }

  private void list(String kind, List<String> sentences) {
    line("<ul class=\"" + kind + "\">");
    sentences.forEach(sentence -> line("<li>" + escaped(sentence) + "</li>"));
    line("</ul>");
  }

  @Override
  public void signatures(Signatures signatures) {
    body.append("<div class=\"sign\">");
    signatures.who().forEach(who -> body.append("<span>").append(escaped(who)).append("</span>"));
    line("</div>");
  }

  @Override
  public void table(Table table) {
    boolean writes = table.columns().stream().anyMatch(column -> column.holds() == Holds.INITIALS);
    line("<table class=\"" + kind(table, writes) + "\">");
    List<String> heads = table.columns().stream().map(Column::head).toList();
    line("<thead><tr>" + cells("th", table.columns(), heads) + "</tr></thead>");
    line("<tbody>");
    for (int i = 0; i < table.rows().size(); i++) {
      boolean sum = table.total() && i == table.rows().size() - 1;
      String open = sum ? "<tr class=\"total\">" : "<tr>";
      line(open + cells("td", table.columns(), table.rows().get(i)) + "</tr>");
    }
    line("</tbody>\n</table>");
  }

  private static String kind(Table table, boolean writes) {
    int rows = table.rows().size();
    if (writes) {
      return rows > KEPT_WHOLE ? "write" : "write whole";
    }
    return rows > DENSE_FROM ? "dense" : "whole";
  }

  private static String cells(String tag, List<Column> columns, List<String> cells) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < columns.size(); i++) {
      text.append('<')
          .append(tag)
          .append(kind(columns.get(i).holds()))
          .append('>')
          .append(escaped(cells.get(i)))
          .append("</")
          .append(tag)
          .append('>');
    }
    return text.toString();
  }

  private static String kind(Holds holds) {
    return switch (holds) {
      case WORDS -> "";
      case NAME -> " class=\"name\"";
      case FIGURES -> " class=\"figure\"";
      case ROOM -> " class=\"room\"";
      case INITIALS -> " class=\"short\"";
    };
  }

  private void line(String text) {
    body.append(text).append('\n');
  }

  static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }
}
