package dev.pellucid.engine.data;

import dev.pellucid.engine.data.PricesReader.Written;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Span;
import java.util.ArrayList;
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
    ReadFiles<List<Written>> reads,
    SortedMap<String, List<Price>> byIngredient,
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
      Ingredients ingredients, ReadFiles<List<Written>> reads, Map<String, List<Price>> before) {
    Remarks twice = new Remarks();
    SortedMap<String, List<Price>> byIngredient = new TreeMap<>();
    // By the ingredient and the day from which the price holds.
    Map<String, Span> told = new HashMap<>();
    for (List<Written> file : reads.things()) {
      for (Written one : file) {
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
    PriceChecks checks = new PriceChecks(ingredients.byName(), remarks);
    checks.look(byIngredient);
    if (reads.areWhole() && twice.isSound()) {
      checks.lists(reads.things());
    }
    return new Prices(
        ingredients.names(),
        reads,
        byIngredient,
        reads.areWhole() && twice.isSound(),
        remarks.findings());
  }
}
