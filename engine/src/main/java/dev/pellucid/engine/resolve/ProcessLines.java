package dev.pellucid.engine.resolve;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.measure.Closeness;
import dev.pellucid.syntax.ProcessLine;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Range;
import dev.pellucid.syntax.Step;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The lines of {@code process} to passes: neighbours with one step word are one pass.
 *
 * <p>A coat for which no step is written goes on after the last step that changes the feed, before
 * it is sieved, packed or stored.
 */
final class ProcessLines {
  static final Code NO_TEMPERATURE = new Code("temperature-missing");
  static final Code TWICE = new Code("setting-twice");
  static final Code AIM_NOT_ACCEPTED = new Code("aim-not-accepted");

  private final List<Finding> findings;
  private boolean sound = true;

  private ProcessLines(List<Finding> findings) {
    this.findings = findings;
  }

  /**
   * The passes; absent where they cannot be meant as they are written.
   *
   * @param coat the heading of the coat, where there is one
   */
  static Optional<Passes> passes(
      List<ProcessLine> lines, Optional<Span> coat, List<Finding> findings) {
    return new ProcessLines(findings).passes(lines, coat);
  }

  private Optional<Passes> passes(List<ProcessLine> lines, Optional<Span> coat) {
    List<Pass> passes = new ArrayList<>();
    List<ProcessLine> together = new ArrayList<>();
    for (ProcessLine line : lines) {
      if (!together.isEmpty() && together.get(0).step() != line.step()) {
        passes.add(pass(together));
        together.clear();
      }
      together.add(line);
    }
    if (!together.isEmpty()) {
      passes.add(pass(together));
    }
    boolean coats = false;
    for (Pass pass : passes) {
      needTemperature(pass);
      aimAccepted(pass);
      coats |= pass.coats();
    }
    twice(passes);
    for (Pass pass : passes) {
      waterOneWay(pass);
    }
    List<Finding> order = ProcessOrder.findings(passes);
    findings.addAll(order);
    if (coat.isPresent() && !coats) {
      passes.add(end(passes), new Pass(Step.COAT, List.of(), coat.get()));
    }
    return sound && order.isEmpty() ? Optional.of(new Passes(passes)) : Optional.empty();
  }

  /** The place after the last pass that changes the feed. */
  private static int end(List<Pass> passes) {
    int end = passes.size();
    while (end > 0 && passes.get(end - 1).step().leavesFeedAsItIs()) {
      end--;
    }
    return end;
  }

  /** Water is told as a share of the mix or as a moisture to reach: two different sums. */
  private void waterOneWay(Pass pass) {
    Optional<Setting> onMix = pass.setting(Property.ON_MIX);
    Optional<Setting> toMoisture = pass.setting(Property.TO_MOISTURE);
    if (onMix.isPresent() && toMoisture.isPresent()) {
      sound = false;
      findings.add(
          Finding.error(
                  TWICE,
                  toMoisture.get().written().propertyAsWritten().span(),
                  "add-water is given in two ways, on-mix and to-moisture")
              .seeing("given first", onMix.get().written().propertyAsWritten().span())
              .helping("keep one of the two lines"));
    }
  }

  /** The same setting twice: of one pass, or of all passes of a step that happens once. */
  private void twice(List<Pass> passes) {
    Map<Step, Told> ofStep = new EnumMap<>(Step.class);
    for (Pass pass : passes) {
      Told told = new Told();
      if (pass.step().isDoneOnce()) {
        Told before = ofStep.putIfAbsent(pass.step(), told);
        told = before == null ? told : before;
      }
      for (Setting setting : pass.settings()) {
        Optional<Setting> earlier = told.earlier(setting);
        if (earlier.isPresent()) {
          twice(pass.step(), earlier.get(), setting);
        }
      }
    }
  }

  /** The settings that are told of one pass, or of one step. */
  private static final class Told {
    private final Map<Property, Setting> ofAll = new EnumMap<>(Property.class);
    private final Map<String, Setting> ofIngredients = new HashMap<>();

    /** The first that tells the same, where one was before this. */
    Optional<Setting> earlier(Setting setting) {
      return Optional.ofNullable(
          setting.ingredient().isEmpty()
              ? ofAll.putIfAbsent(setting.property(), setting)
              : ofIngredients.putIfAbsent(
                  setting.property().word() + " " + setting.ingredient().get(), setting));
    }
  }

  private void twice(Step step, Setting earlier, Setting later) {
    boolean same = earlier.asksTheSameAs(later);
    sound &= same;
    String what =
        step.word()
            + later.ingredient().map(name -> " " + name).orElse("")
            + " "
            + later.property().word();
    findings.add(
        Finding.of(
                TWICE,
                same ? Severity.WARNING : Severity.ERROR,
                later.written().propertyAsWritten().span(),
                same ? what + " is given twice" : what + " is given twice, with two figures")
            .seeing("given first", earlier.written().propertyAsWritten().span())
            .helping("keep one of the two lines"));
  }

  private static Pass pass(List<ProcessLine> lines) {
    Span span = lines.get(0).stepAsWritten().span().through(lines.get(lines.size() - 1).span());
    List<Setting> settings = new ArrayList<>(lines.size());
    for (ProcessLine line : lines) {
      settings.add(setting(line));
    }
    return new Pass(lines.get(0).step(), settings, span);
  }

  private void needTemperature(Pass pass) {
    if (pass.step().heats() && pass.setting(Property.TEMPERATURE).isEmpty()) {
      findings.add(
          Finding.error(
                  NO_TEMPERATURE,
                  pass.settings().get(0).written().stepAsWritten().span(),
                  pass.step().word() + " has no temperature, so what it destroys is unknown")
              .helping(
                  "add a line like: "
                      + pass.step().word()
                      + " temperature 80 °C, with the figure of your machine"));
    }
  }

  /** What is aimed at and never taken: one of the two figures is wrong, and nobody knows which. */
  private void aimAccepted(Pass pass) {
    for (Setting setting : pass.settings()) {
      if (setting.accept().isPresent() && setting.written().accept().isPresent()) {
        Setting.Band taken = setting.accept().get();
        if (Closeness.isBelow(setting.high(), taken.low())
            || Closeness.isAbove(setting.low(), taken.high())) {
          sound = false;
          findings.add(
              Finding.error(
                      AIM_NOT_ACCEPTED,
                      setting.written().target().span(),
                      pass.word()
                          + " "
                          + setting.property().word()
                          + " aims at "
                          + setting.written().target().asWritten()
                          + ", and takes "
                          + setting.written().accept().get().asWritten())
                  .helping("fix one of the two, so that the aim lies within what is taken"));
        }
      }
    }
  }

  private static Setting setting(ProcessLine line) {
    Optional<Setting.Band> accept =
        line.accept().isPresent() ? Optional.of(band(line.accept().get())) : Optional.empty();
    Optional<String> ingredient =
        line.ingredient().isPresent()
            ? Optional.of(line.ingredient().get().text())
            : Optional.empty();
    Setting.Band aim =
        line.target()
            .byKind(
                exactly -> exactly(exactly.amount().base()),
                between -> band(between.range()),
                manner -> exactly(0));
    String manner = line.target().byKind(exactly -> "", between -> "", word -> word.asWritten());
    return new Setting(line.property(), ingredient, aim.low(), aim.high(), accept, manner, line);
  }

  private static Setting.Band exactly(double base) {
    return new Setting.Band(base, base);
  }

  private static Setting.Band band(Range range) {
    return new Setting.Band(range.lowBase(), range.highBase());
  }
}
