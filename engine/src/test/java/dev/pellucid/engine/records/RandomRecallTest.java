package dev.pellucid.engine.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.records.PlainSearch.Gone;
import dev.pellucid.engine.records.RandomMill.Batch;
import dev.pellucid.engine.records.RandomMill.Delivery;
import dev.pellucid.engine.records.RandomMill.Move;
import dev.pellucid.engine.records.Recall.Affected;
import dev.pellucid.engine.records.Recall.Answer;
import dev.pellucid.engine.records.Recall.Balance;
import dev.pellucid.engine.records.Recall.Call;
import dev.pellucid.engine.records.Trace.Holding;
import dev.pellucid.engine.records.Trace.Maybe;
import dev.pellucid.engine.records.Trace.Onward;
import dev.pellucid.engine.records.Trace.Thing;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.finding.Severity;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
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
    assertTrue(sure > MILLS * 10 && may > MILLS * 10 && onLine > MILLS * 2, seen);
    assertTrue(nothing > MILLS / 5, seen + " " + nothing);
    assertTrue(told > MILLS * 8 && gaps > MILLS && calls > MILLS * 10, seen);
  }

  private void look(RandomMill mill, FeedTables tables, String seed) {
    PlainSearch plain = new PlainSearch(mill);
    Tracer tracer =
        new Tracer(
            tables,
            mill.recipes,
            code -> Optional.ofNullable(mill.plants.get(code)),
            none -> Optional.empty());
    Set<String> wanted = plain.ofNothing();
    nothing += wanted.size();
    assertEquals(
        wanted,
        numbers(
            tracer.ofNothing(code -> false).stream().map(one -> one.batch() + " " + one.line())),
        seed);
    for (String number : mill.numbers()) {
      onward(plain, tracer.onward(number), seed + number);
      answer(plain, tracer.recall(number), seed + number);
    }
    mill.lots.forEach(
        lot -> balance(plain, lot, tracer.recall(lot.number()).balance(), seed + lot.number()));
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

  private void answer(PlainSearch plain, Answer answer, String seed) {
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
      balance(plain, plain.batch(number), one.balance(), seed + " " + number);
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
    calls(plain, answer, seed);
  }

  private static Set<String> without(Set<String> all, String one) {
    Set<String> others = new TreeSet<>(all);
    others.remove(one);
    return others;
  }

  /** Whoever got any is called, with what they still have. */
  private void calls(PlainSearch plain, Answer answer, String seed) {
    double out = 0;
    for (Affected one : answer.batches()) {
      Batch batch = plain.batch(one.batch().number());
      for (Move move : batch.moves()) {
        double kg = move.bags() * batch.bags().of() + move.loose();
        out += move.what().equals("delivered") ? kg : move.what().equals("returned") ? -kg : 0;
      }
    }
    double called = 0;
    Set<String> parties = new TreeSet<>();
    for (Call call : answer.calls()) {
      called += call.certain().kg() + call.possible().kg();
      assertTrue(parties.add(call.party().toLowerCase(Locale.ROOT)), seed);
      calls++;
    }
    assertEquals(out, called, GRAM, seed);
  }

  private void balance(PlainSearch plain, Delivery lot, Balance balance, String seed) {
    balance(plain.gone(lot), lot.kg(), counted(lot.moves(), 0), balance, seed);
  }

  private void balance(PlainSearch plain, Batch batch, Balance balance, String seed) {
    double had = batch.bags().of() > 0 ? batch.bags().kg() : plain.made(batch);
    if (!batch.isMade() || Double.isNaN(had) || had <= 0) {
      assertTrue(balance.had().isEmpty() && balance.gap().isEmpty(), seed);
      return;
    }
    balance(plain.gone(batch), had, counted(batch.moves(), batch.bags().of()), balance, seed);
  }

  /** The last count, as what is gone of it. */
  private static Optional<Gone> counted(List<Move> moves, double bag) {
    Optional<Gone> last = Optional.empty();
    for (Move move : moves) {
      if (move.what().equals("counted")
          && last.filter(one -> one.day().isAfter(move.day())).isEmpty()) {
        last = Optional.of(new Gone(move.day(), move.bags() * bag + move.loose()));
      }
    }
    return last;
  }

  private void balance(
      List<Gone> gone, double had, Optional<Gone> counted, Balance balance, String seed) {
    assertEquals(had, balance.had().orElseThrow(), GRAM, seed);
    LocalDate until = counted.map(Gone::day).orElse(LocalDate.MAX);
    double left = had;
    double later = 0;
    for (Gone one : gone) {
      if (one.day().isAfter(until)) {
        later += one.kg();
      } else {
        left -= one.kg();
      }
    }
    if (counted.isPresent() && !Double.isNaN(left)) {
      double gap = left - counted.get().kg();
      assertEquals(gap, balance.gap().orElseThrow(), GRAM, seed);
      assertEquals(gap / had, balance.gapShare().orElseThrow(), GRAM, seed);
      gaps++;
      // Received or made is what is used, gone, left and missing, where nothing left after the
      // count.
      if (later == 0) {
        double store = balance.store().orElseThrow().amount().kg();
        assertEquals(had, had - left + store + balance.gap().getAsDouble(), GRAM, seed);
      }
    }
    if (counted.isEmpty() && !Double.isNaN(left)) {
      assertEquals(Math.max(0, left), balance.store().orElseThrow().amount().kg(), GRAM, seed);
      assertEquals(left < -GRAM, balance.gap().isPresent(), seed);
    }
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
