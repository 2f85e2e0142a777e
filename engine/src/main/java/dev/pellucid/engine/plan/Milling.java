package dev.pellucid.engine.plan;

import dev.pellucid.engine.data.Ingredient.Form;
import dev.pellucid.engine.plan.Task.Milled;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.syntax.Property;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What goes to the mill, and through which screens. A screen without a name is for every meal and
 * grain of the mix that is not weighed apart; one with the name of an ingredient is for that
 * ingredient, after the other. A wider screen comes before a finer one.
 */
final class Milling {
  private final List<Line> lines;
  private final List<Weighed> weighed;
  private final Optional<OnScales> scales;

  /**
   * @param weighed the same lines as they are weighed
   */
  Milling(List<Line> lines, List<Weighed> weighed, Optional<OnScales> scales) {
    this.lines = lines;
    this.weighed = weighed;
    this.scales = scales;
  }

  List<Milled> of(Pass pass) {
    List<Setting> screens =
        pass.settings().stream()
            .filter(setting -> setting.property() == Property.SCREEN)
            .sorted(Comparator.comparingDouble(Setting::aim).reversed())
            .toList();
    List<Milled> milled = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Line line = lines.get(i);
      boolean coarse = isCoarse(line) && !weighed.get(i).micro();
      List<String> its =
          screens.stream()
              .filter(screen -> screen.ingredient().map(line.material()::isCalled).orElse(coarse))
              .map(screen -> screen.written().target().asWritten())
              .distinct()
              .toList();
      if (line.place() == Place.MIX && !its.isEmpty()) {
        milled.add(
            new Milled(weighed.get(i).title(), Totals.together(weighed.get(i), scales), its));
      }
    }
    return milled;
  }

  private static boolean isCoarse(Line line) {
    return line.material()
        .single()
        .map(single -> single.ingredient().form())
        .filter(form -> form == Form.GRAIN || form == Form.MEAL)
        .isPresent();
  }
}
