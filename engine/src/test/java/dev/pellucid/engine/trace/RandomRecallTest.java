package dev.pellucid.engine.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.trace.PlainBooks.Books;
import dev.pellucid.engine.trace.RandomMill.Batch;
import dev.pellucid.engine.trace.RandomMill.Delivery;
import dev.pellucid.engine.trace.RandomMill.Move;
import dev.pellucid.engine.trace.Recall.Affected;
import dev.pellucid.engine.trace.Recall.Answer;
import dev.pellucid.engine.trace.Recall.Balance;
import dev.pellucid.engine.trace.Recall.Between;
import dev.pellucid.engine.trace.Recall.Call;
import dev.pellucid.engine.trace.Recall.Store;
import dev.pellucid.engine.trace.Trace.Holding;
import dev.pellucid.engine.trace.Trace.Maybe;
import dev.pellucid.engine.trace.Trace.Onward;
import dev.pellucid.engine.trace.Trace.Thing;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.finding.Severity;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Traces, recalls and balances of made-up mills against a plain search, to the gram. */
class RandomRecallTest {
  private static final int MILLS = Integer.getInteger("pellucid.mills", 200);
  private static final double GRAM = 1e-6;

  @TempDir Path folder = Path.of("");

  private int sure;
  private int may;
  private int onLine;
  private int told;
  private int gaps;
  private int calls;
  private int nothing;
  private int rough;
  private int shut;
  private int bagged;
  private int binned;
  private int later;

  @Test
  void aRecallFindsWhatAPlainSearchFinds() throws IOException {
    for (int seed = 0; seed < MILLS; seed++) {
      RandomMill mill = new RandomMill(seed);
      Path root = folder.resolve("m" + seed);
      mill.write(root);
      ReadFolder read = ReadFolder.of(Texts.at(root));
      assertEquals(
          List.of(),
          read.findings().stream()
              .filter(one -> one.severity() == Severity.ERROR)
              .filter(one -> one.span().file().path().matches("(lots|batches)/.*"))
              .toList(),
          "seed " + seed);
      look(mill, read.tables(), "seed " + seed + ": ");
    }
    // No part of this passes on nothing.
    String seen = sure + " " + may + " " + onLine + " " + told + " " + gaps + " " + calls;
    String more = rough + " " + shut + " " + bagged + " " + binned;
    assertTrue(rough > MILLS && shut > MILLS && bagged > MILLS && binned > MILLS / 4, more);
    assertTrue(sure > MILLS * 10 && may > MILLS * 10 && onLine > MILLS * 2, seen);
    assertTrue(later > MILLS, "still to come: " + later);
    assertTrue(nothing > MILLS / 5, seen + " " + nothing);
    assertTrue(told > MILLS * 8 && gaps > MILLS && calls > MILLS * 10, seen);
  }

  private void look(RandomMill mill, FeedTables tables, String seed) {
    PlainSearch plain = new PlainSearch(mill);
    MadeBy made = new MadeBy(mill.recipes, mill.plants, mill.premixes);
    PlainBooks books = new PlainBooks(mill, plain, mill.today);
    Tracer tracer = new Tracer(tables, made, made, none -> Optional.empty(), mill.today);
    Set<String> wanted = plain.ofNothing();
    nothing += wanted.size();
    assertEquals(
        wanted,
        numbers(
            tracer.ofNothing(code -> false).stream().map(one -> one.batch() + " " + one.line())),
        seed);
    for (String number : mill.numbers()) {
      onward(plain, tracer.onward(number), seed + number);
      Answer answer = tracer.recall(number);
      answer(plain, books, answer, seed + number);
      bins(mill, plain, answer, mill.today, seed + number);
    }
    mill.lots.forEach(
        lot -> balance(books.of(lot), tracer.recall(lot.number()).balance(), seed + lot.number()));
    mill.batches.forEach(one -> back(mill, plain, tracer, one, seed + "in " + one.number()));
  }

  private static Set<String> numbers(Stream<String> numbers) {
    return numbers.collect(Collectors.toCollection(TreeSet::new));
  }

