package dev.pellucid.engine.optimise;

import java.util.Optional;

/**
 * How far a bound may be moved while what it costs stays the same, to one percent of it. Found by
 * solving again with the bound moved: first further and further away, then nearer to the turn. Two
 * prices and two costs tell where the turn is if there is one between them, so that few solves are
 * needed; where there is no answer on one side, or more than one turn between, the middle is tried.
 */
public final class HowLong {
  private static final double SAME = 0.01;
  private static final int FURTHER = 8;
  private static final int NEARER = 40;

  /** A turn is told to so many parts of a step. */
  private static final double PARTS = 200;

  private final Nearby nearby;
  private final Bounding bounding;
  private final double[] near;
  private final double step;

  /**
   * @param near shares from which it is solved again
   * @param step of the trade, in the measure of the bound
   */
  public HowLong(Nearby nearby, Bounding bounding, double[] near, double step) {
    this.nearby = nearby;
    this.bounding = bounding;
    this.near = near;
    this.step = step;
  }

  /** An answer with the bound there. */
  public record At(double bound, double cost, double price) {}

  /** Solved again with the bound there; empty where nothing keeps all. */
  public Optional<At> at(double bound) {
    return nearby
        .solve(bounding.at(bound), near)
        .byKind(
            found ->
                Optional.of(new At(bound, found.feed().costPerKg(), bounding.price(found, bound))),
            unmet -> Optional.empty(),
            undecided -> Optional.empty());
  }

  /**
   * The furthest bound at which the price is the same.
   *
   * @param here with the price that is sought
   * @param way 1 for up, -1 for down
   */
  public double end(At here, int way) {
    At inside = here;
    double outside = here.bound();
    Optional<At> beyond = Optional.empty();
    boolean found = false;
    for (int i = 0; i < FURTHER && !found; i++) {
      outside = Math.max(0, here.bound() + way * step * (1 << i));
      if (outside == inside.bound()) {
        return outside;
      }
      beyond = at(outside);
      found = beyond.isEmpty() || !isSame(beyond.get(), here);
      inside = found ? inside : beyond.get();
    }
    return found ? between(here, inside, outside, beyond) : inside.bound();
  }

  private double between(At here, At in, double out, Optional<At> beyondOut) {
    At inside = in;
    double outside = out;
    Optional<At> beyond = beyondOut;
    double close = step / PARTS;
    for (int i = 0; i < NEARER && Math.abs(outside - inside.bound()) > close; i++) {
      double next = next(inside, outside, beyond, close, i);
      Optional<At> there = at(next);
      if (there.isPresent() && isSame(there.get(), here)) {
        inside = there.get();
      } else {
        outside = next;
        beyond = there;
      }
    }
    return inside.bound();
  }

  /** Where both lines of cost meet, a little to one side and then to the other; else the middle. */
  private double next(At inside, double outside, Optional<At> beyond, double close, int round) {
    double middle = (inside.bound() + outside) / 2;
    if (beyond.isEmpty() || round % 3 == 2) {
      return middle;
    }
    double way = Math.signum(outside - inside.bound());
    double rise = beyond.get().cost() - inside.cost();
    double one = bounding.tighter() * inside.price();
    double other = bounding.tighter() * beyond.get().price();
    if (one == other) {
      return middle;
    }
    double turn = (rise + one * inside.bound() - other * outside) / (one - other);
    double side = round % 3 == 0 ? -close / 2 : close / 2;
    double next = turn + way * side;
    boolean isBetween = (next - inside.bound()) * way > 0 && (outside - next) * way > 0;
    return isBetween ? next : middle;
  }

  private static boolean isSame(At one, At other) {
    return Math.abs(one.price() - other.price()) <= SAME * Math.abs(other.price());
  }
}
