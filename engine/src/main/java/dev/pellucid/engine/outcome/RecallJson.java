package dev.pellucid.engine.outcome;

import dev.pellucid.engine.trace.Kilograms;
import dev.pellucid.engine.trace.Recall.Affected;
import dev.pellucid.engine.trace.Recall.Amount;
import dev.pellucid.engine.trace.Recall.Answer;
import dev.pellucid.engine.trace.Recall.Balance;
import dev.pellucid.engine.trace.Recall.Between;
import dev.pellucid.engine.trace.Recall.Call;
import dev.pellucid.engine.trace.Recall.InBin;
import dev.pellucid.engine.trace.Recall.Left;
import dev.pellucid.engine.trace.Recall.Moved;
import dev.pellucid.engine.trace.Recall.Origin;
import dev.pellucid.engine.trace.Recall.Origins;
import dev.pellucid.engine.trace.Recall.Sent;
import dev.pellucid.engine.trace.Recall.State;
import dev.pellucid.engine.trace.Recall.Step;
import dev.pellucid.engine.trace.Recall.Stop;
import dev.pellucid.engine.trace.Recall.Store;
import dev.pellucid.engine.trace.Recall.Taken;
import dev.pellucid.engine.trace.RecallList;
import dev.pellucid.engine.trace.RecallTally.Part;
import dev.pellucid.engine.trace.Trace.Batch;
import dev.pellucid.engine.trace.Trace.Doubt;
import dev.pellucid.engine.trace.Trace.LotOf;
import dev.pellucid.engine.trace.Trace.Thing;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * A recall as plain JSON, for scripts: every figure, to twelve digits. A key never changes its
 * meaning: what is new comes under new keys. Weights are in kg, shares of 1. What no record tells
 * is null; a weight of which part is not told says so beside it. The shape is written down in
 * {@code recall.schema.json}.
 */
public final class RecallJson {
  private final RecallList told;
  private final Json json;

  private RecallJson(RecallList told, Json json) {
    this.told = told;
    this.json = json;
  }

  /** One object. */
  public static String of(RecallList told) {
    return Json.text(json -> new RecallJson(told, json).write());
  }

  private void write() {
    Answer answer = told.answer();
    json.put("format", 1);
    json.put("house", told.house());
    json.put("day", told.day().toString());
    json.put("whole", told.unsearched().isEmpty());
    thing(answer.thing());
    state(answer.state());
    tally("certain", told.tally().certain());
    tally("possible", told.tally().possible());
    balance(answer.balance());
    list("takenBy", answer.takenBy(), this::taken);
    list("batches", answer.batches(), this::affected);
    list("steps", answer.steps(), this::step);
    list("calls", answer.calls(), this::call);
    stop(answer.stop());
    origins();
    list(
        "notFollowed",
        answer.notFollowed(),
        one -> {
          json.put("limit", word(one.limit().name()));
          json.put("numbers", one.numbers());
          json.put("words", one.words());
        });
    json.put("circle", answer.circle());
    json.put("searched", told.searched());
    json.put("unsearched", told.unsearched());
  }

  private void thing(Thing thing) {
    json.object("thing");
    json.put("number", thing.number());
    json.put("file", told.files().get(thing.number()));
    lot(thing.lot());
    if (thing.batch().isEmpty()) {
      json.put("batch", (String) null);
    } else {
      json.object("batch");
      batch(thing.batch().get());
      json.end();
    }
    json.end();
  }

  private void lot(Optional<LotOf> lot) {
    if (lot.isEmpty()) {
      json.put("lot", (String) null);
      return;
    }
    json.object("lot");
    json.put("ingredient", lot.get().ingredient());
    json.put("title", lot.get().title());
    json.put("received", lot.get().received().toString());
    json.put("kg", exact(lot.get().kg()));
    json.put("bestBefore", day(lot.get().bestBefore()));
    json.put("supplier", lot.get().supplier().orElse(null));
    json.put("supplierLot", lot.get().supplierLot().orElse(null));
    json.put("deliveryNote", lot.get().deliveryNote().orElse(null));
    json.put("bin", lot.get().bin().orElse(null));
    json.end();
  }