  private void onward(PlainSearch plain, Onward onward, String seed) {
    String subject = onward.thing().number();
    assertEquals(
        plain.sure(subject, false),
        numbers(onward.holds().stream().map(one -> one.batch().number())),
        seed);
    assertEquals(plain.may(subject, false), maybe(onward.may()), seed);
    assertEquals(plain.may(subject, true), maybe(onward.onLine()), seed);
    onward.holds().forEach(one -> kg(plain, subject, one.kg(), one.batch().number(), seed));
    sure += onward.holds().size();
    may += onward.may().size();
    onLine += onward.onLine().size();
    Stream.of(onward.may(), onward.onLine())
        .flatMap(List::stream)
        .forEach(one -> assertFalse(one.doubts().isEmpty(), seed));
  }

  private static Set<String> maybe(List<Maybe> of) {
    return numbers(of.stream().map(one -> one.batch().number()));
  }

  private void kg(PlainSearch plain, String subject, Kilograms kg, String batch, String seed) {
    double wanted = plain.all(subject, plain.batch(batch));
    assertEquals(!Double.isNaN(wanted), kg.whole(), seed + " in " + batch);
    if (kg.whole()) {
      assertEquals(wanted, kg.told(), GRAM, seed + " in " + batch);
      told++;
    }
  }

  private void answer(PlainSearch plain, PlainBooks books, Answer answer, String seed) {
    String subject = answer.thing().number();
    Set<String> sureOnes = plain.sure(subject, false);
    Set<String> maybes = plain.may(subject, false);
    Set<String> line = plain.may(subject, true);
    Set<String> all = new TreeSet<>(sureOnes);
    all.addAll(maybes);
    all.addAll(line);
    if (plain.batch(subject) != null) {
      all.add(subject);
    }
    assertEquals(all, numbers(answer.batches().stream().map(one -> one.batch().number())), seed);
    for (Affected one : answer.batches()) {
      String number = one.batch().number();
      assertEquals(sureOnes.contains(number) || number.equals(subject), one.certain(), seed);
      assertEquals(line.contains(number), one.onLine(), seed + " " + number);
      assertTrue(one.certain() || !one.why().isEmpty(), seed);
      Batch batch = plain.batch(number);
      balance(books.of(batch), one.balance(), seed + " " + number);
      one.balance().store().ifPresent(store -> bags(plain, batch, store, seed + " " + number));
      if (!number.equals(subject)) {
        assertTrue(
            !one.most().whole() || one.most().told() >= one.kg().told() - GRAM,
            seed + " " + number + " " + one.kg() + " " + one.most());
      }
    }
    assertTrue(
        answer.steps().stream()
            .map(Recall.Step::to)
            .collect(Collectors.toSet())
            .containsAll(without(all, subject)),
        seed);
    ahead(plain, all, answer, seed);
    calls(plain, answer, seed);
    stop(plain, answer, seed);
  }

  /** All that is still to leave, come back or be counted is told. */
  private void ahead(PlainSearch plain, Set<String> all, Answer answer, String seed) {
    Set<String> wanted = new TreeSet<>();
    Set<String> asked = new TreeSet<>(all);
    asked.add(answer.thing().number());
    for (String number : asked) {
      Delivery lot = plain.lot(number);
      List<Move> moves = lot == null ? plain.batch(number).moves() : lot.moves();
      boolean later = moves.stream().anyMatch(move -> move.day().isAfter(plain.today()));
      wanted.addAll(later ? Set.of(number) : Set.of());
    }
    assertEquals(
        wanted,
        numbers(
            answer.notFollowed().stream()
                .filter(one -> one.limit() == Recall.Limit.MOVED_AHEAD)
                .flatMap(one -> one.numbers().stream())),
        seed);
    later += wanted.size();
  }

  private static Set<String> without(Set<String> all, String one) {
    Set<String> others = new TreeSet<>(all);
    others.remove(one);
    return others;
  }

