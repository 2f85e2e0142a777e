package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.records.FirstExpiredFirstOut.Pick;
import dev.pellucid.engine.resolve.ResolvedPremix;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What the planned batches of premixes will have left, and which are planned too late. */
final class Coming {
  private final List<BatchRecord> batches = new ArrayList<>();
  private final Map<String, Double> left = new TreeMap<>();
  private final Map<String, Late> late = new TreeMap<>();

  /** So many kg of a planned batch are needed from a day on which it is not made yet. */
  record Late(BatchRecord batch, double kg, LocalDate needed) {}

  /**
   * @param premixes planned, in the order of their days
   */
  Coming(List<BatchRecord> premixes) {
    for (BatchRecord batch : premixes) {
      batches.add(batch);
      left.put(batch.number(), batch.kg());
    }
  }

  boolean has(String number) {
    return left.containsKey(number);
  }

  /** Of those that are made by a day and keep until then. */
  List<Pick> there(ResolvedPremix premix, LocalDate day) {
    List<Pick> there = new ArrayList<>();
    for (BatchRecord batch : batches) {
      if (batch.code().equals(premix.code())
          && !batch.day().isAfter(day)
          && FirstExpiredFirstOut.keeps(batch, premix, day)) {
        there.add(new Pick(batch.number(), left(batch.number())));
      }
    }
    return there;
  }

  /** Takes of those that are planned for later days; gives how much that was. */
  double late(ResolvedPremix premix, double kg, LocalDate day) {
    double taken = 0;
    for (BatchRecord batch : batches) {
      if (batch.code().equals(premix.code()) && batch.day().isAfter(day)) {
        taken += take(batch.number(), kg - taken, day);
      }
    }
    return taken;
  }

  void take(Pick pick) {
    left.merge(pick.number(), -pick.kg(), Double::sum);
  }

  /** Takes of one what is there; gives how much that was. */
  double take(String number, double kg, LocalDate day) {
    double takes = Math.min(kg, left(number));
    left.merge(number, -takes, Double::sum);
    batches.stream()
        .filter(batch -> batch.number().equals(number) && batch.day().isAfter(day) && takes > 0)
        .forEach(batch -> late.merge(number, new Late(batch, takes, day), Coming::sooner));
    return takes;
  }

  private static Late sooner(Late one, Late other) {
    LocalDate needed = one.needed().isBefore(other.needed()) ? one.needed() : other.needed();
    return new Late(one.batch(), one.kg() + other.kg(), needed);
  }

  private double left(String number) {
    return Math.max(0, Optional.ofNullable(left.get(number)).orElse(0.0));
  }

  /** By their numbers. */
  List<Late> late() {
    return List.copyOf(late.values());
  }
}
