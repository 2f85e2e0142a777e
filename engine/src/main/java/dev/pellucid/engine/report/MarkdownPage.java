package dev.pellucid.engine.report;

import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Facts;
import dev.pellucid.engine.report.Block.Folded;
import dev.pellucid.engine.report.Block.Heading;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Picture;
import dev.pellucid.engine.report.Block.Points;
import dev.pellucid.engine.report.Block.Running;
import dev.pellucid.engine.report.Block.Signatures;
import dev.pellucid.engine.report.Block.Stamp;
import dev.pellucid.engine.report.Block.Table;
import dev.pellucid.engine.report.Block.Ticks;
import dev.pellucid.engine.report.Block.Title;
import dev.pellucid.engine.report.Block.Together;
import dev.pellucid.engine.report.Block.Verbatim;
import dev.pellucid.engine.report.Block.Warnings;
import dev.pellucid.engine.report.Block.Words;
import dev.pellucid.text.Markdown;
import dev.pellucid.text.Unseen;
import java.util.List;

/** Blocks as Markdown for the comment of a review. */
final class MarkdownPage implements Block.Renderer {
  private static final String FENCE = "```";

  private final StringBuilder out = new StringBuilder();

  String render(List<Block> blocks) {
    blocks.forEach(block -> block.to(this));
    return out.toString().stripTrailing() + "\n";
  }

  @Override
  public void title(Title title) {
    line("## " + Markdown.of((title.code() + " " + title.title()).strip()));
  }

  @Override
  public void stamp(Stamp stamp) {
    line("**" + Markdown.of(stamp.words()) + "**");
    list(stamp.because());
  }

  @Override
  public void heading(Heading heading) {
    line("### " + Markdown.of(heading.words()));
  }

  @Override
  public void words(Words words) {
    line(Markdown.of(words.words()));
  }

  @Override
  public void folded(Folded folded) {
    out.append("<details><summary>").append(Markdown.of(folded.words())).append("</summary>\n\n");
    folded.blocks().forEach(block -> block.to(this));
    line("</details>");
  }

  @Override
  public void together(Together together) {
    together.blocks().forEach(block -> block.to(this));
  }

  @Override
  public void facts(Facts facts) {
    list(facts.facts().stream().map(one -> one.name() + ": " + one.value()).toList());
  }

  @Override
  public void ticks(Ticks ticks) {
    list(ticks.sentences());
  }

  @Override
  public void warnings(Warnings warnings) {
    list(warnings.sentences());
  }

  @Override
  public void points(Points points) {
    list(points.sentences());
  }

  @Override
  public void table(Table table) {
    row(table.columns().stream().map(Column::head).toList());
    for (Column column : table.columns()) {
      boolean right = column.holds() == Holds.FIGURES || column.holds() == Holds.WEIGHT;
      out.append(right ? "|--:" : "|---");
    }
    out.append("|\n");
    table.rows().forEach(this::row);
    out.append('\n');
  }

  private void row(List<String> cells) {
    cells.forEach(cell -> out.append("| ").append(Markdown.of(cell)).append(' '));
    out.append("|\n");
  }

  /** A fence longer than any in the lines. */
  @Override
  public void verbatim(Verbatim verbatim) {
    String fence = FENCE;
    while (String.join("\n", verbatim.lines()).contains(fence)) {
      fence += "`";
    }
    out.append(fence).append("diff\n");
    verbatim.lines().forEach(one -> out.append(Unseen.shown(one)).append('\n'));
    line(fence);
  }

  /** What it shows is told in words too. */
  @Override
  public void picture(Picture picture) {}

  /** Of paper alone. */
  @Override
  public void running(Running running) {}

  /** Of paper alone. */
  @Override
  public void signatures(Signatures signatures) {}

  private void list(List<String> sentences) {
    sentences.forEach(one -> out.append("- ").append(Markdown.of(one)).append('\n'));
    out.append('\n');
  }

  private void line(String text) {
    out.append(text).append("\n\n");
  }
}
