package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Drying;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.quantity.Share;
import dev.pellucid.engine.records.MadeBatch.Used;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Passes;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A recipe as one batch of it was made: a line for each entry of the record, its material that of
 * the lot, its share what was weighed, its place that of the record; the water that was added and
 * the last moisture that was read in place of those aimed at. It is computed and judged like any
 * recipe, so that there is no second arithmetic.
 */
final class MadeRecipe {
  private final LotMaterials materials;

  MadeRecipe(FeedTables tables, Map<String, ResolvedPremix> premixes) {
    this.materials = new LotMaterials(tables, premixes);
  }

  /**
   * The recipe of a planned batch with its lots in place of its ingredients, line by line as it
   * stands. Of two lines of one ingredient a record names the first.
   */
  ResolvedRecipe laid(ResolvedRecipe recipe, BatchRecord record) {
    List<Line> laid = new ArrayList<>();
    Set<Entry> named = new HashSet<>();
    for (Line line : recipe.lines()) {
      List<Entry> ofLine = new ArrayList<>();
      for (Entry entry : record.entries()) {
        if (line.isTaken() && line.material().isCalled(entry.line()) && named.add(entry)) {
          ofLine.add(entry);
        }
      }
      laid.add(
          ofLine.isEmpty()
              ? line
              : line.of(materials.together(line.material(), ofLine, recipe.species())));
    }
    return recipe.asMade(laid, recipe.process());
  }

  /** Empty where a batch was made and no line of the recipe was weighed. */
  Optional<ResolvedRecipe> of(ResolvedRecipe recipe, BatchRecord record, BatchTarget order) {
    List<Used> used = new ArrayList<>(MadeBatch.used(record, order));
    double kept = used.stream().mapToDouble(one -> one.kg() * one.ask().inFeed()).sum();
    if (record.isMade() && kept <= 0) {
      return Optional.empty();
    }
    double scale = 100 / (record.isMade() ? kept : record.kg());
    List<Line> lines = new ArrayList<>();
    for (BatchTarget.TargetWeight ask : order.asks()) {
      Line planned = recipe.lines().get(ask.index());
      List<Used> ofLine = used.stream().filter(one -> one.ask().index() == ask.index()).toList();
      ofLine.forEach(one -> lines.add(line(lines.size(), planned, one, scale)));
      if (ofLine.isEmpty() && !record.isMade()) {
        lines.add(moved(planned, lines.size(), ask, scale));
      }
    }
    double mix =
        used.stream()
            .filter(one -> one.ask().place() == Line.Place.MIX)
            .mapToDouble(one -> one.kg() * one.ask().inFeed())
            .sum();
    return Optional.of(recipe.asMade(lines, process(recipe.process(), record, mix)));
  }

  private Line line(int index, Line planned, Used used, double scale) {
    double share = used.kg() * used.ask().inFeed() * scale;
    double onTop = used.kg() * (1 - used.ask().inFeed()) * scale;
    Share inFeed = new Share(BigDecimal.valueOf(share));
    return new Line(
        index,
        planned.place(),
        materials.of(used),
        inFeed,
        inFeed,
        new Share(BigDecimal.valueOf(onTop)),
        0,
        false,
        Optional.empty(),
        Optional.empty(),
        used.entry().name(),
        used.entry().weight());
  }

  private static Line moved(Line line, int index, BatchTarget.TargetWeight ask, double scale) {
    return new Line(
        index,
        line.place(),
        line.material(),
        line.designed(),
        line.share(),
        new Share(BigDecimal.valueOf(ask.kg() * (1 - ask.inFeed()) * scale)),
        0,
        false,
        line.within(),
        line.step(),
        line.name(),
        line.figure());
  }

  private static Passes process(Passes planned, BatchRecord record, double mix) {
    List<Pass> passes = new ArrayList<>(planned.inOrder());
    record.water().ifPresent(water -> wet(passes, water.thing() / mix));
    record.drying().flatMap(Drying::last).ifPresent(last -> dried(passes, last.moisture()));
    return new Passes(passes);
  }

  /** Only where water goes in at one place: how several parted it is not recorded. */
  private static void wet(List<Pass> passes, double onMix) {
    long places = passes.stream().filter(pass -> pass.step() == Step.ADD_WATER).count();
    for (int i = 0; places == 1 && i < passes.size(); i++) {
      if (passes.get(i).step() == Step.ADD_WATER) {
        Pass pass = passes.get(i);
        passes.set(
            i,
            with(
                pass,
                pass.settings().stream()
                    .map(
                        setting -> isWater(setting) ? to(setting, Property.ON_MIX, onMix) : setting)
                    .toList()));
      }
    }
  }

  private static boolean isWater(Setting setting) {
    return setting.property() == Property.ON_MIX || setting.property() == Property.TO_MOISTURE;
  }

  private static void dried(List<Pass> passes, double moisture) {
    for (int i = passes.size() - 1; i >= 0; i--) {
      Pass pass = passes.get(i);
      if (pass.step().dries() && pass.setting(Property.MOISTURE).isPresent()) {
        passes.set(
            i,
            with(
                pass,
                pass.settings().stream()
                    .map(
                        setting ->
                            setting.property() == Property.MOISTURE
                                ? to(setting, Property.MOISTURE, moisture)
                                : setting)
                    .toList()));
        return;
      }
    }
  }

  private static Pass with(Pass pass, List<Setting> settings) {
    return new Pass(pass.step(), settings, pass.span());
  }

  private static Setting to(Setting setting, Property property, double figure) {
    return new Setting(
        property,
        setting.ingredient(),
        figure,
        figure,
        Optional.empty(),
        setting.manner(),
        setting.written());
  }
}
