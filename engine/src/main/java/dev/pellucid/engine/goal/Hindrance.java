package dev.pellucid.engine.goal;

import dev.pellucid.engine.check.Remark;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.check.Rules;
import dev.pellucid.engine.leastcost.Wishes;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.DependsOn;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What must be put right before least cost may be asked of a recipe, in one sentence with its place
 * and its remedy. A limit that is broken is none: to keep it again is what it is asked for.
 */
final class Hindrance {
  private static final double WHOLE = 100;
  private static final double CLOSE = 1e-6;

  private final Shared shared;
  private final LocalDate day;
  private final Wishes wishes;

  Hindrance(Shared shared, LocalDate day, Wishes wishes) {
    this.shared = shared;
    this.day = day;
    this.wishes = wishes;
  }

  /** Empty where it may be asked. */
  Optional<String> of(Checked checked) {
    return ofText(checked).or(() -> of(checked.recipe().orElseThrow()));
  }

  /** The same of what is asked without prices. */
  Optional<String> ofText(Checked checked) {
    return slip(checked.findings()).or(() -> inData(checked)).or(() -> uncomputed(checked));
  }

  private Optional<String> of(RuleContext recipe) {
    return unpriced(recipe).or(() -> beyondWhole(recipe));
  }

  private static Optional<String> slip(List<Finding> findings) {
    for (Finding finding : findings) {
      if (finding.severity() == Severity.ERROR) {
        return Optional.of(placed(finding));
      }
    }
    return Optional.empty();
  }

  static String placed(Finding finding) {
    String help = finding.helps().isEmpty() ? "" : "; " + finding.helps().get(0);
    return finding.span().place() + ": " + finding.headline() + help;
  }

  /** An error of a file that it hangs on. */
  private Optional<String> inData(Checked checked) {
    DependsOn hangs = shared.dependsOn(checked.path(), checked.reads());
    for (Finding finding : shared.findings()) {
      if (finding.severity() == Severity.ERROR && hangs.on(finding.span().file().path())) {
        return Optional.of("check must be clean of this first: " + placed(finding));
      }
    }
    return Optional.empty();
  }

  private static Optional<String> uncomputed(Checked checked) {
    if (checked.feed().isPresent()) {
      return Optional.empty();
    }
    if (checked.recipe().isPresent()) {
      List<Finding> said = new ArrayList<>();
      for (Remark remark : Rules.remarks(checked.recipe().get())) {
        said.add(remark.finding());
      }
      Optional<String> first = slip(said);
      if (first.isPresent()) {
        return first;
      }
    }
    return Optional.of("it has no figures; fix what the goal check says first");
  }

  private Optional<String> unpriced(RuleContext recipe) {
    for (String name : recipe.feed().orElseThrow().unpriced()) {
      return Optional.of(
          place(recipe, name)
              + name
              + " has no price on "
              + day
              + ", and would be taken as if it were free; write it into a file of prices/");
    }
    for (String name : wishes.tried()) {
      if (recipe.tables().price(name, day).isEmpty()) {
        return Optional.of(
            name + " has no price on " + day + "; write it into a file of prices/ to try it");
      }
    }
    return Optional.empty();
  }

  /** Of the line that it comes in; empty where none is found. */
  private static String place(RuleContext recipe, String ingredient) {
    for (Line line : recipe.recipe().lines()) {
      if (line.material().ingredients().stream().anyMatch(one -> one.name().equals(ingredient))) {
        return line.name().place() + ": ";
      }
    }
    return "";
  }

  /**
   * Bounds of lines between which all together are never the whole. Where something is to be left
   * out, that is what stands in the way, and the answer itself says so.
   */
  private Optional<String> beyondWhole(RuleContext recipe) {
    if (!wishes.without().isEmpty()) {
      return Optional.empty();
    }
    double low = 0;
    double high = 0;
    for (Line line : recipe.recipe().lines()) {
      double now = line.designed().kgPer100();
      if (isFree(line)) {
        low += line.within().map(it -> it.low() * WHOLE).orElse(0.0);
        high += line.within().map(it -> it.high() * WHOLE).orElse(WHOLE);
      } else {
        low += now;
        high += now;
      }
    }
    boolean never = low > WHOLE + CLOSE || (high < WHOLE - CLOSE && wishes.tried().isEmpty());
    return never
        ? Optional.of(
            "check must be clean of this first: its lines can be "
                + Figures.fixed(low, 2)
                + " to "
                + Figures.fixed(high, 2)
                + " % together, and never 100 %; widen a within")
        : Optional.empty();
  }

  private boolean isFree(Line line) {
    String name = line.material().name();
    boolean told =
        line.rest()
            || line.within().isPresent()
            || wishes.freed().contains(name)
            || wishes.without().contains(name);
    return told && line.material().single().isPresent();
  }
}
