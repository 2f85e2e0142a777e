package dev.pellucid.engine.report;

import dev.pellucid.engine.html.Inline;
import dev.pellucid.engine.report.Block.Title;
import dev.pellucid.engine.sharing.ShareOutTold;
import java.util.ArrayList;
import java.util.List;

/** What was shared out as text, as Markdown for a review, and as a page that prints on A4. */
public final class ShareOutText {
  private static final String MORE = Inline.text("report/least-cost.css");

  private final ShareOutBlocks blocks;

  public ShareOutText(String currency) {
    this.blocks = new ShareOutBlocks(currency);
  }

  /** The same three times; lines end in {@code \n}. */
  public record Pages(String text, String markdown, String html) {
    public static final Pages NONE = new Pages("", "", "");
  }

  /** All of it. */
  public Pages of(ShareOutTold told) {
    List<Block> page = new ArrayList<>();
    page.add(new Title("Shared out,", told.title()));
    page.addAll(blocks.of(told));
    return new Pages(
        new TextPage().render(page),
        new MarkdownPage().render(page),
        new HtmlPage().render("Shared out, " + told.title(), MORE, page));
  }
}
