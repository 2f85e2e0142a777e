package dev.pellucid.engine.leastcost;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What the changes of all feeds of a folder come to together.
 *
 * @param savesPerMonth money, of the feeds of which the folder says how much is made
 * @param perMonth kg that are bought of each ingredient for these, the largest move first
 * @param untold codes of feeds that would change and of which nothing says how much is made
 * @param perTonne kg that are bought for a tonne of each of those, all together
 */
public record Week(
    double savesPerMonth, List<Bought> perMonth, List<String> untold, List<Bought> perTonne) {
  public Week {
    perMonth = List.copyOf(perMonth);
    untold = List.copyOf(untold);
    perTonne = List.copyOf(perTonne);
  }

  /**
   * A feed that would change.
   *
   * @param bought for a tonne in the bags
   */
  public record Feed(
      String code, OptionalDouble tonnes, double savesPerTonne, List<Bought> bought) {
    public Feed {
      bought = List.copyOf(bought);
    }
  }

  public static Week of(List<Feed> feeds) {
    double saves = 0;
    Map<String, Bought> month = new TreeMap<>();
    Map<String, Bought> tonne = new TreeMap<>();
    List<String> untold = new ArrayList<>();
    for (Feed feed : feeds) {
      boolean told = feed.tonnes().isPresent();
      double times = feed.tonnes().orElse(1);
      if (told) {
        saves += feed.savesPerTonne() * times;
      } else {
        untold.add(feed.code());
      }
      for (Bought one : feed.bought()) {
        (told ? month : tonne).merge(one.ingredient(), one.times(times), Bought::plus);
      }
    }
    return new Week(saves, moved(month), untold, moved(tonne));
  }

  private static List<Bought> moved(Map<String, Bought> all) {
    List<Bought> moved = new ArrayList<>();
    for (Bought one : all.values()) {
      if (one.isMoved()) {
        moved.add(one);
      }
    }
    moved.sort(Comparator.comparingDouble((Bought one) -> -Math.abs(one.moved())));
    return moved;
  }
}
