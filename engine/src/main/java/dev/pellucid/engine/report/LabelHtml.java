package dev.pellucid.engine.report;

import dev.pellucid.engine.html.Inline;
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

  private static final String STYLE = Inline.text("report/label.css");

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
