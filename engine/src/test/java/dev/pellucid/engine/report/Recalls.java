package dev.pellucid.engine.report;

import dev.pellucid.engine.trace.Kilograms;
import dev.pellucid.engine.trace.Recall.Affected;
import dev.pellucid.engine.trace.Recall.Amount;
import dev.pellucid.engine.trace.Recall.Answer;
import dev.pellucid.engine.trace.Recall.Balance;
import dev.pellucid.engine.trace.Recall.Between;
import dev.pellucid.engine.trace.Recall.Call;
import dev.pellucid.engine.trace.Recall.InBin;
import dev.pellucid.engine.trace.Recall.Kind;
import dev.pellucid.engine.trace.Recall.Left;
import dev.pellucid.engine.trace.Recall.Limit;
import dev.pellucid.engine.trace.Recall.Moved;
import dev.pellucid.engine.trace.Recall.NotFollowed;
import dev.pellucid.engine.trace.Recall.Origins;
import dev.pellucid.engine.trace.Recall.PartBag;
import dev.pellucid.engine.trace.Recall.Retained;
import dev.pellucid.engine.trace.Recall.Sent;
import dev.pellucid.engine.trace.Recall.State;
import dev.pellucid.engine.trace.Recall.Step;
import dev.pellucid.engine.trace.Recall.Stop;
import dev.pellucid.engine.trace.Recall.Store;
import dev.pellucid.engine.trace.Recall.Taken;
import dev.pellucid.engine.trace.RecallList;
import dev.pellucid.engine.trace.Trace.Back;
import dev.pellucid.engine.trace.Trace.Batch;
import dev.pellucid.engine.trace.Trace.Doubt;
import dev.pellucid.engine.trace.Trace.Holding;
import dev.pellucid.engine.trace.Trace.LotOf;
import dev.pellucid.engine.trace.Trace.Reason;
import dev.pellucid.engine.trace.Trace.Thing;
import dev.pellucid.engine.trace.Trace.Unknown;
import dev.pellucid.engine.trace.Trace.Way;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/**
 * Recalls put together by hand, so that what is shown of them is tested whatever records would give
 * today.
 */
public final class Recalls {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String LOT = "SE1-9042";
  private static final String PREMIX = "MIN-WW-2026-11-12-1";
  private static final Kilograms NONE = new Kilograms(0, true);

  private Recalls() {}

  /** A lot in a premix, in feeds, and in what was made of these; one of each that there can be. */
  public static RecallList lot() {
    return told(
        new Answer(
            selenite(),
            state("passed", "", ""),
            balance(5, 0.0125, 0, Optional.of(store(0, 4.9875, 0)), OptionalDouble.empty()),
            List.of(taken(PREMIX, Kind.WEIGHED, 0.0125)),
            batches(),
            steps(),
            calls(),
            stop(),
            notFollowed(),
            List.of("CF-31-2026-11-18-1", "CF-31-2026-11-20-1")),
        Optional.empty(),
        List.of("batches/CF-31-2026-11-19-1.yaml cannot be read"));
  }

  /** A batch that went nowhere, with what is in it. */
  public static RecallList batch() {
    Affected one =
        affected(
            "CG-36-2026-11-21-1", state("on-hold", "quality manager", "smells sour"), true, 60, 4);
    Stop stop =
        new Stop(
            List.of(),
            List.of(
                new Left(thing(one.batch()), one.state(), true, Optional.of(store(2, 58.5, 22)))),
            List.of(),
            List.of(),
            List.of());
    return told(
        new Answer(
            thing(one.batch()),
            one.state(),
            one.balance(),
            List.of(),
            List.of(one),
            List.of(),
            List.of(),
            stop,
            List.of(),
            List.of()),
        Optional.of(origins(one.batch())),
        List.of());
  }

  /** A number that nothing was made of. */
  public static RecallList nothing() {
    Balance balance = balance(5, 0, 0, Optional.of(store(0, 4.9, 24)), OptionalDouble.of(0.1));
    return told(
        new Answer(
            selenite(),
            state("failed", "laboratory", "too much lead"),
            balance,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            new Stop(
                List.of(),
                List.of(
                    new Left(
                        selenite(),
                        state("failed", "laboratory", "too much lead"),
                        true,
                        balance.store())),
                List.of(),
                List.of(),
                List.of()),
            List.of(),
            List.of()),
        Optional.empty(),
        List.of());
  }