  private void batch(Batch batch) {
    json.put("number", batch.number());
    json.put("code", batch.code());
    json.put("day", batch.day().toString());
    json.put("became", batch.became());
    json.put("closed", batch.closed());
  }

  private void state(State state) {
    json.object("state");
    json.put("word", state.word());
    json.put("day", day(state.day()));
    json.put("by", state.by());
    json.put("because", state.because());
    json.put("stopped", state.isStopped());
    json.end();
  }

  private void tally(String key, Part part) {
    json.object(key);
    json.put("batches", part.batches());
    json.put("onLine", part.onLine());
    json.put("parties", part.parties());
    amount("out", part.out());
    json.put("outToNobody", exact(part.toNobody()));
    amount("store", part.store());
    json.put("storeLeast", exact(part.least()));
    json.put("storeNotTold", part.notTold());
    json.put("storeNotCounted", part.notCounted());
    json.end();
  }

  private void amount(String key, Amount amount) {
    json.object(key);
    bagsAndKg(amount);
    json.end();
  }

  private void bagsAndKg(Amount amount) {
    json.put("bags", amount.bags());
    json.put("kg", exact(amount.kg()));
  }

  private void balance(Balance of) {
    json.object("balance");
    figure("had", of.had());
    kg("used", of.used());
    kg("planned", of.planned());
    json.put("delivered", exact(of.delivered()));
    json.put("returned", exact(of.returned()));
    json.put("disposed", exact(of.disposed()));
    json.put("corrected", exact(of.corrected()));
    json.put("samples", exact(of.samples()));
    kg("unnamed", of.unnamed());
    store(of.store());
    figure("gap", of.gap().flatMap(RecallJson::known));
    figure("gapShare", of.gapShare().flatMap(RecallJson::known));
    figure("gapLeast", of.gap().map(Between::least));
    figure("gapMost", of.gap().map(Between::most));
    json.end();
  }

  private void kg(String key, Kilograms kg) {
    json.object(key);
    json.put("kg", exact(kg.told()));
    json.put("whole", kg.whole());
    json.end();
  }

  private void store(Optional<Store> store) {
    if (store.isEmpty()) {
      json.put("store", (String) null);
      return;
    }
    json.object("store");
    bagsAndKg(store.get().amount());
    json.put("least", exact(store.get().least()));
    json.put("counted", day(store.get().counted()));
    json.put("emptied", day(store.get().emptied()));
    json.put("moved", store.get().moved());
    json.end();
  }

  private void taken(Taken one) {
    json.put("into", one.into());
    json.put("day", one.day().toString());
    json.put("kind", word(one.kind().name()));
    kg("kg", one.kg());
    json.put("planned", one.planned());
  }

  private void affected(Affected one) {
    batch(one.batch());
    json.put("file", told.files().get(one.batch().number()));
    state(one.state());
    json.put("certain", one.certain());
    json.put("onLine", one.onLine());
    kg("kg", one.kg());
    kg("most", one.most());
    list("why", one.why(), this::doubt);
    if (one.made().isEmpty()) {
      json.put("made", (String) null);
    } else {
      amount("made", one.made().get());
    }
    figure("bag", one.bag());
    moved("delivered", one.delivered());
    moved("returned", one.returned());
    moved("disposed", one.disposed());
    moved("counted", one.counted());
    list("takenBy", one.takenBy(), this::taken);
    list(
        "samples",
        one.samples(),
        sample -> {
          json.put("kg", exact(sample.kg()));
          json.put("place", sample.place());
          json.put("until", day(sample.until()));
        });
    if (one.begunWith().isEmpty()) {
      json.put("begunWith", (String) null);
    } else {
      json.object("begunWith");
      json.put("batch", one.begunWith().get().batch());
      json.put("kg", exact(one.begunWith().get().kg()));
      json.end();
    }
    balance(one.balance());
  }

