package dev.pellucid.engine.records;

import dev.pellucid.engine.records.MadeUpStore.Batch;
import dev.pellucid.engine.records.MadeUpStore.Came;
import dev.pellucid.engine.records.MadeUpStore.Named;
import dev.pellucid.engine.records.MadeUpStore.Told;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.NullUnmarked;

/**
 * Reckons a {@link MadeUpStore} by hand, slowly: every question is answered by going over all lots
 * and all batches again. It shares no code with the engine.
 */
@NullUnmarked
final class PlainStore {
  private static final double NOTHING = 1e-7;

  /** A premix is an eighth of each feed that holds it. */
  static final double DOSE = 0.125;

  private final MadeUpStore store;

  /** By the number of a lot or batch. */
  final Map<String, Double> left = new TreeMap<>();

  /** What each line of a planned batch takes: {@code number line -> lots kg, ...; lacks kg}. */
  final Map<String, String> taken = new TreeMap<>();

  private final Map<String, Double> exact = new HashMap<>();

  final Map<String, double[]> goods = new TreeMap<>();
  final Map<String, double[]> toMake = new TreeMap<>();
  final Map<String, double[]> late = new TreeMap<>();

  PlainStore(MadeUpStore store) {
    this.store = store;
    for (Came lot : store.lots) {
      left.put(lot.number(), lot.kg() - lot.back() - lot.thrown() + lot.put());
    }
    for (Batch batch : store.batches) {
      left.put(batch.number(), batch.made() ? sum(batch) : batch.kg());
    }
    for (Batch batch : store.batches) {
      for (Named one : batch.named()) {
        if (batch.made() && !one.lot().isEmpty()) {
          left.merge(one.lot(), -one.kg(), Double::sum);
        }
      }
    }
    List<Batch> inTime = new ArrayList<>(store.batches);
    inTime.sort(Comparator.comparing(Batch::day).thenComparing(Batch::number));
    for (Batch batch : inTime) {
      for (Named one : batch.named()) {
        if (batch.made() && !one.bin().isEmpty()) {
          spread(in(one.bin(), batch.day()), one.kg());
        }
      }
    }
    List<Batch> planned = new ArrayList<>();
    inTime.stream().filter(batch -> !batch.made()).forEach(planned::add);
    planned.sort(
        Comparator.comparing(Batch::day)
            .thenComparing(batch -> depth(batch.code()))
            .thenComparing(Batch::number));
    planned.forEach(this::putAside);
    planned.forEach(this::take);
  }

  /** What lies in the middle between two goes up, whatever its last bits. */
  static long grams(double kg) {
    return (long) Math.floor(kg * 1000 + 0.5 + 1e-6);
  }

  private static double sum(Batch batch) {
    return batch.named().stream().mapToDouble(Named::kg).sum();
  }

  private static int depth(String code) {
    return code.equals("P-0") ? 0 : code.equals("P-1") ? 1 : 2;
  }

  private double left(String number) {
    return Math.max(0, left.getOrDefault(number, 0.0));
  }

  /** The lots that may be in a bin, the oldest first. */
  private List<Came> in(String bin, int day) {
    List<Came> in = new ArrayList<>();
    for (Came lot : store.lots) {
      if (lot.bin().equals(bin) && lot.day() <= day && !goneBy(lot, day)) {
        in.add(lot);
      }
    }
    in.sort(Comparator.comparing(Came::day).thenComparing(Came::number));
    return in;
  }

  private boolean goneBy(Came lot, int day) {
    for (int empty : store.emptied.getOrDefault(lot.bin(), new TreeSet<>())) {
      if (empty > lot.day() && empty < day) {
        return true;
      }
    }
    return false;
  }

  private void spread(List<Came> lots, double kg) {
    double wanted = kg;
    for (Came lot : lots) {
      double takes = Math.min(wanted, left(lot.number()));
      left.merge(lot.number(), -takes, Double::sum);
      wanted -= takes;
    }
  }

  private List<Named> namedOf(Batch batch, String line) {
    List<Named> named = new ArrayList<>();
    for (Named one : batch.named()) {
      if (one.line().equals(line) && !(one.lot().isEmpty() && one.bin().isEmpty())) {
        named.add(one);
      }
    }
    return named;
  }

  private void putAside(Batch batch) {
    for (Map.Entry<String, Integer> part : parts(batch.code()).entrySet()) {
      List<Named> named = namedOf(batch, part.getKey());
      double asked = batch.kg() * part.getValue() / 100;
      List<String> words = new ArrayList<>();
      double lacks = asked;
      for (Named one : named) {
        double wanted = asked / named.size();
        double takes;
        if (one.lot().isEmpty()) {
          List<Came> in = in(one.bin(), batch.day());
          takes = Math.min(wanted, in.stream().mapToDouble(lot -> left(lot.number())).sum());
          spread(in, takes);
          words.add(words(in.stream().map(Came::number).toList(), takes));
        } else {
          takes = Math.min(wanted, left(one.lot()));
          left.merge(one.lot(), -takes, Double::sum);
          words.add(words(List.of(one.lot()), takes));
          tooLate(one.lot(), batch.day(), takes);
        }
        lacks -= takes;
      }
      if (!named.isEmpty()) {
        tell(batch, part.getKey(), words, lacks);
      }
    }
  }

