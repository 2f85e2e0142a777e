package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.syntax.Property;
import dev.pellucid.text.Span;
import java.util.Optional;

/**
 * The line that decides how moist the feed is: the last moisture that a dryer or cooler aims at.
 */
final class MoistureTarget {
  private MoistureTarget() {}

  static Optional<Setting> of(ComputedFeed feed) {
    return feed.recipe().process().inOrder().stream()
        .flatMap(pass -> pass.setting(Property.MOISTURE).stream())
        .reduce((before, last) -> last);
  }

  /** That line, else the recipe. */
  static Span place(ComputedFeed feed) {
    return of(feed).map(Setting::span).orElse(feed.recipe().declared());
  }
}