  /** A lot in many feeds, each delivered to one of some parties. */
  public static RecallList many(int feeds) {
    List<Affected> batches = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    List<Left> hold = new ArrayList<>();
    Map<String, List<Sent>> sent = new TreeMap<>();
    batches.add(affected(PREMIX, state("released", "premix room", ""), true, 5, 0));
    steps.add(step(LOT, PREMIX, Kind.WEIGHED, 0.0125, true));
    for (int i = 0; i < feeds; i++) {
      boolean certain = i % 5 != 4;
      String number = List.of("CF-31", "CG-36", "KF-29").get(i % 3) + "-" + DAY.minusDays(i) + "-1";
      Affected one =
          affected(number, state("released", "shift lead", ""), certain, 500 + i, 4 + i % 3);
      batches.add(one);
      steps.add(step(PREMIX, number, certain ? Kind.PREMIX : Kind.LOT_NOT_TOLD, 2.5, certain));
      String party = "Fish farm number " + i % (1 + feeds / 4);
      Moved moved = moved(5, party, 4 + i % 3, 100 + 25 * (i % 3), "DN-" + (100 + i));
      sent.computeIfAbsent(party, none -> new ArrayList<>())
          .add(new Sent(one.batch(), certain, moved));
      hold.add(
          new Left(thing(one.batch()), one.state(), certain, Optional.of(store(8, 200 + i, 0))));
    }
    List<Call> calls = new ArrayList<>();
    sent.forEach(
        (party, all) ->
            calls.add(new Call(party, all, List.of(), sum(all, true), sum(all, false), List.of())));
    return told(
        new Answer(
            selenite(),
            state("passed", "", ""),
            balance(5, 0.0125, 0, Optional.of(store(0, 4.9875, 0)), OptionalDouble.empty()),
            List.of(taken(PREMIX, Kind.WEIGHED, 0.0125)),
            batches,
            steps,
            calls,
            new Stop(hold, List.of(), List.of(), List.of(), List.of()),
            List.of(),
            List.of()),
        Optional.empty(),
        List.of());
  }

  private static Amount sum(List<Sent> all, boolean certain) {
    int bags = 0;
    double kg = 0;
    for (Sent one : all) {
      if (one.certain() == certain) {
        bags += one.moved().amount().bags();
        kg += one.moved().amount().kg();
      }
    }
    return new Amount(bags, kg);
  }

  private static RecallList told(
      Answer answer, Optional<Origins> origins, List<String> unsearched) {
    TreeMap<String, String> files = new TreeMap<>(Map.of(LOT, "lots/2026-11.yaml"));
    answer
        .batches()
        .forEach(
            one -> files.put(one.batch().number(), "batches/" + one.batch().number() + ".yaml"));
    return new RecallList(
        "Sallowmere Mill",
        DAY,
        Optional.empty(),
        answer,
        origins,
        files,
        Set.of("MIN-WW", "VIT-WW"),
        "6 batch records of batches/ and 7 lots of lots/",
        unsearched);
  }

  private static Thing selenite() {
    return new Thing(
        LOT,
        Optional.of(
            new LotOf(
                "selenite-1",
                "Sodium selenite on limestone, 1 % selenium",
                LocalDate.of(2026, 9, 14),
                5,
                Optional.of(LocalDate.of(2028, 9, 14)),
                Optional.of("passed"),
                Optional.of("Harbour Minerals"),
                Optional.of("S1-26-031"),
                Optional.of("5530"),
                Optional.of("B3"),
                "seal whole, locked away")),
        Optional.empty());
  }

  private static Thing thing(Batch batch) {
    return new Thing(batch.number(), Optional.empty(), Optional.of(batch));
  }

  private static State state(String word, String by, String because) {
    boolean stopped = List.of("on-hold", "failed", "held", "withdrawn").contains(word);
    return new State(word, Optional.of(LocalDate.of(2026, 11, 19)), by, because, stopped);
  }

  private static Store store(int bags, double kg, int counted) {
    return new Store(
        new Amount(bags, Math.max(0, kg)),
        Math.max(0, kg),
        counted == 0 ? Optional.empty() : Optional.of(DAY.withDayOfMonth(counted)),
        Optional.empty(),
        counted == 22);
  }

  private static Store atMost(double kg) {
    return new Store(new Amount(0, kg), 0, Optional.empty(), Optional.empty(), false);
  }

