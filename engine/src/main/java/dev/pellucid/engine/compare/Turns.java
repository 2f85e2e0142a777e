package dev.pellucid.engine.compare;

import dev.pellucid.engine.account.Held;
import dev.pellucid.engine.compare.RecipeChange.LimitMoved;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** In which way a limit turned, and the limits that turned so. */
final class Turns {
  private static final double TIGHT = 0.01;

  private Turns() {}

  /** Tells whether a limit moved in some way; one that is new stands on both sides. */
  interface Turn {
    boolean is(Held then, Held now, boolean isNew);
  }

  static boolean isBroken(Held then, Held now, boolean isNew) {
    return now.broken() && (!then.broken() || isNew);
  }

  static boolean isMet(Held then, Held now, boolean isNew) {
    return now.told() && now.keeps() && then.broken() && !now.demand().isWaived();
  }

  static boolean isByWaiver(Held then, Held now, boolean isNew) {
    return now.byWaiver() && (!then.byWaiver() || isNew);
  }

  static boolean isTight(Held then, Held now, boolean isNew) {
    boolean near = now.told() && now.keeps() && now.room() < TIGHT && now.shown() != 0;
    return near && (isNew || then.room() >= TIGHT && then.keeps());
  }

  static boolean isUntold(Held then, Held now, boolean isNew) {
    return !now.told() && (then.told() || isNew);
  }

  static boolean isMoved(Held then, Held now, boolean isNew) {
    return now.told()
        && then.told()
        && now.unit().symbol().equals(then.unit().symbol())
        && !Effect.same(then.shown(), now.shown())
        && !isBroken(then, now, isNew)
        && !isMet(then, now, isNew)
        && !isTight(then, now, isNew);
  }

  static List<LimitMoved> of(FeedFigures was, FeedFigures is, Turn turn) {
    List<LimitMoved> limits = new ArrayList<>();
    Map<String, Held> before = was.account().limits();
    is.account()
        .limits()
        .forEach(
            (key, now) -> {
              Held then = before.getOrDefault(key, now);
              if (turn.is(then, now, !before.containsKey(key))) {
                limits.add(new LimitMoved(then, now));
              }
            });
    return limits;
  }

  /** Limits that ask for something else than before, new ones and those that are gone. */
  static List<String> bounds(Map<String, Held> was, Map<String, Held> is) {
    List<String> bounds = new ArrayList<>();
    for (String key : Effect.names(was, is)) {
      Held then = was.get(key);
      Held now = is.get(key);
      if (then == null && now != null) {
        bounds.add("new: " + now.demand().line() + by(now));
      } else if (now == null && then != null) {
        bounds.add("gone: " + then.demand().line() + by(then));
      } else if (then != null && now != null) {
        String before = then.demand().line();
        if (!before.equals(now.demand().line())) {
          bounds.add(before + " -> " + now.demand().asked() + by(now));
        }
      }
    }
    return bounds;
  }

  private static String by(Held limit) {
    String profile = limit.demand().profile();
    return profile.isEmpty() ? "" : " (" + profile + ")";
  }
}