  /** Whoever got any is called, with what they still have of each batch, never below nothing. */
  private void calls(PlainSearch plain, Answer answer, String seed) {
    Map<String, Double> out = new TreeMap<>();
    Set<String> tooMuch = new TreeSet<>();
    for (Affected one : answer.batches()) {
      Batch batch = plain.batch(one.batch().number());
      Map<String, Double> with = new TreeMap<>();
      for (Move move : batch.moves()) {
        double kg = move.bags() * batch.bags().of() + move.loose();
        String party = move.party().toLowerCase(Locale.ROOT);
        boolean sent = move.what().equals("delivered") || move.what().equals("returned");
        if (sent && !move.day().isAfter(plain.today())) {
          with.merge(party, move.what().equals("delivered") ? kg : -kg, Double::sum);
        }
      }
      with.forEach((party, kg) -> out.merge(party, Math.max(0, kg), Double::sum));
      with.forEach((party, kg) -> tooMuch.addAll(kg < -GRAM ? Set.of(party) : Set.of()));
    }
    Map<String, Double> called = new TreeMap<>();
    for (Call call : answer.calls()) {
      String party = call.party().toLowerCase(Locale.ROOT);
      assertEquals(
          null, called.put(party, call.certain().kg() + call.possible().kg()), seed + party);
      assertTrue(!tooMuch.contains(party) || !call.tooMuchBack().isEmpty(), seed + party);
      calls++;
    }
    assertEquals(out.keySet(), called.keySet(), seed);
    out.forEach(
        (party, kg) -> assertEquals(kg, called.getOrDefault(party, -1.0), GRAM, seed + party));
  }

  private void balance(Books books, Balance balance, String seed) {
    if (Double.isNaN(books.had()) || books.had() <= 0) {
      assertTrue(balance.had().isEmpty() && balance.gap().isEmpty(), seed);
      assertEquals(books.isKnown(), balance.store().isPresent(), seed);
      return;
    }
    assertEquals(books.had(), balance.had().orElseThrow(), GRAM, seed);
    Store store = balance.store().orElseThrow();
    double most = PlainBooks.store(books, false, true, true);
    assertEquals(most, store.amount().kg(), GRAM, seed);
    assertEquals(PlainBooks.store(books, true, false, false), store.least(), GRAM, seed);
    assertEquals(books.isKnown(), !store.isByBooks(), seed);
    double more = PlainBooks.gap(books, false, false, true);
    boolean gap = books.isKnown() ? PlainBooks.isTold(books) || more < -GRAM : more < -GRAM;
    assertEquals(gap, balance.gap().isPresent(), seed);
    if (gap) {
      Between told = balance.gap().orElseThrow();
      assertEquals(more, told.most(), GRAM, seed);
      assertEquals(PlainBooks.gap(books, true, true, false), told.least(), GRAM, seed);
      assertEquals(more / books.had(), balance.gapShare().orElseThrow().most(), GRAM, seed);
      gaps++;
      rough += told.isExact() ? 0 : 1;
    }
    rough += store.kg().isExact() ? 0 : 1;
    addsUp(books, balance, store, seed);
  }

  /** To the gram: what there was is what went, is there and is missing. */
  private static void addsUp(Books books, Balance of, Store store, String seed) {
    double went =
        of.used().told()
            + of.delivered()
            + (books.ofLot() ? of.returned() : -of.returned())
            + of.disposed()
            + of.corrected()
            + of.samples();
    Between gap = of.gap().orElse(new Between(0, 0));
    if (of.used().whole() && store.kg().isExact() && gap.isExact()) {
      assertEquals(of.had().orElseThrow(), went + store.amount().kg() + gap.most(), GRAM, seed);
    }
  }