  private static Balance balance(
      double had, double used, double delivered, Optional<Store> store, OptionalDouble gap) {
    return new Balance(
        OptionalDouble.of(had),
        new Kilograms(used, true),
        NONE,
        delivered,
        0,
        0,
        0,
        0,
        NONE,
        store,
        gap.isPresent()
            ? Optional.of(new Between(gap.getAsDouble(), gap.getAsDouble()))
            : Optional.empty());
  }

  private static Affected affected(
      String number, State state, boolean certain, double made, int bags) {
    Moved out = moved(20, "Withybeck Fish Farm", bags, 25 * bags, "DN-114");
    boolean counted = number.startsWith("CF");
    return new Affected(
        batch(number, state.word()),
        state,
        certain,
        certain ? new Kilograms(0.000525, true) : NONE,
        new Kilograms(0.02, true),
        certain ? List.of() : made == 60 ? doubts() : doubts().subList(0, 1),
        !certain && made < 60,
        state.word().equals("planned") ? Optional.empty() : Optional.of(new Amount(bags, made)),
        OptionalDouble.of(25),
        bags == 0 ? List.of() : List.of(out),
        List.of(),
        List.of(),
        counted ? List.of(moved(22, "", 1, 21.9, "")) : List.of(),
        List.of(),
        bags == 0 ? List.of() : List.of(new Retained(0.5, "shelf 4, box " + bags, until(bags))),
        counted ? Optional.of(new PartBag("CF-31-2026-11-17-1", 6.4)) : Optional.empty(),
        balance(
            made,
            0,
            25 * bags,
            Optional.of(
                certain
                    ? store(1, made - 25 * bags - 0.5, counted ? 22 : 0)
                    : atMost(made - 25 * bags - 0.5)),
            counted ? OptionalDouble.of(0.5) : OptionalDouble.empty()));
  }

  /** One of each. */
  private static List<Doubt> doubts() {
    List<Doubt> all = new ArrayList<>();
    for (Reason reason : Reason.values()) {
      int more = reason == Reason.TAKEN ? 4 : 0;
      String cleaned = reason == Reason.ORDER_NOT_TOLD ? "on 2026-11-30 by store" : "";
      all.add(new Doubt("MIN-WW", reason, "B3", List.of(PREMIX), more, cleaned));
    }
    return all;
  }

  private static Optional<LocalDate> until(int bags) {
    return bags == 2 ? Optional.of(DAY.minusDays(1)) : Optional.of(DAY.plusYears(1));
  }

  private static Batch batch(String number, String became) {
    int day = number.length() - "2026-11-12-1".length();
    return new Batch(
        number,
        number.substring(0, day - 1),
        LocalDate.parse(number.substring(day, number.length() - 2)),
        became,
        false);
  }

  private static Moved moved(int day, String party, int bags, double kg, String note) {
    return new Moved(DAY.withDayOfMonth(day), "store", party, new Amount(bags, kg), note);
  }

  private static Taken taken(String into, Kind kind, double kg) {
    return new Taken(into, LocalDate.of(2026, 11, 12), kind, new Kilograms(kg, true), false);
  }

  private static List<Affected> batches() {
    List<Affected> all = new ArrayList<>();
    all.add(affected(PREMIX, state("released", "premix room", ""), true, 5, 0));
    all.add(affected("CF-31-2026-11-18-1", state("released", "shift lead", ""), true, 96.9, 3));
    all.add(affected("CF-31-2026-11-20-1", state("open", "", ""), true, 120, 2));
    all.add(affected("CG-36-2026-11-21-1", state("released", "shift lead", ""), false, 60, 1));
    all.add(affected("CG-36-2026-12-02-1", state("planned", "", ""), true, 60, 0));
    return all;
  }

