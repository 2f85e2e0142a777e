package dev.pellucid.engine.sharing;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.leastcost.Portion.Settled;
import dev.pellucid.engine.linear.Solver;
import dev.pellucid.engine.optimise.JointAnswer;
import dev.pellucid.engine.optimise.JointTask.Made;
import dev.pellucid.engine.optimise.Optimiser;
import dev.pellucid.engine.sharing.SharedOut.Money;
import dev.pellucid.engine.sharing.SharedOut.SharedFeed;
import dev.pellucid.engine.sharing.SharedOut.SharedSupply;
import dev.pellucid.engine.sharing.SharedOut.Standing;
import dev.pellucid.engine.sharing.SharedOut.Worth;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** What is told of feeds that are settled. */
final class Told {
  private final @Nullable Solver solver;
  private final List<Wanted> wanted;
  private final List<Wanted> made;
  private final List<Supply> supplies;
  private final JointAnswer.@Nullable Found found;
  private final List<Settled> settled;

  /**
   * @param made what is made of each that is wanted
   * @param settled in the order of those of which anything is made
   */
  Told(
      @Nullable Solver solver,
      List<Wanted> wanted,
      List<Wanted> made,
      List<Supply> supplies,
      JointAnswer.@Nullable Found found,
      List<Settled> settled) {
    this.solver = solver;
    this.wanted = wanted;
    this.made = made;
    this.supplies = supplies;
    this.found = found;
    this.settled = settled;
  }

  static Told nothing(List<Wanted> wanted, List<Wanted> made, List<Supply> supplies) {
    return new Told(null, wanted, made, supplies, null, List.of());
  }

  SharedOut out(Standing standing, SortedMap<String, Double> lacks) {
    List<SharedFeed> feeds = feeds();
    return new SharedOut(standing, "", money(feeds), feeds, supplies(feeds, standing), lacks);
  }

  private List<SharedFeed> feeds() {
    List<SharedFeed> feeds = new ArrayList<>();
    int next = 0;
    for (int f = 0; f < wanted.size(); f++) {
      Made of = made.get(f).made();
      Optional<Settled> its = of.kg() > 0 ? Optional.of(settled.get(next++)) : Optional.empty();
      ComputedFeed now = wanted.get(f).posed().recipe().feed().orElseThrow();
      feeds.add(
          new SharedFeed(
              wanted.get(f),
              made.get(f).due(),
              its,
              Takes.all(of, now),
              its.map(one -> Takes.all(of, one.feed())).orElse(new TreeMap<>())));
    }
    return feeds;
  }

  private Money money(List<SharedFeed> feeds) {
    double now = 0;
    double then = 0;
    for (int f = 0; f < feeds.size(); f++) {
      Made of = made.get(f).made();
      now += Takes.money(of, wanted.get(f).posed().recipe().feed().orElseThrow());
      then += feeds.get(f).settled().map(one -> Takes.money(of, one.feed())).orElse(0.0);
    }
    return new Money(now, then, found == null ? 0 : found.cost(), plenty());
  }

  /** If nothing were short: each feed by itself. */
  private double plenty() {
    double plenty = 0;
    for (Wanted one : made) {
      if (one.kg() > 0 && solver != null) {
        plenty +=
            new Optimiser(solver)
                .solve(one.posed().task())
                .byKind(it -> Takes.money(one.made(), it.feed()), unmet -> 0.0, undecided -> 0.0);
      }
    }
    return plenty;
  }

  private List<SharedSupply> supplies(List<SharedFeed> feeds, Standing standing) {
    List<SharedSupply> all = new ArrayList<>();
    for (int s = 0; s < supplies.size(); s++) {
      String name = supplies.get(s).ingredient();
      double now = 0;
      double then = 0;
      double spared = 0;
      for (int f = 0; f < feeds.size(); f++) {
        SharedFeed one = feeds.get(f);
        now += one.takesNow().getOrDefault(name, 0.0);
        then += one.takesThen().getOrDefault(name, 0.0);
        spared +=
            one.settled().isPresent() ? made.get(f).spared(name, one.settled().get().feed()) : 0;
      }
      double more = Joining.spared(made, supplies.get(s), LocalDate.MIN);
      Optional<Worth> worth =
          standing == Standing.ALL_MADE && found != null && solver != null
              ? new WorthOfMore(solver, found).of(s).map(it -> it.without(more))
              : Optional.empty();
      all.add(new SharedSupply(supplies.get(s), now, then, spared, worth));
    }
    return all;
  }
}
