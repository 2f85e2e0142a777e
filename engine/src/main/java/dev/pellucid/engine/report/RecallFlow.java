package dev.pellucid.engine.report;

import dev.pellucid.engine.report.Flow.Arrow;
import dev.pellucid.engine.report.Flow.Box;
import dev.pellucid.engine.report.Flow.Place;
import dev.pellucid.engine.trace.Kilograms;
import dev.pellucid.engine.trace.Recall.Affected;
import dev.pellucid.engine.trace.Recall.Amount;
import dev.pellucid.engine.trace.Recall.Call;
import dev.pellucid.engine.trace.Recall.Sent;
import dev.pellucid.engine.trace.Recall.Step;
import dev.pellucid.engine.trace.RecallList;
import dev.pellucid.engine.trace.Trace.LotOf;
import dev.pellucid.engine.trace.Trace.Thing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** A recall as a flow: the thing, the batches with it, and those who got them. */
final class RecallFlow {
  private static final String PARTY = "to ";

  private final RecallList told;
  private final Map<String, Box> boxes = new LinkedHashMap<>();
  private final List<Arrow> arrows = new ArrayList<>();

  private RecallFlow(RecallList told) {
    this.told = told;
  }

  static Flow of(RecallList told) {
    RecallFlow flow = new RecallFlow(told);
    flow.thing(told.answer().thing());
    told.answer().batches().forEach(flow::batch);
    told.answer().steps().forEach(flow::step);
    told.answer().calls().forEach(flow::call);
    return new Flow(List.copyOf(flow.boxes.values()), flow.arrows);
  }

  private void add(Box box) {
    boxes.putIfAbsent(box.key(), box);
  }

  private void thing(Thing thing) {
    String code = thing.batch().map(batch -> batch.code()).orElse("");
    String of = thing.lot().map(LotOf::ingredient).orElse(code);
    Place place = thing.batch().isPresent() ? place(code) : Place.LOT;
    add(
        new Box(
            thing.number(),
            place,
            of,
            thing.number(),
            thing.batch().isPresent() ? "" : of,
            thing.batch().map(batch -> batch.day()),
            true,
            true));
  }

  private Place place(String code) {
    return told.premixes().contains(code) ? Place.PREMIX : Place.FEED;
  }

  private void batch(Affected one) {
    String became = one.isPlanned() ? "planned, " : "";
    String more =
        one.certain() ? became + RecallFigures.kg(one.kg()) + " kg of it" : became + "may hold it";
    add(
        new Box(
            one.batch().number(),
            place(one.batch().code()),
            one.batch().code(),
            one.batch().number(),
            more,
            Optional.of(one.batch().day()),
            one.certain(),
            false));
  }

  private void step(Step one) {
    if (!boxes.containsKey(one.from()) || !boxes.containsKey(one.to())) {
      return;
    }
    arrows.add(
        new Arrow(
            one.from(),
            one.to(),
            RecallWords.kind(one.kind()),
            Optional.of(one.kg()),
            !one.certain(),
            OptionalInt.empty(),
            one.certain()));
  }

  private void call(Call call) {
    boolean certain = call.sent().stream().anyMatch(Sent::certain);
    String key = PARTY + call.party();
    add(new Box(key, Place.PARTY, "", call.party(), "", Optional.empty(), certain, false));
    for (Sent one : call.sent()) {
      if (boxes.containsKey(one.batch().number())) {
        arrows.add(
            new Arrow(
                one.batch().number(),
                key,
                "delivered",
                Optional.of(new Kilograms(one.moved().amount().kg(), true)),
                false,
                bags(one.moved().amount()),
                one.certain()));
      }
    }
  }

  private static OptionalInt bags(Amount amount) {
    return amount.bags() > 0 ? OptionalInt.of(amount.bags()) : OptionalInt.empty();
  }
}