  private static List<Step> steps() {
    List<Step> all = new ArrayList<>();
    all.add(step(LOT, PREMIX, Kind.WEIGHED, 0.0125, true));
    all.add(step(PREMIX, "CF-31-2026-11-18-1", Kind.PREMIX, 0.21, true));
    all.add(step("CF-31-2026-11-18-1", "CF-31-2026-11-20-1", Kind.REWORK, 6.4, true));
    all.add(step("CF-31-2026-11-18-1", "CF-31-2026-11-20-1", Kind.PART_BAG, 21.9, true));
    all.add(step("CF-31-2026-11-18-1", "CF-31-2026-11-20-1", Kind.FINES, 3.2, true));
    for (Kind kind :
        List.of(
            Kind.LOT_NOT_TOLD, Kind.NEXT_ON_LINE, Kind.FLUSH, Kind.SAME_BIN, Kind.ORDER_NOT_TOLD)) {
      all.add(step("CF-31-2026-11-20-1", "CG-36-2026-11-21-1", kind, 5, false));
    }
    all.add(step(PREMIX, "CG-36-2026-12-02-1", Kind.PREMIX, 0.3, true));
    return all;
  }

  private static Step step(String from, String to, Kind kind, double kg, boolean certain) {
    boolean binned = kind == Kind.SAME_BIN;
    return new Step(
        from,
        to,
        kind,
        kind == Kind.PREMIX ? "MIN-WW" : "",
        binned ? "B3" : "",
        new Kilograms(kind == Kind.FLUSH ? 0 : kg, kind != Kind.FLUSH),
        certain);
  }

  private static List<Call> calls() {
    List<Affected> of = batches();
    Sent first =
        new Sent(of.get(1).batch(), true, moved(20, "Withybeck Fish Farm", 3, 75, "DN-114"));
    Sent back = new Sent(of.get(1).batch(), true, moved(24, "Withybeck Fish Farm", 1, 25, "wet"));
    Sent perhaps =
        new Sent(of.get(3).batch(), false, moved(23, "Withybeck Fish Farm", 1, 25, "DN-120"));
    Sent other = new Sent(of.get(3).batch(), false, moved(23, "Reedmere Carp Ponds", 0, 10, ""));
    Sent lost = new Sent(of.get(1).batch(), true, moved(24, "Reedmere Carp Ponds", 0, 5, ""));
    return List.of(
        new Call(
            "Withybeck Fish Farm",
            List.of(first, perhaps),
            List.of(back),
            new Amount(2, 50),
            new Amount(1, 25),
            List.of()),
        new Call(
            "Reedmere Carp Ponds",
            List.of(other),
            List.of(lost),
            Amount.NONE,
            new Amount(0, 10),
            List.of("CF-31-2026-11-18-1")));
  }

  private static Stop stop() {
    List<Affected> of = batches();
    List<Left> hold = new ArrayList<>();
    hold.add(new Left(selenite(), state("passed", "", ""), true, Optional.of(store(0, 4.9875, 0))));
    for (Affected one : of.subList(0, 4)) {
      hold.add(new Left(thing(one.batch()), one.state(), one.certain(), one.balance().store()));
    }
    Batch held = batch("CF-31-2026-11-17-1", "held");
    Batch closed = batch("CF-31-2026-11-16-1", "released");
    Store perhaps = new Store(new Amount(0, 120), 0, Optional.empty(), Optional.empty(), false);
    return new Stop(
        hold,
        List.of(
            new Left(thing(held), state("held", "shift lead", "damp"), false, Optional.empty())),
        List.of(
            new Left(
                thing(closed), state("released", "shift lead", ""), true, Optional.of(perhaps))),
        of.subList(4, 5),
        List.of(
            new InBin("B3", List.of(LOT, "SE1-9077"), Optional.empty()),
            new InBin("B4", List.of(LOT), Optional.of(DAY))));
  }

  private static List<NotFollowed> notFollowed() {
    List<NotFollowed> all = new ArrayList<>();
    for (Limit limit : Limit.values()) {
      all.add(
          new NotFollowed(
              limit,
              List.of("CF-31-2026-11-20-1"),
              limit == Limit.TOLD_IN_WORDS ? "into the next carp feed" : ""));
    }
    return all;
  }

  private static Origins origins(Batch batch) {
    Way itself = new Way(Optional.empty(), new Kilograms(9, true));
    Back back =
        new Back(
            thing(batch),
            List.of(new Holding(selenite(), batch, new Kilograms(9, true), List.of(itself))),
            List.of(
                new Unknown(
                    batch.number(),
                    "salt",
                    Reason.NOT_TOLD,
                    "",
                    OptionalDouble.of(0.3),
                    List.of())),
            List.of());
    return new Origins(
        back,
        List.of(new Thing("SB-0411", Optional.empty(), Optional.empty())),
        List.of(step("SB-0411", batch.number(), Kind.SAME_BIN, 24, false)));
  }
}
