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

/** Blocks as one HTML file; every word from a recipe is escaped. */
final class HtmlPage {
  private static final String STYLE =
      """
      @page { size: A4; margin: 14mm 12mm; }
      body { font: 10pt/1.35 sans-serif; color: #000; background: #fff; max-width: 186mm;
        margin: 0 auto; }
      h1 { font-size: 16pt; margin: 0 0 2mm; border-bottom: 0.6mm solid #000; }
      h2 { font-size: 11.5pt; margin: 4.5mm 0 1.5mm; border-bottom: 0.2mm solid #000;
        break-after: avoid; }
      h2.page { break-before: page; }
      p, ul, dl { margin: 1mm 0; }
      .stamp { border: 1mm solid #000; padding: 2mm 3mm; margin: 2mm 0; text-align: center; }
      .stamp strong { font-size: 17pt; letter-spacing: 0.5mm; }
      table { border-collapse: collapse; width: 100%; margin: 1.5mm 0; }
      thead { display: table-header-group; }
      tr { break-inside: avoid; }
      th, td { border: 0.2mm solid #000; padding: 0.8mm 1.2mm; text-align: left;
        vertical-align: bottom; }
      th { font-size: 8.5pt; }
      .figure { text-align: right; white-space: nowrap; font-variant-numeric: tabular-nums; }
      .room { min-width: 15mm; }
      tr.total td { border-top: 0.7mm solid #000; font-weight: bold; }
      dl { display: grid; grid-template-columns: 46mm 1fr; row-gap: 0.5mm; }
      dt { font-weight: bold; }
      dd { margin: 0; }
      dd.write { border-bottom: 0.2mm solid #000; min-height: 5mm; max-width: 80mm; }
      ul { padding-left: 0; list-style: none; }
      .warn { border-left: 1.2mm solid #000; padding-left: 2.5mm; break-inside: avoid; }
      .warn li::before { content: "! "; font-weight: bold; }
      .tick li::before { content: "\\2610  "; }
      .sign { display: flex; gap: 8mm; margin-top: 9mm; break-inside: avoid; }
      .sign span { flex: 1; border-top: 0.2mm solid #000; font-size: 8.5pt; }
      """;

  private final StringBuilder out = new StringBuilder();

  String render(String title, List<Block> blocks) {
    out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>")
        .append(escaped(title))
        .append("</title>\n<style>\n")
        .append(STYLE)
        .append("</style>\n</head>\n<body>\n");
    blocks.forEach(this::block);
    return out.append("</body>\n</html>\n").toString();
  }

  private void block(Block block) {
    if (block instanceof Title title) {
      line("<h1>" + escaped(title.code() + "  " + title.title()) + "</h1>");
    } else if (block instanceof Stamp stamp) {
      String reasons = escaped(String.join("; ", stamp.because()));
      line(
          "<div class=\"stamp\"><strong>"
              + escaped(stamp.words())
              + "</strong><br>"
              + reasons
              + "</div>");
    } else if (block instanceof Heading heading) {
      String open = heading.newPage() ? "<h2 class=\"page\">" : "<h2>";
      line(open + escaped(heading.words()) + "</h2>");
    } else if (block instanceof Words words) {
      line("<p>" + escaped(words.words()) + "</p>");
    } else if (block instanceof Facts facts) {
      line("<dl>");
      facts.facts().forEach(this::fact);
      line("</dl>");
    } else if (block instanceof Ticks ticks) {
      list("tick", ticks.sentences());
    } else if (block instanceof Warnings warnings) {
      list("warn", warnings.sentences());
    } else if (block instanceof Table table) {
      table(table);
    } else if (block instanceof Signatures signatures) {
      signatures(signatures);
    }
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

  private void signatures(Signatures signatures) {
    out.append("<div class=\"sign\">");
    signatures.who().forEach(who -> out.append("<span>").append(escaped(who)).append("</span>"));
    line("</div>");
  }

  private void table(Table table) {
    line("<table>");
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
      case FIGURES -> " class=\"figure\"";
      case ROOM -> " class=\"room\"";
    };
  }

  private void line(String text) {
    out.append(text).append('\n');
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }
}
