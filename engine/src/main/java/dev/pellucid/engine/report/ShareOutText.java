package dev.pellucid.engine.report;

import dev.pellucid.engine.html.Inline;
import dev.pellucid.engine.report.Block.Title;
import dev.pellucid.engine.sharing.Purchase;
import dev.pellucid.engine.sharing.SharedOut;
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

  /**
   * All of it.
   *
   * @param title what was shared out: {@code plan december}
   * @param notes what a person should know first
   */
  public Pages of(String title, List<String> notes, SharedOut out, List<Purchase> purchases) {
    List<Block> page = new ArrayList<>();
    page.add(new Title("Shared out,", title));
    page.addAll(blocks.of(notes, out, purchases));
    return new Pages(
        new TextPage().render(page),
        new MarkdownPage().render(page),
        new HtmlPage().render("Shared out, " + title, MORE, page));
  }
}
