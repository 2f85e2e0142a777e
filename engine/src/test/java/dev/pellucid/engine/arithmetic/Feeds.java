package dev.pellucid.engine.arithmetic;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.outside.Cooked;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Subject;
import java.util.List;
import java.util.stream.Stream;

/** Small feeds for the examples, and what the engine reads off them. */
final class Feeds {
  private Feeds() {}

  /** Of one ingredient alone, {@code meal}. */
  static ComputedFeed alone(String contents, String process) {
    return new Cooked().ingredient("meal", contents).feed("mix\n  meal 100 %\n" + process);
  }

  /** Of {@code meal}, and {@code bran} that takes the rest. */
  static ComputedFeed two(String share, String meal, String bran, String more) {
    return new Cooked()
        .ingredient("meal", meal)
        .ingredient("bran", bran)
        .feed("mix\n  meal " + share + "\n  bran rest\n" + more);
  }

  static double content(ComputedFeed feed, Scenario end, String nutrient) {
    return read(feed, end, new Basis.AsFed(), nutrient);
  }

  static double expected(ComputedFeed feed, String nutrient) {
    return content(feed, Scenario.EXPECTED, nutrient);
  }

  static double read(ComputedFeed feed, Scenario end, Basis basis, String nutrient) {
    return new Readings(feed).at(sum(feed, nutrient), basis, end).value();
  }

  static double ratio(ComputedFeed feed, Subject.RatioKind kind, String over, String under) {
    return new Readings(feed)
        .at(ratioOf(feed, kind, over, under), new Basis.AsFed(), Scenario.EXPECTED)
        .value();
  }

  static Subject.Ratio ratioOf(
      ComputedFeed feed, Subject.RatioKind kind, String over, String under) {
    return new Subject.Ratio(sum(feed, over), sum(feed, under), kind, over + " : " + under);
  }

  static double deviation(ComputedFeed feed, Subject subject) {
    return new Readings(feed).varying(subject, new Basis.AsFed(), Scenario.EXPECTED).deviation();
  }

  static Subject.Nutrients sum(ComputedFeed feed, String... nutrients) {
    return new Subject.Nutrients(
        Stream.of(nutrients).map(it -> feed.nutrients().named(it).orElseThrow()).toList(),
        String.join(" + ", List.of(nutrients)));
  }
}
