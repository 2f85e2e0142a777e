package dev.pellucid.engine.optimise;

import java.util.List;

/**
 * Shares that are whole steps from those that are written, so that all together stay what they
 * were: a search that moves steps from one line to another. First it moves until all is kept, each
 * time so that least is missing, and then while it costs less; it knows what each share is weighed
 * as, and keeps limits in the batch too. For one search.
 */
final class Lattice {
  private static final int[] AMOUNTS = {1, 2, 5, 10, 20, 50};
  private static final int MOST = 400;

  /** What is still missing, in steps, that counts as nothing. */
  private static final double LITTLE = 1e-9;

  private static final double CLOSE = 1e-9;

  private final Rooms rooms;
  private final List<Free> free;
  private final double step;
  private final boolean[] moves;
  private final double[] unit;
  private final boolean change;

  private final double[] shares;
  private final double[] weighed;
  private final double[] room;
  private final double[] roomWeighed;

  /** The best move that was found last. */
  private int up = -1;

  private int down;
  private int by;

  /**
   * @param step in points
   * @param fixed which lines stay where they start
   */
  Lattice(Rooms rooms, double step, boolean[] fixed) {
    this.rooms = rooms;
    this.free = rooms.free;
    this.step = step;
    this.change = rooms.found.task().aim() == Aim.CHANGE;
    int n = free.size();
    this.moves = new boolean[n];
    for (int i = 0; i < n; i++) {
      moves[i] = !fixed[i] && free.get(i).high() - free.get(i).low() >= step - CLOSE;
    }
    this.shares = new double[n];
    this.weighed = new double[n];
    this.room = new double[rooms.rows.length];
    this.roomWeighed = new double[rooms.rows.length];
    this.unit = new double[rooms.rows.length];
    for (int r = 0; r < unit.length; r++) {
      double most = 0;
      for (int i = 0; i < n; i++) {
        most = Math.max(most, Math.abs(rooms.rows[r][i]));
      }
      unit[r] = most > 0 ? most * step : 1;
    }
  }

  /**
   * The best near some shares; whether they keep all.
   *
   * @param start which {@link #shares()} take the place of
   */
  boolean from(double[] start) {
    System.arraycopy(start, 0, shares, 0, start.length);
    if (!onLattice()) {
      return false;
    }
    read();
    return repaired() && cheapened();
  }

  /** In points, in the order of the free lines. */
  double[] shares() {
    return shares.clone();
  }

  /** What they cost, in the terms of the rooms. */
  double cost() {
    double cost = 0;
    for (int i = 0; i < shares.length; i++) {
      cost += change ? rise(i, shares[i]) : rooms.cost(i) * shares[i];
    }
    return cost;
  }

  /** What they cost more than the answer that they are near. */
  double costsMore() {
    double more = 0;
    for (int i = 0; i < shares.length; i++) {
      double was = rooms.found.shares()[i];
      more += change ? rise(i, shares[i]) - rise(i, was) : rooms.cost(i) * (shares[i] - was);
    }
    return more;
  }

