package dev.pellucid.engine.report;

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
  private static final String STYLE =
      """
      @page { size: A4; margin: 12mm 11mm 14mm; }
      body { font: 9pt/1.25 sans-serif; color: #000; background: #fff; max-width: 188mm;
        margin: 0 auto; }
      h1 { font-size: 15pt; margin: 0 0 1.5mm; border-bottom: 0.6mm solid #000; }
      h2 { font-size: 10.5pt; margin: 2.6mm 0 0.8mm; border-bottom: 0.2mm solid #000;
        break-after: avoid; }
      h2.page { break-before: page; font-size: 13pt; }
      p, ul, dl { margin: 0.6mm 0; }
      p { break-after: avoid; }
      .stamp { border: 1mm solid #000; padding: 1mm 3mm; margin: 1.5mm 0; text-align: center; }
      .stamp strong { font-size: 15pt; letter-spacing: 0.5mm; }
      table { border-collapse: collapse; width: calc(100% - 0.4mm); margin: 1mm 0 1.2mm; }
      table.whole, dl, ul { break-inside: avoid; }
      thead { display: table-header-group; }
      tr { break-inside: avoid; }
      th, td { border: 0.2mm solid #000; padding: 0.5mm 1.2mm; text-align: left;
        vertical-align: bottom; overflow-wrap: anywhere; }
      th { font-size: 8pt; }
      table.write td { height: 5.4mm; }
      .figure { text-align: right; white-space: nowrap; font-variant-numeric: tabular-nums; }
      .name { white-space: nowrap; }
      th.figure { white-space: normal; }
      .room { min-width: 17mm; }
      .short { width: 11mm; }
      tr.total { break-before: avoid; }
      tr.total td { border-top: 0.6mm solid #000; font-weight: bold; }
      dl { display: grid; grid-template-columns: 34mm 1fr 34mm 1fr; column-gap: 2mm;
        row-gap: 0.4mm; }
      dt { font-weight: bold; }
      dt, dd { padding-top: 0.4mm; overflow-wrap: anywhere; }
      dd { margin: 0; }
      dd.write { border-bottom: 0.2mm solid #000; min-height: 4.8mm; }
      ul { padding-left: 0; list-style: none; }
      .warn { border-left: 1.2mm solid #000; padding-left: 2mm; break-after: avoid; }
      .warn li::before { content: "! "; font-weight: bold; }
      .tick { columns: 2; }
      .tick li { break-inside: avoid; }
      .tick li::before { content: "\\2610  "; }
      .sign { display: flex; gap: 8mm; margin-top: 7.5mm; break-inside: avoid;
        break-before: avoid; }
      .sign span { flex: 1; border-top: 0.2mm solid #000; font-size: 8pt; }
      h2.page ~ table.dense { font-size: 7.8pt; line-height: 1.1; }
      h2.page ~ table.dense th { font-size: 7.5pt; }
      h2.page ~ table.dense td { height: 5mm; padding: 0.1mm 1mm; }
      h2.page ~ p, h2.page ~ ul { font-size: 8pt; line-height: 1.15; }
      """;

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