  /** No more full bags than can be, with all loose feed that left taken out of open ones. */
  private void bags(PlainSearch plain, Batch batch, Store store, String seed) {
    int bags = store.amount().bags();
    if (bags == 0) {
      return;
    }
    List<Move> moves =
        batch.moves().stream().filter(one -> !one.day().isAfter(plain.today())).toList();
    Optional<Move> counted =
        moves.stream()
            .filter(one -> one.what().equals("counted") && !one.day().isBefore(batch.day()))
            .reduce((one, other) -> other.day().isBefore(one.day()) ? one : other);
    LocalDate from = counted.map(Move::day).orElse(LocalDate.MIN);
    int full = counted.map(Move::bags).orElse(batch.bags().full());
    double loose = counted.map(Move::loose).orElse(batch.bags().rest());
    double samples = batch.samples().stream().mapToDouble(kg -> kg).sum();
    boolean put = batch.day().isAfter(from) && !batch.day().isAfter(plain.today());
    loose -= put ? samples : 0;
    for (Move move : moves) {
      if (move.day().isAfter(from) && !move.what().equals("counted")) {
        boolean back = move.what().equals("returned");
        full += back ? move.bags() : -move.bags();
        loose -= back ? 0 : move.loose();
      }
    }
    assertTrue(loose + (full - bags) * batch.bags().of() >= -GRAM, seed + " bags " + bags);
    assertTrue(bags <= full, seed + " bags " + bags);
    assertTrue(bags * batch.bags().of() <= store.amount().kg() + GRAM, seed + " bags " + bags);
    bagged++;
  }

  /** All of which something can be left is told, once. */
  private void stop(PlainSearch plain, Answer answer, String seed) {
    Set<String> hold = new TreeSet<>();
    Set<String> closed = new TreeSet<>();
    if (plain.lot(answer.thing().number()) != null && isLeft(answer.balance())) {
      hold.add(answer.thing().number());
    }
    for (Affected one : answer.batches()) {
      Batch batch = plain.batch(one.batch().number());
      boolean counted =
          batch.moves().stream()
              .filter(move -> move.what().equals("counted"))
              .anyMatch(
                  move -> !move.day().isBefore(batch.day()) && !move.day().isAfter(plain.today()));
      if ((batch.isMade() || batch.closed()) && isLeft(one.balance())) {
        (batch.closed() && !counted ? closed : hold).add(batch.number());
      }
    }
    assertEquals(hold, left(answer.stop().hold()), seed);
    assertEquals(closed, left(answer.stop().closed()), seed);
    shut += closed.size();
  }

  private static boolean isLeft(Balance balance) {
    return balance.store().map(store -> store.amount().kg() > 0).orElse(true);
  }

  private static Set<String> left(List<Recall.Left> of) {
    return numbers(of.stream().map(one -> one.thing().number()));
  }

  /** A bin is told with all lots that lie in it together on some day from the day of the recall. */
  private void bins(RandomMill mill, PlainSearch plain, Answer answer, LocalDate day, String seed) {
    Delivery lot = plain.lot(answer.thing().number());
    Set<String> together = new TreeSet<>();
    for (int i = 0; lot != null && !lot.bin().isEmpty() && i < 40; i++) {
      LocalDate on = day.plusDays(i);
      for (Delivery other : mill.lots) {
        if (plain.inBin(lot.number(), lot.bin(), on)
            && plain.inBin(other.number(), lot.bin(), on)) {
          together.add(other.number());
        }
      }
    }
    Set<String> told = new TreeSet<>();
    answer.stop().bins().forEach(bin -> told.addAll(bin.lots()));
    assertEquals(together, told, seed);
    binned += told.isEmpty() ? 0 : 1;
  }

  /** What is in a batch is what finds the batch when it is looked for onward. */
  private void back(RandomMill mill, PlainSearch plain, Tracer tracer, Batch batch, String seed) {
    Recall.Origins origins = tracer.origins(batch.number());
    Set<String> wanted = new TreeSet<>();
    Set<String> maybe = new TreeSet<>();
    for (String number : mill.numbers()) {
      if (!number.equals(batch.number())) {
        if (plain.sure(number, false).contains(batch.number())) {
          wanted.add(number);
        } else if (plain.may(number, false).contains(batch.number())
            || plain.may(number, true).contains(batch.number())) {
          maybe.add(number);
        }
      }
    }
    List<Holding> holds = origins.back().holds();
    assertEquals(wanted, numbers(holds.stream().map(one -> one.thing().number())), seed);
    assertEquals(maybe, numbers(origins.may().stream().map(Thing::number)), seed);
    holds.forEach(one -> kg(plain, one.thing().number(), one.kg(), batch.number(), seed));
  }
}