  private void tooLate(String number, int day, double kg) {
    for (Batch other : store.batches) {
      if (other.number().equals(number) && !other.made() && other.day() > day && kg > 0) {
        double[] told = late.computeIfAbsent(number, none -> new double[] {0, 999});
        told[0] += kg;
        told[1] = Math.min(told[1], day);
      }
    }
  }

  private Map<String, Integer> parts(String code) {
    return store.parts.getOrDefault(code, Map.of());
  }

  private static String words(List<String> lots, double kg) {
    return lots + " " + grams(kg);
  }

  private void tell(Batch batch, String line, List<String> words, double lacks) {
    exact.put(batch.number() + " " + line, lacks > NOTHING ? lacks : 0);
    taken.put(
        batch.number() + " " + line, words + " lacks " + (lacks > NOTHING ? grams(lacks) : 0));
  }

  private void take(Batch batch) {
    for (Map.Entry<String, Integer> part : parts(batch.code()).entrySet()) {
      double asked = batch.kg() * part.getValue() / 100;
      String key = batch.number() + " " + part.getKey();
      double lacks = asked;
      if (namedOf(batch, part.getKey()).isEmpty()) {
        List<String> words = new ArrayList<>();
        lacks = choose(part.getKey(), asked, batch.code(), batch.kg() / DOSE, batch.day(), words);
        boolean kept =
            MadeUpStore.isPremix(part.getKey())
                ? store.batches.stream()
                    .anyMatch(
                        one ->
                            one.code().equals(part.getKey())
                                && (one.made() || one.day() <= batch.day()))
                : store.lots.stream().anyMatch(lot -> lot.meal().equals(part.getKey()));
        if (kept) {
          tell(batch, part.getKey(), words, lacks);
        }
      } else {
        lacks = exact.getOrDefault(key, asked);
      }
      need(part.getKey(), asked, lacks, batch.day());
    }
  }

  /** Takes what is there; gives what lacks. */
  private double choose(
      String what, double kg, String code, double feedKg, int day, List<String> words) {
    return MadeUpStore.isPremix(what)
        ? ofBatches(what, kg, code, day, words)
        : ofLots(what, kg, code, feedKg, day, words);
  }

  private double ofLots(
      String meal, double kg, String code, double feedKg, int day, List<String> words) {
    List<List<Came>> heaps = new ArrayList<>();
    Set<String> bins = new TreeSet<>();
    for (Came lot : store.lots) {
      if (lot.meal().equals(meal) && lot.day() <= day && !goneBy(lot, day)) {
        if (lot.bin().isEmpty()) {
          heaps.add(List.of(lot));
        } else if (bins.add(lot.bin())) {
          heaps.add(in(lot.bin(), day));
        }
      }
    }
    heaps.sort(
        Comparator.comparing((List<Came> heap) -> first(heap, true))
            .thenComparing(heap -> first(heap, false))
            .thenComparing(heap -> heap.size() == 1 ? heap.get(0).number() : heap.get(0).bin()));
    double wanted = kg;
    for (List<Came> heap : heaps) {
      double most = heap.stream().mapToDouble(lot -> left(lot.number())).sum();
      boolean fit = true;
      for (Came lot : heap) {
        Told told = on(lot, Math.max(day, MadeUpStore.TODAY));
        boolean old = lot.until() != 0 && lot.until() < day && left(lot.number()) > 0;
        fit &= !old && told != null && isPassed(told, code);
        most = told != null && told.most() > 0 ? Math.min(most, told.most() / 100 * feedKg) : most;
      }
      double takes = Math.min(wanted, most);
      if (fit && takes > NOTHING) {
        spread(heap, takes);
        words.add(words(heap.stream().map(Came::number).toList(), takes));
        wanted -= takes;
      }
    }
    return wanted;
  }

  private int first(List<Came> heap, boolean until) {
    int first = 9999;
    for (Came lot : heap) {
      int day = until ? (lot.until() == 0 ? 9999 : lot.until()) : lot.day();
      first = left(lot.number()) > 0 ? Math.min(first, day) : first;
    }
    return first;
  }

  private static Told on(Came lot, int day) {
    Told last = null;
    for (Told told : lot.told()) {
      last = told.day() <= day ? told : last;
    }
    return last;
  }

