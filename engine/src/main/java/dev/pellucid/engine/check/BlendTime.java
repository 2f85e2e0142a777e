package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Mixer;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.engine.weighing.Loads;
import dev.pellucid.engine.weighing.WeighingPlan;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.measure.Closeness;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import java.util.Optional;

/**
 * A mix that is not blended as long as the mixer needs in which the plant makes it, or far longer.
 * A mixer that does not tell its time, and one that the batch does not fill, is left to the bound
 * of practice.
 */
final class BlendTime implements Rule {
  private static final Code CODE = new Code("blend-time");

  /** Below this part of what the mixer needs, nothing is mixed yet. */
  private static final double FAR = 1.0 / 3;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    if (!recipe.recipe().process().has(Step.BLEND)) {
      return;
    }
    Optional<Mixer> mixer = mixer(recipe);
    if (mixer.isEmpty() || mixer.get().time().isEmpty() || isOfAnotherBatch(recipe)) {
      return;
    }
    for (Pass pass : recipe.recipe().process().inOrder()) {
      Optional<Setting> time =
          pass.step() == Step.BLEND ? pass.setting(Property.TIME) : Optional.empty();
      if (time.isPresent()) {
        look(time.get(), mixer.get(), mixer.get().time().get(), out);
      }
    }
  }

  /** Where the batch or its water cannot be meant, it is another mixer than meant too. */
  private static boolean isOfAnotherBatch(RuleContext recipe) {
    return BatchTakesLong.isSaid(recipe)
        || ProcessBounds.of(recipe).isOutside(Step.ADD_WATER, Property.ON_MIX);
  }

  /** The mixer that the batch is made in, where it tells its time. */
  static Optional<Mixer> mixer(RuleContext recipe) {
    Optional<WeighingPlan> plan = recipe.floor().plan();
    Optional<Loads> loads = plan.isPresent() ? plan.get().loads() : Optional.empty();
    return loads.isPresent() && loads.get().fills() && loads.get().mixer().time().isPresent()
        ? Optional.of(loads.get().mixer())
        : Optional.empty();
  }

  private static void look(Setting time, Mixer mixer, Mixer.Time needed, Remarks out) {
    boolean over = Closeness.isAbove(time.most(), needed.most());
    if (over || Closeness.isBelow(time.least(), needed.least())) {
      boolean far = !over && Closeness.isBelow(time.least(), needed.least() * FAR);
      out.accept(
          Finding.of(
                  CODE,
                  far ? Severity.ERROR : Severity.WARNING,
                  time.span(),
                  "blend time is "
                      + time.asWritten()
                      + ", the "
                      + mixer.title()
                      + " mixes in "
                      + needed.asWritten())
              .seeing("time of the mixer", needed.place())
              .helping(
                  over
                      ? "blend shorter: what is even may part again, and the batch waits for nothing"
                      : "blend longer, or test how even the mix is by then and mend the time in"
                          + " plant/"));
    }
  }
}
