package dev.pellucid.engine.sharing;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.Free;
import dev.pellucid.engine.optimise.JointOptimiser;
import dev.pellucid.engine.optimise.JointTask;
import dev.pellucid.engine.optimise.Requirement.OfStock.Counted;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.sharing.SharedOut.SharedFeed;
import dev.pellucid.engine.sharing.Wanted.Due;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Plans over the example whose prices, feeds, quantities, days and shortages are drawn, seeded. */
final class RandomPlans {
  private static final String PRICES = "prices/2026-11.yaml";
  private static final Pattern PRICE = Pattern.compile("(?m)^( *[a-z0-9-]+: )([0-9.]+)( EUR)");

  private final Random random;
  final Plans plans;
  final List<Wanted> wanted = new ArrayList<>();
  final List<Supply> supplies = new ArrayList<>();

  RandomPlans(Random random) {
    this.random = random;
    this.plans = new Plans(priced());
    List<String> codes = new ArrayList<>(plans.shared.trees().recipes());
    Collections.shuffle(codes, random);
    int feeds = 2 + random.nextInt(3);
    for (int i = 0; i < feeds; i++) {
      wanted.add(drawn(codes.get(i)));
    }
    shortages();
  }

  private Texts priced() {
    try {
      Texts example = Texts.at(Example.whole()).held();
      String text = example.read(PRICES, new ArrayList<>()).orElseThrow().text();
      String drawn =
          PRICE
              .matcher(text)
              .replaceAll(
                  one ->
                      one.group(1)
                          + Figures.plain(
                              Double.parseDouble(one.group(2)) * (0.6 + random.nextDouble()))
                          + one.group(3));
      return example.over(Map.of(PRICES, drawn));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Wanted drawn(String code) {
    Counted counted = random.nextInt(3) == 0 ? Counted.WEIGHED : Counted.BAGGED;
    List<Due> due = new ArrayList<>();
    int days = 1 + random.nextInt(2);
    for (int i = 0; i < days; i++) {
      due.add(new Due(Plans.DAY.plusDays(5 + 7L * i), 200 + random.nextInt(60) * 100, ""));
    }
    Wanted drawn = new Wanted(plans.posed(code), counted, due);
    return random.nextInt(2) == 0 ? drawn : drawn.sparing(i -> premixes(drawn, i));
  }

  /** A part of its premixes is there; sometimes all, and more. */
  private SortedMap<String, Double> premixes(Wanted drawn, int i) {
    double part = 1.3 * random.nextDouble();
    ComputedFeed feed = drawn.posed().recipe().feed().orElseThrow();
    double kg = drawn.due().get(i).kg() * (drawn.isBagged() ? 1 / feed.bagged() : 0.01);
    SortedMap<String, Double> spared = new TreeMap<>();
    for (Row row : feed.rows()) {
      if (row.line().material().premixed().isPresent()) {
        spared.merge(row.ingredient().name(), part * kg * row.kgRichest(), Double::sum);
      }
    }
    return spared;
  }

  /** Of one to three ingredients, less than all would take who had plenty; sometimes too little. */
  private void shortages() {
    SharedOut plenty = plans.shareOut().of(wanted, List.of());
    Map<String, Double> takes = new TreeMap<>();
    for (SharedFeed one : plenty.feeds()) {
      one.takesThen().forEach((name, kg) -> takes.merge(name, kg, Double::sum));
    }
    List<String> names = new ArrayList<>(takes.keySet());
    names.removeIf(name -> takes.getOrDefault(name, 0.0) < 20 || !isFree(name) && !isSpared(name));
    Collections.shuffle(names, random);
    int many = 1 + random.nextInt(3);
    for (String name : names.subList(0, Math.min(many, names.size()))) {
      double most = takes.getOrDefault(name, 0.0);
      double least = least(name, most);
      double kg =
          random.nextInt(5) == 0
              ? least * (0.3 + 0.7 * random.nextDouble()) + 0.01
              : least + (most - least) * (0.2 + 0.85 * random.nextDouble());
      supplies.add(random.nextInt(3) == 0 ? spoiling(name, kg) : plans.supply(name, kg));
    }
  }

  private boolean isFree(String name) {
    for (Wanted one : wanted) {
      for (Free free : one.posed().task().free()) {
        if (free.line().material().name().equals(name) && free.high() > free.low()) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean isSpared(String name) {
    return wanted.stream()
        .flatMap(one -> one.due().stream())
        .anyMatch(due -> due.spared().getOrDefault(name, 0.0) > 0);
  }

  /** What all take at least, whatever it costs. */
  private double least(String name, double most) {
    Supply none = plans.supply(name, 0);
    JointTask task = Joining.of(wanted, List.of(none), new double[1]);
    return new JointOptimiser(Solver.standard())
        .solve(task.with(List.of(task.scarce().get(0).at(1000))))
        .byKind(found -> found.elsewhere(0), unmet -> most, undecided -> most);
  }

  private Supply spoiling(String name, double kg) {
    TreeMap<LocalDate, Double> lasting = new TreeMap<>();
    lasting.put(Plans.DAY.plusDays(5), kg);
    lasting.put(Plans.DAY.plusDays(12), kg * (0.5 + 0.5 * random.nextDouble()));
    return new Supply(name, kg, lasting, true, plans.price(name));
  }
}
