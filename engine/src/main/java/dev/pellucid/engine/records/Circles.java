package dev.pellucid.engine.records;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;

/**
 * Things that lead to others, put in an order in which each comes after all that it leads to, and
 * in groups: those that lead to each other in a circle are of one group, every other thing is a
 * group of its own. (These are the strongly connected components, after Tarjan.)
 *
 * <p>The way that was walked is kept in a list and not in calls, since a chain of rework can be as
 * long as a store is old.
 */
public final class Circles {
  private static final int NONE_YET = -1;

  private final int[][] leads;
  private final int[] found;
  private final int[] earliest;
  private final int[] tried;
  private final int[] group;
  private final int[] order;
  private final Deque<Integer> ungrouped = new ArrayDeque<>();
  private int finds;
  private int ordered;
  private int groups;

  /**
   * @param leads for each thing those that it leads to
   */
  public Circles(int[][] leads) {
    this.leads = leads;
    this.found = new int[leads.length];
    this.earliest = new int[leads.length];
    this.tried = new int[leads.length];
    this.group = new int[leads.length];
    this.order = new int[leads.length];
    Arrays.fill(found, NONE_YET);
    Arrays.fill(group, NONE_YET);
    for (int start = 0; start < leads.length; start++) {
      if (found[start] == NONE_YET) {
        walk(start);
      }
    }
  }

  /** Each thing after those that it leads to; those of one group stand together. */
  public int[] order() {
    return order.clone();
  }

  /** The group of a thing. */
  public int group(int thing) {
    return group[thing];
  }

  private void walk(int start) {
    Deque<Integer> way = new ArrayDeque<>();
    enter(start, way);
    while (!way.isEmpty()) {
      int at = way.element();
      if (tried[at] < leads[at].length) {
        int to = leads[at][tried[at]];
        tried[at]++;
        if (found[to] == NONE_YET) {
          enter(to, way);
        } else if (group[to] == NONE_YET) {
          earliest[at] = Math.min(earliest[at], found[to]);
        }
      } else {
        leave(way);
      }
    }
  }

  private void enter(int thing, Deque<Integer> way) {
    found[thing] = finds;
    earliest[thing] = finds;
    finds++;
    ungrouped.push(thing);
    way.push(thing);
  }

  private void leave(Deque<Integer> way) {
    int done = way.pop();
    if (!way.isEmpty()) {
      int before = way.element();
      earliest[before] = Math.min(earliest[before], earliest[done]);
    }
    if (earliest[done] == found[done]) {
      int last;
      do {
        last = ungrouped.pop();
        group[last] = groups;
        order[ordered] = last;
        ordered++;
      } while (last != done);
      groups++;
    }
  }
}