  /** Each to the nearest step, and what then lacks or is too much to those that were cut most. */
  private boolean onLattice() {
    double[] wanted = shares.clone();
    double sum = 0;
    double asWritten = 0;
    for (int i = 0; i < shares.length; i++) {
      Free one = free.get(i);
      asWritten += one.written();
      if (moves[i]) {
        double steps = Math.rint((wanted[i] - one.written()) / step);
        shares[i] = clamped(one, steps);
      } else if (!isApart(i)) {
        shares[i] = one.written();
      }
      sum += shares[i];
    }
    double lacks = (asWritten - sum) / step;
    int left = (int) Math.rint(lacks);
    if (Math.abs(lacks - left) > 1e-4) {
      return false;
    }
    while (left != 0) {
      int sign = Integer.signum(left);
      int best = -1;
      double most = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < shares.length; i++) {
        double cut = sign * (wanted[i] - shares[i]);
        if (moves[i] && isWithin(i, shares[i] + sign * step) && cut > most) {
          best = i;
          most = cut;
        }
      }
      if (best < 0) {
        return false;
      }
      shares[best] += sign * step;
      left -= sign;
    }
    return true;
  }

  /** Whether a share that does not move stands where it was chosen, and not as it is written. */
  private boolean isApart(int i) {
    return Math.abs(shares[i] - free.get(i).written()) > CLOSE;
  }

  private double clamped(Free one, double steps) {
    double at = one.written() + steps * step;
    if (at < one.low() - CLOSE) {
      return one.written() + Math.ceil((one.low() - one.written()) / step - CLOSE) * step;
    }
    if (at > one.high() + CLOSE) {
      return one.written() + Math.floor((one.high() - one.written()) / step + CLOSE) * step;
    }
    return at;
  }

  private boolean isWithin(int i, double share) {
    return share >= free.get(i).low() - CLOSE && share <= free.get(i).high() + CLOSE;
  }

  private void read() {
    for (int i = 0; i < shares.length; i++) {
      weighed[i] = rooms.weighed(i, shares[i]);
    }
    for (int r = 0; r < room.length; r++) {
      room[r] = rooms.at(r, shares);
      roomWeighed[r] = rooms.isWeighed() ? rooms.weighedAt(r, weighed) : room[r];
    }
  }

  private double rise(int i, double share) {
    return Math.max(0, share - free.get(i).written());
  }

  private double rises() {
    double rises = 0;
    for (int i = 0; i < shares.length; i++) {
      rises += rise(i, shares[i]);
    }
    return rises;
  }

  /** What is missing in all, in steps. */
  private double missing() {
    double missing = moved(rises());
    for (int r = 0; r < room.length; r++) {
      missing += missing(r, room[r], roomWeighed[r]);
    }
    return missing;
  }

  private double missing(int r, double written, double batch) {
    double missing = Math.max(0, rooms.asked[r] - written - rooms.still[r]);
    double inBatch = Math.max(0, rooms.askedWeighed[r] - batch - rooms.still[r]);
    return (missing + inBatch) / unit[r];
  }

  private double moved(double rises) {
    return Math.max(0, (rises - rooms.found.task().mostMoved()) / step - CLOSE);
  }

  /** What would be missing after a move, at least as much as the most that is of interest. */
  private double missing(int i, int j, int amount, double most) {
    double to = shares[i] + amount * step;
    double from = shares[j] - amount * step;
    double more = amount * step;
    double moreWeighed = rooms.weighed(i, to) - weighed[i];
    double lessWeighed = weighed[j] - rooms.weighed(j, from);
    double missing =
        moved(rises() + rise(i, to) - rise(i, shares[i]) + rise(j, from) - rise(j, shares[j]));
    for (int r = 0; r < room.length && missing < most; r++) {
      double[] row = rooms.rows[r];
      missing +=
          missing(
              r,
              room[r] + more * (row[i] - row[j]),
              roomWeighed[r] + row[i] * moreWeighed - row[j] * lessWeighed);
    }
    return missing;
  }

  private double costs(int i, int j, int amount) {
    double more = amount * step;
    return change
        ? rise(i, shares[i] + more)
            - rise(i, shares[i])
            + rise(j, shares[j] - more)
            - rise(j, shares[j])
        : more * (rooms.cost(i) - rooms.cost(j));
  }

  private boolean may(int i, int j, int amount) {
    return i != j
        && moves[i]
        && moves[j]
        && isWithin(i, shares[i] + amount * step)
        && isWithin(j, shares[j] - amount * step);
  }

  private void move() {
    shares[up] += by * step;
    shares[down] -= by * step;
    read();
  }

  private boolean repaired() {
    double missing = missing();
    for (int round = 0; missing > LITTLE; round++) {
      double next = leastMissing(missing);
      if (up < 0 || round > MOST) {
        return false;
      }
      move();
      missing = next;
    }
    return true;
  }

  /** What is missing after the best move; of moves that leave nothing missing the cheapest. */
  private double leastMissing(double before) {
    up = -1;
    double least = before - LITTLE;
    double cheapest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < shares.length; i++) {
      for (int j = 0; j < shares.length; j++) {
        for (int amount : AMOUNTS) {
          if (!may(i, j, amount)) {
            break;
          }
          double missing = missing(i, j, amount, least + LITTLE);
          double cost = costs(i, j, amount);
          boolean better = missing < least || missing <= least + LITTLE && cost < cheapest;
          if (better && missing < before - LITTLE) {
            least = missing;
            cheapest = cost;
            chosen(i, j, amount);
          }
        }
      }
    }
    return least;
  }

  private void chosen(int i, int j, int amount) {
    up = i;
    down = j;
    by = amount;
  }

  private boolean cheapened() {
    for (int round = 0; round < MOST; round++) {
      up = -1;
      double best = -CLOSE * step;
      for (int i = 0; i < shares.length; i++) {
        for (int j = 0; j < shares.length; j++) {
          for (int amount : AMOUNTS) {
            double cost = costs(i, j, amount);
            if (!may(i, j, amount)) {
              break;
            }
            if (cost < best && missing(i, j, amount, 2 * LITTLE) <= LITTLE) {
              best = cost;
              chosen(i, j, amount);
            }
          }
        }
      }
      if (up < 0) {
        return true;
      }
      move();
    }
    return true;
  }

  /**
   * Takes each move that costs less though something then is missing, and fixes that elsewhere; as
   * long as what comes of it costs less.
   */
  void further() {
    boolean found = true;
    for (int round = 0; found && round < shares.length; round++) {
      found = false;
      double[] best = shares.clone();
      double least = cost();
      for (int i = 0; i < best.length; i++) {
        for (int j = 0; j < best.length; j++) {
          for (int a = 0; a < 2; a++) {
            if (!may(i, j, AMOUNTS[a]) || costs(i, j, AMOUNTS[a]) >= 0) {
              continue;
            }
            chosen(i, j, AMOUNTS[a]);
            move();
            if (repaired() && cheapened() && cost() < least - CLOSE * step) {
              found = true;
              least = cost();
              best = shares.clone();
            } else {
              System.arraycopy(best, 0, shares, 0, best.length);
              read();
            }
          }
        }
      }
      System.arraycopy(best, 0, shares, 0, best.length);
      read();
    }
  }
}