  private static boolean isPassed(Told told, String code) {
    return told.state().equals("passed")
        || (told.state().equals("passed-for")
            && (told.only().isEmpty() || told.only().contains(code)));
  }

  private double ofBatches(String premix, double kg, String code, int day, List<String> words) {
    List<Batch> there = new ArrayList<>();
    for (Batch batch : store.batches) {
      boolean made = batch.made() && batch.day() <= day && isClean(batch, code, day);
      if (batch.code().equals(premix) && (made || (!batch.made() && batch.day() <= day))) {
        there.add(batch);
      }
    }
    there.sort(
        Comparator.comparing((Batch batch) -> !batch.made())
            .thenComparing(Batch::day)
            .thenComparing(batch -> batch.made() ? batch.serial() : 0)
            .thenComparing(Batch::number));
    double wanted = kg;
    for (Batch batch : there) {
      double takes = Math.min(wanted, left(batch.number()));
      if (takes > NOTHING) {
        left.merge(batch.number(), -takes, Double::sum);
        words.add(words(List.of(batch.number()), takes));
        wanted -= takes;
      }
    }
    return wanted;
  }

  private boolean isClean(Batch batch, String code, int day) {
    List<Held> inside = new ArrayList<>();
    open(batch, Set.of(batch.code()), inside, new TreeSet<>());
    return inside.stream().allMatch(held -> isClean(held, code, Math.max(day, MadeUpStore.TODAY)));
  }

  private static boolean isClean(Held held, String code, int known) {
    Told told = on(held.lot(), known);
    if (told == null || told.state().equals("waiting") || told.state().equals("passed")) {
      return true;
    }
    return told.state().equals("passed-for")
        && (told.only().isEmpty()
            || told.only().contains(code)
            || held.codes().stream().anyMatch(told.only()::contains));
  }

  /** A lot and what is between it and the batch that is asked about. */
  private record Held(Came lot, Set<String> codes) {}

  private void open(Batch batch, Set<String> codes, List<Held> inside, Set<String> seen) {
    if (!seen.add(batch.number())) {
      return;
    }
    for (Named one : batch.named()) {
      for (Came lot : store.lots) {
        if (one.lot().equals(lot.number())) {
          inside.add(new Held(lot, codes));
        }
      }
      if (one.lot().isEmpty() && !one.bin().isEmpty()) {
        in(one.bin(), batch.day()).forEach(lot -> inside.add(new Held(lot, codes)));
      }
      for (Batch other : store.batches) {
        if (other.number().equals(one.lot())) {
          Set<String> deeper = new TreeSet<>(codes);
          deeper.add(other.code());
          open(other, deeper, inside, seen);
        }
      }
    }
  }

  /** What is left of lots on their last good day, by their numbers. */
  Map<String, Long> spoiling() {
    int end = MadeUpStore.TODAY + 30;
    for (Batch batch : store.batches) {
      end = batch.made() ? end : Math.max(end, batch.day());
    }
    Map<String, Long> spoiling = new TreeMap<>();
    for (Came lot : store.lots) {
      boolean there =
          lot.bin().isEmpty()
              || (lot.day() <= MadeUpStore.TODAY && !goneBy(lot, MadeUpStore.TODAY));
      if (there && lot.until() != 0 && lot.until() < end && left(lot.number()) > NOTHING) {
        spoiling.put(lot.number(), grams(left(lot.number())));
      }
    }
    return spoiling;
  }

  private void need(String what, double kg, double lacks, int day) {
    if (!MadeUpStore.isPremix(what)) {
      add(goods, what, kg, lacks, day);
      return;
    }
    double rest = lacks;
    List<Batch> later = new ArrayList<>(store.batches);
    later.sort(Comparator.comparing(Batch::day).thenComparing(Batch::number));
    for (Batch batch : later) {
      if (!batch.made() && batch.code().equals(what) && batch.day() > day) {
        double takes = Math.min(rest, left(batch.number()));
        left.merge(batch.number(), -takes, Double::sum);
        tooLate(batch.number(), day, takes);
        rest -= takes;
      }
    }
    add(toMake, what, kg, rest, day);
    if (rest > NOTHING) {
      for (Map.Entry<String, Integer> part : parts(what).entrySet()) {
        double of = rest * part.getValue() / 100;
        double gap = choose(part.getKey(), of, what, rest / DOSE, day, new ArrayList<>());
        need(part.getKey(), of, gap, day);
      }
    }
  }

  private static void add(Map<String, double[]> to, String what, double kg, double lacks, int day) {
    double[] told = to.computeIfAbsent(what, none -> new double[] {0, 0, 999});
    told[0] += kg;
    if (lacks > NOTHING) {
      told[1] += lacks;
      told[2] = Math.min(told[2], day);
    }
  }
}
