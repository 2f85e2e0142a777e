package dev.pellucid.engine.report;

import dev.pellucid.engine.label.BagLabel;
import dev.pellucid.engine.label.BagLabel.Fact;
import dev.pellucid.engine.label.BagLabel.Statement;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A bag label as one HTML file in black and white that loads nothing. It prints on whatever paper
 * is chosen, A6 to A4: letters grow with the page, within what can be read and what fits. What only
 * the printer of the label must know stands below the frame, to be cut off.
 */
public final class LabelHtml {
  static final String DRAFT = "DRAFT, NOT TO BE PUT ON A BAG";
  static final String ASIDE = "Not part of the label:";

  private static final int SHORT = 36;

  private static final String STYLE =
      """
      @page { margin: 5mm; }
      html { font-size: clamp(5.8pt, min(1.95vw, 1.36vh), 12pt); }
      body { font: 1rem/1.2 sans-serif; color: #000; background: #fff; margin: 0; }
      main { border: 0.5mm solid #000; padding: 0.8rem 1rem; margin-right: 0.5mm; }
      h1 { font-size: 1.8rem; line-height: 1.1; margin: 0; }
      .code { font-size: 1.2rem; font-weight: bold; }
      .what { font-size: 1.25rem; margin: 0.2rem 0; }
      .stamp { border: 0.6mm solid #000; padding: 0.3rem; text-align: center; margin: 0.4rem 0; }
      .stamp strong { font-size: 1.4rem; }
      section { border-top: 0.2mm solid #000; padding-top: 0.25rem; margin-top: 0.35rem;
        break-inside: avoid; }
      h2 { font-size: 1rem; margin: 0; }
      p { margin: 0.1rem 0; }
      dl { margin: 0; display: grid; grid-template-columns: 1fr auto; column-gap: 1rem; }
      dl.pairs { grid-template-columns: 1fr auto 1fr auto; column-gap: 1.6rem; }
      dt { overflow-wrap: anywhere; }
      dd { margin: 0; text-align: right; font-weight: bold; white-space: nowrap;
        font-variant-numeric: tabular-nums; }
      dd.write { border-bottom: 0.2mm solid #000; min-width: 18rem; min-height: 1.5rem; }
      footer { font-size: 0.9rem; margin-top: 0.6rem; }
      @media screen { body { max-width: 148mm; margin: 5mm auto; } html { font-size: 9pt; } }
      """;

  private final StringBuilder out = new StringBuilder();

  private LabelHtml() {}

  /** The whole file, to be written as UTF-8. */
  public static String of(BagLabel label) {
    LabelHtml html = new LabelHtml();
    html.page(label);
    return html.out.toString();
  }

  private void page(BagLabel label) {
    out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>")
        .append(escaped("Label " + label.code()))
        .append("</title>\n<style>\n")
        .append(STYLE)
        .append("</style>\n</head>\n<body>\n<main>\n");
    line("<h1>" + escaped(label.title()) + "</h1>");
    line("<p class=\"code\">" + escaped(label.code()) + "</p>");
    line("<p class=\"what\">" + escaped(label.what()) + "</p>");
    if (!label.draftBecause().isEmpty()) {
      String reasons = escaped(String.join("; ", label.draftBecause()));
      line("<div class=\"stamp\"><strong>" + DRAFT + "</strong><br>" + reasons + "</div>");
    }
    label.statements().forEach(this::statement);
    line("<section>");
    line(facts(label.facts()));
    line("</section>\n</main>\n<footer>");
    line("<p><strong>" + ASIDE + "</strong> " + escaped(String.join(" ", label.aside())) + "</p>");
    line("</footer>\n</body>\n</html>");
  }

  private void statement(Statement statement) {
    line("<section>\n<h2>" + escaped(statement.heading()) + "</h2>");
    line(statement.accept(new Content()));
    line("</section>");
  }

  /** What stands under a heading. */
  private static final class Content implements Statement.Visitor<String> {
    @Override
    public String figures(Statement.Figures figures) {
      return facts(figures.figures());
    }

    @Override
    public String names(Statement.Names names) {
      return "<p>" + escaped(String.join("; ", names.names())) + ".</p>";
    }

    @Override
    public String sentences(Statement.Sentences sentences) {
      return sentences.sentences().stream()
          .map(sentence -> "<p>" + escaped(sentence) + "</p>")
          .collect(Collectors.joining("\n"));
    }
  }

  /** Short ones stand two on a row. */
  private static String facts(List<Fact> facts) {
    boolean isShort = facts.stream().allMatch(f -> (f.name() + f.value()).length() <= SHORT);
    boolean written = facts.stream().noneMatch(fact -> fact.value().isEmpty());
    String open = isShort && written ? "<dl class=\"pairs\">\n" : "<dl>\n";
    return facts.stream().map(LabelHtml::fact).collect(Collectors.joining("", open, "</dl>"));
  }

  private static String fact(Fact fact) {
    String open = fact.value().isEmpty() ? "<dd class=\"write\">" : "<dd>";
    return "<dt>" + escaped(fact.name()) + "</dt>" + open + escaped(fact.value()) + "</dd>\n";
  }

  private void line(String text) {
    out.append(text).append('\n');
  }

  private static String escaped(String text) {
    return HtmlPage.escaped(text);
  }
}