  private void doubt(Doubt doubt) {
    json.put("reason", word(doubt.reason().name()));
    json.put("line", doubt.line());
    json.put("names", doubt.names());
    json.put("of", doubt.of());
    json.put("more", doubt.more());
    json.put("cleaned", doubt.cleaned());
  }

  private void moved(String key, List<Moved> all) {
    list(key, all, this::moved);
  }

  private void moved(Moved one) {
    json.put("day", one.day().toString());
    json.put("by", one.by());
    json.put("party", one.party());
    bagsAndKg(one.amount());
    json.put("note", one.note());
  }

  private void step(Step one) {
    json.put("from", one.from());
    json.put("to", one.to());
    json.put("kind", word(one.kind().name()));
    json.put("line", one.line());
    json.put("bin", one.bin());
    kg("kg", one.kg());
    json.put("certain", one.certain());
  }

  private void call(Call call) {
    json.put("party", call.party());
    amount("certain", call.certain());
    amount("possible", call.possible());
    json.put("tooMuchBack", call.tooMuchBack());
    list("sent", call.sent(), this::sent);
    list("back", call.back(), this::sent);
  }

  private void sent(Sent one) {
    json.put("batch", one.batch().number());
    json.put("certain", one.certain());
    moved(one.moved());
  }

  private void stop(Stop stop) {
    json.object("stop");
    list("hold", stop.hold(), this::left);
    list("held", stop.held(), this::left);
    list("closed", stop.closed(), this::left);
    list("planned", stop.planned(), one -> json.put("number", one.batch().number()));
    list("bins", stop.bins(), this::bin);
    json.end();
  }

  private void left(Left one) {
    json.put("number", one.thing().number());
    json.put("file", told.files().get(one.thing().number()));
    json.put("certain", one.certain());
    state(one.state());
    store(one.store());
  }

  private void bin(InBin one) {
    json.put("bin", one.bin());
    json.put("lots", one.lots());
    json.put("emptied", day(one.emptied()));
  }

  private void origins() {
    Optional<Origins> origins = told.origins();
    if (origins.isEmpty()) {
      json.put("origins", (String) null);
      return;
    }
    json.object("origins");
    list(
        "holds",
        origins.get().back().holds(),
        one -> {
          json.put("number", one.thing().number());
          kg("kg", one.kg());
        });
    json.put("may", origins.get().may().stream().map(Thing::number).toList());
    list("lots", origins.get().lots(), this::origin);
    list("steps", origins.get().steps(), this::step);
    list(
        "notTold",
        origins.get().back().unknown(),
        one -> {
          json.put("batch", one.batch());
          json.put("line", one.line());
          json.put("reason", word(one.reason().name()));
          json.put("names", one.names());
          figure("kg", one.kg());
          json.put("of", one.of());
        });
    json.end();
  }

  private void origin(Origin one) {
    json.put("number", one.thing().number());
    json.put("file", told.files().get(one.thing().number()));
    json.put("certain", one.certain());
    lot(one.thing().lot());
  }

  private <T> void list(String key, List<T> all, Consumer<T> keysOf) {
    json.list(key);
    for (T one : all) {
      json.object();
      keysOf.accept(one);
      json.end();
    }
    json.end();
  }

  private static Optional<Double> known(Between bounds) {
    return bounds.isExact() ? Optional.of(bounds.most()) : Optional.empty();
  }

  private void figure(String key, Optional<Double> figure) {
    json.put(key, figure.map(RecallJson::exact).orElse(null));
  }

  private void figure(String key, OptionalDouble figure) {
    json.put(key, figure.isPresent() ? exact(figure.getAsDouble()) : null);
  }

  private static @Nullable String day(Optional<LocalDate> day) {
    return day.map(LocalDate::toString).orElse(null);
  }

  private static String word(String constant) {
    return constant.toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static BigDecimal exact(double value) {
    BigDecimal exact = new BigDecimal(value, new MathContext(12)).stripTrailingZeros();
    return exact.scale() < 0 ? exact.setScale(0) : exact;
  }
}
