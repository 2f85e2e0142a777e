package dev.pellucid.engine.optimise;

import dev.pellucid.engine.compute.Slopes;
import dev.pellucid.engine.compute.Slopes.Slope;
import java.util.ArrayList;
import java.util.List;

/**
 * Something to keep with room to spare, so that it is still kept when shares are rounded and
 * weighed.
 *
 * @param spare in the measure of its rooms
 */
public record Tightened(Requirement of, double spare) {
  /** A little more than it lacks, so that it is not missed again by as little. */
  private static final double MORE = 1.1;

  /** What is left to it beyond what is to be spared. */
  public List<Slope> rooms(Slopes feed) {
    List<Slope> rooms = of.rooms(feed);
    if (spare == 0) {
      return rooms;
    }
    List<Slope> less = new ArrayList<>(rooms.size());
    for (Slope room : rooms) {
      less.add(new Slope(room.now() - spare, room.perPoint()));
    }
    return less;
  }

  /** The same with as much more to spare as the poorest of some feeds lacks. */
  public Tightened by(List<Slopes> feeds) {
    double lacks = 0;
    for (Slopes feed : feeds) {
      for (Slope room : of.rooms(feed)) {
        lacks = Math.max(lacks, -room.now());
      }
    }
    return lacks > 0 ? new Tightened(of, spare + lacks * MORE) : this;
  }
}
