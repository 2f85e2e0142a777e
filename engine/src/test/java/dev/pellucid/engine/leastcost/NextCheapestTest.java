package dev.pellucid.engine.leastcost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.pellucid.engine.leastcost.FoundFeeds.Case;
import dev.pellucid.engine.leastcost.Reasons.Next;
import dev.pellucid.engine.optimise.Answer;
import dev.pellucid.engine.optimise.Free;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No feed that differs in an ingredient is cheaper than the next one, of all that there are. */
class NextCheapestTest {
  static Stream<Case> feeds() {
    return Stream.concat(
        FoundFeeds.ofExample().stream(),
        FoundFeeds.random(Integer.getInteger("pellucid.explained", 50) / 5).stream());
  }

  @ParameterizedTest
  @MethodSource("feeds")
  void noneIsCheaper(Case one) {
    Optional<Next> next = new NextCheapest(one.posed(), one.found(), one.nearby()).of();
    OptionalDouble best = cheapestOfAll(one);
    assertEquals(best.isPresent(), next.isPresent());
    if (next.isPresent()) {
      assertEquals(best.getAsDouble(), next.get().cost(), 1e-8);
      assertFalse(next.get().comesIn().isEmpty() && next.get().goesOut().isEmpty());
    }
  }

  /** Each line that may be left out is in or out; every choice is tried but that of the answer. */
  private static OptionalDouble cheapestOfAll(Case one) {
    List<Free> lines = one.found().task().free();
    OptionalDouble best = OptionalDouble.empty();
    for (int choice = 0; choice < 1 << lines.size(); choice++) {
      Optional<List<Free>> chosen = chosen(one, choice);
      Optional<Answer.Found> found =
          chosen.flatMap(it -> FoundFeeds.solved(one.found().task().with(it)));
      if (found.isPresent()) {
        double cost = found.get().feed().costPerKg();
        best = OptionalDouble.of(Math.min(cost, best.orElse(Double.POSITIVE_INFINITY)));
      }
    }
    return best;
  }

  private static Optional<List<Free>> chosen(Case one, int choice) {
    List<Free> chosen = new ArrayList<>();
    boolean differs = false;
    for (int i = 0; i < one.found().shares().length; i++) {
      Free line = one.found().task().free().get(i);
      boolean isIn = (choice & 1 << i) != 0;
      boolean was = one.found().shares()[i] > 1e-6;
      if (!isIn && line.low() > 0 && !line.orNone()) {
        return Optional.empty();
      }
      double least = was ? line.low() : Math.max(line.low(), NextCheapest.LEAST_SHARE);
      double high = isIn ? line.high() : 0;
      chosen.add(new Free(line.line(), isIn ? least : 0, high, false, isIn ? line.step() : 0));
      differs |= isIn != was;
    }
    return differs ? Optional.of(chosen) : Optional.empty();
  }
}
