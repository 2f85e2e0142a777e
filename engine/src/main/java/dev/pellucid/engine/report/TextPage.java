package dev.pellucid.engine.report;

import dev.pellucid.engine.report.Block.Fact;
import dev.pellucid.engine.report.Block.Facts;
import dev.pellucid.engine.report.Block.Folded;
import dev.pellucid.engine.report.Block.Heading;
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
import java.util.List;

/** Blocks as plain text for a fixed-width font. */
final class TextPage implements Block.Renderer {
  private static final int WIDTH = 100;
  private static final int NAME = 26;
  private final StringBuilder out = new StringBuilder();

  String render(List<Block> blocks) {
    blocks.forEach(block -> block.to(this));
    return out.toString();
  }

  @Override
  public void title(Title title) {
    wrapped("", "", title.code() + "  " + title.title());
    line("=".repeat(WIDTH));
  }

  @Override
  public void stamp(Stamp stamp) {
    line("*** " + stamp.words() + " ***");
    stamp.because().forEach(reason -> wrapped("    ", "    ", reason));
    line("");
  }

  @Override
  public void words(Words words) {
    wrapped("", "", words.words());
  }

  /** A text folds nothing. */
  @Override
  public void folded(Folded folded) {
    heading(new Heading(folded.words(), false));
    folded.blocks().forEach(block -> block.to(this));
  }

  /** A text has one look, and no pages. */
  @Override
  public void together(Together together) {
    together.blocks().forEach(block -> block.to(this));
  }

  @Override
  public void facts(Facts facts) {
    facts.facts().forEach(this::fact);
  }

  @Override
  public void ticks(Ticks ticks) {
    ticks.sentences().forEach(sentence -> wrapped("[ ] ", "    ", sentence));
  }

  @Override
  public void warnings(Warnings warnings) {
    warnings.sentences().forEach(sentence -> wrapped("! ", "  ", sentence));
  }

  @Override
  public void signatures(Signatures signatures) {
    signatures.who().forEach(who -> fact(new Fact(who, "")));
  }

  /** A text has no pages; its head and its second part say where it comes from. */
  @Override
  public void running(Running running) {
    if (!running.above().isEmpty()) {
      line(running.above());
    }
  }

  @Override
  public void heading(Heading heading) {
    if (!out.toString().endsWith("\n\n")) {
      line("");
    }
    wrapped("", "", heading.words());
    line((heading.newPart() ? "=" : "-").repeat(WIDTH));
  }

  @Override
  public void points(Points points) {
    points.sentences().forEach(sentence -> wrapped("- ", "  ", sentence));
  }

  @Override
  public void verbatim(Verbatim verbatim) {
    verbatim.lines().forEach(this::line);
  }

  /** What it shows is told in words too. */
  @Override
  public void picture(Picture picture) {}

  private void fact(Fact fact) {
    String value = fact.value().isEmpty() ? "_".repeat(NAME) : fact.value();
    String name = TextTable.padded(fact.name(), NAME, false) + "  ";
    wrapped(name, " ".repeat(TextTable.length(name)), value);
  }

  @Override
  public void table(Table table) {
    TextTable.lines(table, WIDTH).forEach(this::line);
    line("");
  }

  private void wrapped(String first, String next, String words) {
    StringBuilder text = new StringBuilder(first);
    int start = TextTable.length(first);
    int at = start;
    for (String word : words.split(" ", -1)) {
      if (at > start && at + 1 + TextTable.length(word) > WIDTH) {
        line(text.toString());
        text = new StringBuilder(next);
        start = TextTable.length(next);
        at = start;
      }
      if (at > start) {
        text.append(' ');
        at++;
      }
      text.append(word);
      at += TextTable.length(word);
    }
    line(text.toString());
  }

  private void line(String text) {
    out.append(text.stripTrailing()).append('\n');
  }
}
