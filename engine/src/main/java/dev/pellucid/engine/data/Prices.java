package dev.pellucid.engine.data;

import dev.pellucid.engine.data.PricesReader.Listed;
import dev.pellucid.engine.data.PricesReader.Written;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All files of {@code prices/}: each as it was read, and the prices that count, since of two from
 * one day only the first does.
 *
 * @param ingredients what can have a price, as the files were read
 * @param whole whether all prices that are written are here
 */
record Prices(
    Known ingredients,
    ReadFiles<Listed> reads,
    SortedMap<String, List<Price>> byIngredient,
    SortedMap<String, List<Ordering>> ordering,
    boolean whole,
    List<Finding> findings) {

  static final Prices NONE = of(Ingredients.NONE, ReadFiles.none(), new TreeMap<>());

  /** Reads what is new, or all where other ingredients can be named. */
  Prices next(Nodes nodes, Frame frame, Ingredients all) {
    Known named = all.names();
    List<DataFile> files = nodes.in(Places.PRICES);
    return named.isLike(ingredients)
        ? of(all, reads.next(files, file -> PricesReader.read(file, frame, named)), byIngredient)
        : of(all, reads.anew(files, file -> PricesReader.read(file, frame, named)), byIngredient);
  }

  /**
   * @param before the prices of the state before; those of an ingredient that are the same now stay
   *     one and the same list
   */
  private static Prices of(
      Ingredients ingredients, ReadFiles<Listed> reads, Map<String, List<Price>> before) {
    Remarks twice = new Remarks();
    SortedMap<String, List<Price>> byIngredient = new TreeMap<>();
    // By the ingredient and the day from which the price holds.
    Map<String, Span> told = new HashMap<>();
    for (Listed file : reads.things()) {
      for (Written one : file.prices()) {
        Price price = one.price();
        String day = price.ingredient() + " " + price.from();
        Span earlier = told.putIfAbsent(day, one.ingredient().span());
        if (earlier != null) {
          twice.add(ReferenceFindings.priceTwice(one.ingredient(), earlier));
        } else {
          byIngredient.computeIfAbsent(price.ingredient(), any -> new ArrayList<>()).add(price);
        }
      }
    }
    for (Map.Entry<String, List<Price>> each : byIngredient.entrySet()) {
      List<Price> then = before.getOrDefault(each.getKey(), List.of());
      each.setValue(then.equals(each.getValue()) ? then : List.copyOf(each.getValue()));
    }
    Remarks remarks = new Remarks();
    remarks.addAll(reads.findings());
    remarks.addAll(twice.findings());
    SortedMap<String, List<Ordering>> ordering = ordering(reads, remarks);
    PriceChecks checks = new PriceChecks(ingredients.byName(), remarks);
    checks.look(byIngredient);
    if (reads.areWhole() && twice.isSound()) {
      checks.lists(prices(reads));
    }
    return new Prices(
        ingredients.names(),
        reads,
        byIngredient,
        ordering,
        reads.areWhole() && twice.isSound(),
        remarks.findings());
  }

  private static List<List<Written>> prices(ReadFiles<Listed> reads) {
    List<List<Written>> prices = new ArrayList<>();
    for (Listed file : reads.things()) {
      prices.add(file.prices());
    }
    return prices;
  }

  /** How each is ordered, in the order of the days from which it holds. */
  private static SortedMap<String, List<Ordering>> ordering(
      ReadFiles<Listed> reads, Remarks remarks) {
    SortedMap<String, List<Ordering>> ordering = new TreeMap<>();
    for (Listed file : reads.things()) {
      for (Ordering one : file.ordering()) {
        add(one, ordering.computeIfAbsent(one.ingredient(), any -> new ArrayList<>()), remarks);
      }
    }
    for (Map.Entry<String, List<Ordering>> each : ordering.entrySet()) {
      each.getValue().sort(Comparator.comparing(Ordering::from));
      each.setValue(List.copyOf(each.getValue()));
      moved(each.getValue(), remarks);
    }
    return ordering;
  }

  private static void add(Ordering one, List<Ordering> others, Remarks remarks) {
    for (Ordering other : others) {
      if (other.from().equals(one.from())) {
        remarks.add(ReferenceFindings.orderingTwice(one, other.place()));
        return;
      }
    }
    others.add(one);
  }

  /** A pack of the same digits with its point elsewhere. */
  private static void moved(List<Ordering> inTime, Remarks remarks) {
    for (int i = 1; i < inTime.size(); i++) {
      Ordering now = inTime.get(i);
      Ordering before = inTime.get(i - 1);
      double tens =
          now.pack().isPresent() && before.pack().isPresent()
              ? Math.log10(now.pack().getAsDouble() / before.pack().getAsDouble())
              : 0;
      if (Math.abs(tens) > 0.5 && Math.abs(tens - Math.rint(tens)) < Closeness.PART) {
        remarks.add(ReferenceFindings.packMoved(now, before, kg(now), kg(before)));
      }
    }
  }

  private static String kg(Ordering one) {
    return Figures.plain(one.pack().orElseThrow(), Unit.KG);
  }
}
