package dev.pellucid.engine.outcome;

import static dev.pellucid.engine.outcome.Json.exact;
import static dev.pellucid.engine.outcome.Json.word;

import dev.pellucid.engine.data.Ordering;
import dev.pellucid.engine.leastcost.Advice.LineMove;
import dev.pellucid.engine.leastcost.Portion.Settled;
import dev.pellucid.engine.leastcost.Reasons.LimitPrice;
import dev.pellucid.engine.records.PurchaseList.Good;
import dev.pellucid.engine.records.PurchaseList.ToMake;
import dev.pellucid.engine.sharing.FixedBatch;
import dev.pellucid.engine.sharing.ShareOutTold;
import dev.pellucid.engine.sharing.SharedOut;
import dev.pellucid.engine.sharing.SharedOut.SharedFeed;
import dev.pellucid.engine.sharing.SharedOut.SharedSupply;
import dev.pellucid.engine.sharing.Wanted.Due;
import dev.pellucid.text.PrintedPaths;
import dev.pellucid.text.TextEdit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * What was shared out as plain JSON, for scripts: every figure, to twelve digits. A key never
 * changes its meaning: what is new comes under new keys. Masses are kg, money is for all that is
 * made or per kg, shares are percent of the recipe. The shape is written down in {@code
 * share-out.schema.json}.
 */
public final class ShareOutJson {
  private final PrintedPaths paths;

  private ShareOutJson(PrintedPaths paths) {
    this.paths = paths;
  }

  /**
   * One object.
   *
   * @param paths how files are called
   */
  public static String of(ShareOutTold all, String currency, PrintedPaths paths) {
    ShareOutJson told = new ShareOutJson(paths);
    SharedOut out = all.out();
    return Json.text(
        json -> {
          json.put("format", 1);
          json.put("currency", currency);
          json.put("of", all.title());
          json.put("standing", word(out.standing().name()));
          json.put("notes", all.notes());
          json.put("costNow", exact(out.money().now()));
          json.put("costThen", exact(out.money().then()));
          json.put("costNotRounded", exact(out.money().least()));
          json.put("costOfPlenty", exact(out.money().plenty()));
          json.list("short", out.supplies(), one -> supply(json, one));
          amounts(json, "lacks", out.lacks());
          json.list("feeds", out.feeds(), one -> told.feed(json, one));
          json.list("asRecorded", all.fixed(), one -> fixed(json, one));
          json.list("toBuy", all.toBuy().goods(), one -> purchase(json, one, all.day()));
          json.list("premixesToMake", all.toBuy().premixes(), one -> premix(json, one));
        });
  }

  private static void supply(Json json, SharedSupply one) {
    json.put("ingredient", one.supply().ingredient());
    json.put("kg", exact(one.supply().kg()));
    json.put("inPremixes", exact(one.spared()));
    json.put("inStore", one.supply().inStore());
    json.put("perKg", exact(one.supply().perKg()));
    json.put("takenNow", exact(one.takenNow()));
    json.put("takenThen", exact(one.taken()));
    json.put("left", exact(one.left()));
    json.put("worthPerKg", exact(one.worth().map(it -> it.perKg()).orElse(0.0)));
    json.put("worthFrom", one.worth().isPresent() ? exact(one.worth().get().from()) : null);
    json.put("worthTo", one.worth().isPresent() ? exact(one.worth().get().to()) : null);
  }

  private void feed(Json json, SharedFeed feed) {
    json.put("code", feed.wanted().code());
    json.put("file", paths.of(feed.wanted().path()));
    json.put("counted", feed.wanted().isBagged() ? "bagged" : "weighed");
    json.put("wanted", exact(feed.wanted().kg()));
    json.put("made", exact(feed.kg()));
    json.list("due");
    for (int i = 0; i < feed.made().size(); i++) {
      due(json, feed.wanted().due().get(i), feed.made().get(i));
    }
    json.end();
    json.put("costNow", exact(feed.costNow()));
    json.put("costThen", feed.settled().isPresent() ? exact(feed.costThen()) : null);
    amounts(json, "takesNow", feed.takesNow());
    amounts(json, "takesThen", feed.takesThen());
    json.list("lines", feed.settled().map(Settled::lines).orElse(List.of()), it -> line(json, it));
    json.list(
        "limits", feed.settled().map(Settled::limits).orElse(List.of()), it -> limit(json, it));
    json.put("labelAnew", feed.settled().map(Settled::labelAnew).orElse(List.of()));
    json.list(
        "edits",
        feed.settled().map(its -> its.change().edits()).orElse(List.of()),
        it -> edit(json, it));
  }

  private static void due(Json json, Due wanted, Due made) {
    json.object();
    json.put("day", wanted.day().toString());
    json.put("batch", wanted.isBatch() ? wanted.batch() : null);
    json.put("wanted", exact(wanted.kg()));
    json.put("made", exact(made.kg()));
    json.end();
  }

  private static void line(Json json, LineMove line) {
    json.put("line", line.name());
    json.put("now", exact(line.now()));
    json.put("then", exact(line.then()));
    json.figure("low", line.low());
    json.figure("high", line.high());
    json.put("bound", word(line.bound().name()));
  }

  private static void limit(Json json, LimitPrice one) {
    json.put("name", one.name());
    json.put("side", one.side().word());
    json.put("bound", exact(one.bound()));
    json.put("unit", one.bare() ? "" : one.unit().symbol());
    json.put("step", exact(one.step()));
    json.put("perTonne", exact(one.perTonne()));
  }

  private static void edit(Json json, TextEdit edit) {
    json.put("line", edit.span().from().line());
    json.put("column", edit.span().from().column());
    json.put("was", edit.span().text());
    json.put("text", edit.replacement());
  }

  private static void purchase(Json json, Good one, LocalDate day) {
    json.put("ingredient", one.name());
    json.put("needed", exact(one.needed()));
    json.put("kg", exact(one.lacking()));
    json.figure("perKg", one.perKg());
    json.put(
        "cost", one.perKg().isPresent() ? exact(one.lacking() * one.perKg().getAsDouble()) : null);
    json.figure("pack", one.pack());
    json.put("packs", one.packs().isPresent() ? BigDecimal.valueOf(one.packs().getAsLong()) : null);
    json.put("ordered", exact(one.ordered()));
    json.put("orderedCost", one.perKg().isPresent() ? exact(one.money()) : null);
    json.put("supplier", one.ordering().flatMap(Ordering::supplier).orElse(null));
    json.put("from", one.from().toString());
    json.put("orderBy", one.orderBy().map(LocalDate::toString).orElse(null));
    json.put("late", one.isLate(day));
  }

  private static void premix(Json json, ToMake one) {
    json.put("premix", one.code());
    json.put("kg", exact(one.kg()));
    json.put("from", one.from().toString());
    json.put("plannedLate", one.planned().orElse(null));
  }

  private static void fixed(Json json, FixedBatch one) {
    json.put("batch", one.number());
    json.put("code", one.code());
    json.put("day", one.day().toString());
    json.put("kg", exact(one.kg()));
    amounts(json, "takes", one.takes());
  }

  private static void amounts(Json json, String key, Map<String, Double> kg) {
    json.object(key);
    kg.forEach((name, amount) -> json.put(name, exact(amount)));
    json.end();
  }
}
