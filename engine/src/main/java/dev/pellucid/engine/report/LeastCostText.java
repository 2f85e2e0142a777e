package dev.pellucid.engine.report;

import dev.pellucid.engine.html.Inline;
import dev.pellucid.engine.leastcost.Advice;
import dev.pellucid.engine.leastcost.Advice.Costs;
import dev.pellucid.engine.leastcost.Week;
import dev.pellucid.engine.report.Block.Folded;
import dev.pellucid.engine.report.Block.Title;
import dev.pellucid.engine.report.Block.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Least cost as text, as Markdown for a review, and as pages that print on A4. */
public final class LeastCostText {
  /** What the review pages of most hosts take, with room to spare. */
  private static final int LONGEST = 60_000;

  private static final String MORE = Inline.text("report/least-cost.css");

  private final LeastCostBlocks feeds;
  private final LeastCostWeek weeks;

  public LeastCostText(String currency) {
    this.feeds = new LeastCostBlocks(currency);
    this.weeks = new LeastCostWeek(currency);
  }

  /** The largest saving of a month first, then of a tonne; then those that stay. */
  private static List<LeastCostTold> inOrder(List<LeastCostTold> all) {
    List<LeastCostTold> ordered = new ArrayList<>(all);
    ordered.sort(
        Comparator.comparing((LeastCostTold one) -> !one.isOffered())
            .thenComparingDouble(one -> -saves(one)));
    return ordered;
  }

  private static double saves(LeastCostTold told) {
    return told.isOffered() && told.advice().costs().isPresent()
        ? monthly(told.advice().costs().get())
        : 0;
  }

  private static double monthly(Costs costs) {
    return costs.savesPerTonne() * costs.tonnesPerMonth().orElse(1);
  }

  /** One feed in full; lines end in {@code \n}. */
  public String text(LeastCostTold told) {
    return new TextPage().render(page(told));
  }

  /** Each of many in full. */
  public String text(List<LeastCostTold> all, Week week) {
    StringBuilder out = new StringBuilder(new TextPage().render(week(all, week)));
    for (LeastCostTold told : inOrder(all)) {
      out.append('\n').append(text(told));
    }
    return out.toString();
  }

  /** A few lines for each of many, for a console. */
  public String brief(List<LeastCostTold> all, Week week) {
    List<String> lines = new ArrayList<>();
    String prices = LeastCostWeek.prices(all);
    if (!prices.isEmpty()) {
      lines.add(prices);
    }
    lines.add(weeks.tally(all, week));
    for (LeastCostTold told : inOrder(all)) {
      lines.addAll(weeks.brief(told));
    }
    lines.addAll(LeastCostWeek.bought(week));
    return String.join("\n", lines) + "\n";
  }

  /** One line for all. */
  public String tally(List<LeastCostTold> all, Week week) {
    return weeks.tally(all, week);
  }

  /** Markdown of less than 60,000 characters; what does not fit is counted. */
  public String markdown(List<LeastCostTold> all, Week week) {
    if (all.size() == 1) {
      String one = new MarkdownPage().render(page(all.get(0)));
      return one.length() <= LONGEST ? one : new MarkdownPage().render(week(all, week));
    }
    StringBuilder out = new StringBuilder(new MarkdownPage().render(week(all, week)));
    int left = 0;
    for (LeastCostTold told : inOrder(all)) {
      if (told.isOffered()) {
        String folded =
            "\n"
                + new MarkdownPage()
                    .render(List.of(new Folded(told.advice().code(), feeds.of(told))));
        if (left == 0 && out.length() + folded.length() < LONGEST) {
          out.append(folded);
        } else {
          left++;
        }
      }
    }
    if (left > 0) {
      out.append("\nAnd ").append(left).append(" more, which save less.\n");
    }
    return out.toString();
  }

  /** The page of one feed. */
  public String html(LeastCostTold told) {
    return new HtmlPage().render("Least cost, " + told.advice().code(), MORE, page(told));
  }

  /** The page of all feeds of the week. */
  public String html(List<LeastCostTold> all, Week week) {
    List<Block> blocks = new ArrayList<>(week(all, week));
    if (all.stream().anyMatch(LeastCostTold::isOffered)) {
      blocks.add(
          new Words("Each feed that would change has a page beside this one, named as its code."));
    }
    return new HtmlPage().render("Least cost, all feeds", MORE, blocks);
  }

  private List<Block> page(LeastCostTold told) {
    Advice advice = told.advice();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Title(advice.code(), advice.title()));
    blocks.addAll(feeds.of(told));
    return blocks;
  }

  private List<Block> week(List<LeastCostTold> all, Week week) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Title("Least cost,", "all feeds"));
    blocks.addAll(weeks.of(inOrder(all), week));
    return blocks;
  }
}
