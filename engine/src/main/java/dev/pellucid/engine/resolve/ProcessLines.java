package dev.pellucid.engine.resolve;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.ProcessLine;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Range;
import dev.pellucid.syntax.Step;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The lines of {@code process} to passes: neighbours with one step word are one pass. */
final class ProcessLines {
  static final Code NO_TEMPERATURE = new Code("temperature-missing");

  private ProcessLines() {}

  static Passes passes(List<ProcessLine> lines, List<Finding> findings) {
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
    passes.forEach(pass -> needTemperature(pass, findings));
    return new Passes(passes);
  }

  private static Pass pass(List<ProcessLine> lines) {
    Span span = lines.get(0).stepAsWritten().span().through(lines.get(lines.size() - 1).span());
    return new Pass(lines.get(0).step(), lines.stream().map(ProcessLines::setting).toList(), span);
  }

  private static void needTemperature(Pass pass, List<Finding> findings) {
    boolean heats =
        pass.step() == Step.CONDITION || pass.step() == Step.PELLET || pass.step() == Step.EXTRUDE;
    if (heats && pass.setting(Property.TEMPERATURE).isEmpty()) {
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

  private static Setting setting(ProcessLine line) {
    Optional<Setting.Band> accept = line.accept().map(ProcessLines::band);
    Optional<String> ingredient = line.ingredient().map(word -> word.text());
    ProcessLine.Target target = line.target();
    if (target instanceof ProcessLine.Target.Exactly exactly) {
      double figure = exactly.amount().base();
      return new Setting(line.property(), ingredient, figure, figure, accept, "", line);
    }
    if (target instanceof ProcessLine.Target.Between between) {
      Setting.Band band = band(between.range());
      return new Setting(line.property(), ingredient, band.low(), band.high(), accept, "", line);
    }
    return new Setting(line.property(), ingredient, 0, 0, accept, target.asWritten(), line);
  }

  private static Setting.Band band(Range range) {
    return new Setting.Band(range.lowBase(), range.highBase());
  }
}
