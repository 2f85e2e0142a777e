package dev.pellucid.engine.site;

import static dev.pellucid.engine.site.Tables.cell;
import static dev.pellucid.engine.site.Tables.figure;
import static dev.pellucid.engine.site.Tables.figures;
import static dev.pellucid.engine.site.Tables.picture;
import static dev.pellucid.engine.site.Tables.row;
import static dev.pellucid.engine.site.Tables.table;
import static dev.pellucid.engine.site.Tables.words;
import static j2html.TagCreator.a;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.p;
import static j2html.TagCreator.pre;
import static j2html.TagCreator.span;
import static j2html.TagCreator.text;

import dev.pellucid.engine.account.Account;
import dev.pellucid.engine.account.Account.LineCost;
import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.plan.Expectation;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.site.FeedView.Figured;
import dev.pellucid.engine.site.FeedView.Flow;
import dev.pellucid.engine.site.FeedView.FlowKind;
import j2html.tags.DomContent;
import j2html.tags.specialized.TrTag;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** The page of one feed. */
final class FeedPage {
  private static final int MONEY = 4;
  private static final int MASS = 3;

  private final FeedView feed;
  private final String currency;
  private final Set<String> ingredients;
  private final boolean made;
  private final List<DomContent> out = new ArrayList<>();

  private FeedPage(FeedView feed, String currency, Set<String> ingredients, boolean made) {
    this.feed = feed;
    this.currency = currency;
    this.ingredients = ingredients;
    this.made = made;
  }

  /**
   * The page.
   *
   * @param ingredients those that have a page
   * @param made whether its batches have one
   */
  static List<DomContent> of(
      FeedView feed, String currency, Set<String> ingredients, boolean made) {
    FeedPage page = new FeedPage(feed, currency, ingredients, made);
    page.content();
    return page.out;
  }

  private void content() {
    String whom = feed.whom().isEmpty() ? "" : "For " + feed.whom() + ". ";
    String status = feed.status().isEmpty() ? "" : "Status " + feed.status() + ". ";
    out.add(
        p(
            text(whom + status + "File " + feed.path() + ". Limits: "),
            standing(feed.standing()),
            text(".")));
    if (made) {
      out.add(p(a("Batches that were made of it").withHref("../batches/" + feed.code() + ".html")));
    }
    if (!feed.findings().isEmpty()) {
      out.add(h2("Findings"));
      feed.findings().forEach(finding -> out.add(pre(finding)));
    }
    feed.figures().ifPresent(this::figured);
  }

  static DomContent standing(FeedView.FeedStatus standing) {
    return switch (standing) {
      case NOT_CHECKED, BROKEN, FAULTY, NOT_JUDGED, NOTHING_ASKED -> bad(standing.words());
      case WAIVED, KEPT -> span(standing.words());
    };
  }

  /** Words in a frame. */
  static DomContent bad(String words) {
    return span(words).withClass("bad");
  }

  private void figured(Figured figures) {
    composition(figures);
    held(figures.held());
    untold(figures.taken().account());
    Map<String, String> titles = new LinkedHashMap<>();
    figures.lines().forEach(line -> titles.put(line.name(), line.title()));
    cost(figures.taken().account(), titles);
    flow(figures.flow());
    contributions(figures);
    out.add(h2("History"));
    out.addAll(PastFigures.of(figures.taken(), feed.past(), currency));
  }

  private void composition(Figured figures) {
    out.add(h2("Composition"));
    String batch = figures.batch().isEmpty() ? "100 kg, none is given" : figures.batch();
    out.add(
        table(
            "kg are of the whole batch ("
                + batch
                + ") with overage; what a scale must show for each load is on the batch sheet",
            List.of(words("Line"), words("In"), figures("Share %"), figures("kg")),
            figures.lines().stream()
                .map(
                    line ->
                        row(
                            name(line.name(), line.title()),
                            cell(line.place()),
                            figure(line.share()),
                            figure(line.kg())))));
  }

  private DomContent name(String name, String title) {
    return ingredients.contains(name)
        ? a(title).withHref("../ingredients/" + name + ".html")
        : text(title);
  }

  private void held(List<Expectation> all) {
    out.add(h2("Limits"));
    out.add(
        p(
            "A minimum is judged where the feed is poorest, a maximum where it is richest. The bar"
                + " ends at the figure that is judged, the thick line is the bound, its flag points"
                + " to the side that is allowed; the bar of a broken limit is hollow. Room is"
                + " what is left to the bound, in percent of it; below zero it is broken."));
    out.add(
        table(
            "What is asked of the feed",
            List.of(
                words("What"),
                figures("On target"),
                words("Asked"),
                words("By"),
                figures("Judged"),
                figures("Room %"),
                words("Picture"),
                words("Kept")),
            all.stream().flatMap(this::held)));
  }

  private void untold(Account account) {
    List<String> untold =
        account.limits().values().stream()
            .filter(limit -> !limit.told())
            .map(limit -> limit.demand().lineNow())
            .toList();
    if (!untold.isEmpty()) {
      out.add(p(bad("CANNOT BE JUDGED"), text(" " + String.join(", ", untold))));
    }
  }

  private Stream<TrTag> held(Expectation one) {
    String expected = one.certainty().sign() + Figures.plain(one.expected()) + unit(one.unit());
    return one.held().stream()
        .map(
            held ->
                row(
                    one.title(),
                    figure(expected),
                    cell(held.demand().askedNowBesideBasis() + one.basis()),
                    by(held),
                    figure(judged(held)),
                    figure(room(held)),
                    picture(Charts.bullet(held)),
                    cell(kept(held))));
  }

  private static DomContent by(Held held) {
    String kind = held.demand().kindWord();
    String profile = held.demand().profile();
    return profile.isEmpty()
        ? cell("this recipe")
        : cell(a(kind).withHref("../limits/" + profile + ".html").withTitle(profile));
  }

  private static String room(Held held) {
    double room = held.roomPercent();
    return Double.isInfinite(room) ? "" : Figures.fixed(room, 1);
  }

  private static String judged(Held held) {
    return held.certainty().sign()
        + Figures.plainBeside(held.shown(), held.bound())
        + unit(held.unit().symbol());
  }

  private static String unit(String unit) {
    return unit.isEmpty() ? "" : " " + unit;
  }

  private static DomContent kept(Held held) {
    if (!held.keeps()) {
      return bad("BROKEN");
    }
    return text(held.demand().waivedUntil().map(day -> "waived until " + day).orElse(yes(held)));
  }

  /** In how many batches law is kept, where that is not nearly all. */
  static String yes(Held held) {
    String batches = held.batches();
    return batches.isEmpty() ? "yes" : "yes, " + batches;
  }

  private void cost(Account account, Map<String, String> titles) {
    out.add(h2("Cost"));
    if (!account.unpriced().isEmpty()) {
      out.add(
          p(
              bad("NO PRICE"),
              text(
                  " "
                      + String.join(", ", account.unpriced())
                      + ": the cost leaves it out and is too low")));
    }
    double largest =
        account.costs().values().stream().mapToDouble(LineCost::perKgBagged).max().orElse(0);
    Stream<TrTag> lines =
        account.costs().entrySet().stream()
            .sorted(
                Map.Entry.<String, LineCost>comparingByValue(
                        (one, other) -> Double.compare(other.perKgBagged(), one.perKgBagged()))
                    .thenComparing(Map.Entry.comparingByKey()))
            .map(
                entry ->
                    cost(
                        titles.getOrDefault(entry.getKey(), entry.getKey()),
                        entry,
                        account.costPerKg(),
                        largest));
    TrTag sum =
        row("Together", figure(money(account.costPerKg())), figure("100.0"), cell(""))
            .withClass("sum");
    out.add(
        table(
            "What a kg in the bags costs, overage and losses included",
            List.of(words("Line"), figures(currency + "/kg feed"), figures("%"), words("Picture")),
            Stream.concat(lines, Stream.of(sum))));
  }

  private static TrTag cost(
      String name, Map.Entry<String, LineCost> line, double whole, double largest) {
    double money = line.getValue().perKgBagged();
    String percent = Figures.visible(whole > 0 ? 100 * money / whole : 0, 1);
    return row(
        name,
        figure(money(money)),
        figure(percent),
        picture(Charts.bar(largest > 0 ? money / largest : 0)));
  }

  private static String money(double money) {
    return Figures.visible(money, MONEY);
  }

  private void flow(List<Flow> flow) {
    out.add(h2("From the scale to the bag"));
    double most = flow.stream().mapToDouble(step -> step.from() + step.kg()).max().orElse(1);
    out.add(
        table(
            "kg of 100 kg of recipe, on target; the hollow end of a bar is water",
            List.of(words("Step"), figures("kg"), figures("of it water"), words("Picture")),
            flow.stream().map(step -> step(step, most))));
  }

  private static TrTag step(Flow step, double most) {
    boolean whole = step.kind() == FlowKind.WHOLE;
    return row(
        sign(step.kind()) + step.words(),
        figure(Figures.fixed(step.kg(), MASS)),
        figure(whole ? Figures.fixed(step.water(), MASS) : ""),
        picture(Charts.step(step, most)));
  }

  private static String sign(FlowKind kind) {
    return switch (kind) {
      case WHOLE -> "= ";
      case COMES -> "+ ";
      case GOES -> "- ";
    };
  }

  private void contributions(Figured figures) {
    out.add(h2("Where it comes from"));
    out.add(
        p(
            "Per kg of finished feed, on target and fresh; each column adds up to its figure. In"
                + " brackets is the percent that the process leaves of it, where it is not all."
                + " At the foot stands the figure that is judged: at the poorest for a minimum, at"
                + " the richest for a maximum. Where a part of batches must keep the limit, a"
                + " margin for how lots vary is taken off or added. What an ingredient holds,"
                + " and by which source, stands on its page."));
    out.addAll(Contributions.of(figures.columns(), figures.lines()));
  }
}
