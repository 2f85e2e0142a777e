package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Mixer;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.ResolvedRecipe.BatchSize;
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
 * of practice. Where the time is right for another mixer of the plant, it is told of the batch.
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
        look(recipe, time.get(), mixer.get(), out);
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

  private static void look(RuleContext recipe, Setting time, Mixer mixer, Remarks out) {
    Mixer.Time needed = mixer.time().orElseThrow();
    if (takes(needed, time)) {
      return;
    }
    boolean far = Closeness.isBelow(time.least(), needed.least() * FAR);
    Optional<Mixer> other = far ? Optional.empty() : other(recipe, time);
    Optional<BatchSize> batch = recipe.recipe().batch();
    out.accept(
        other.isPresent() && batch.isPresent()
            ? ofBatch(batch.get(), time, mixer, other.get())
            : ofTime(time, mixer, far));
  }

  private static boolean takes(Mixer.Time needed, Setting time) {
    return Closeness.isAtLeast(time.least(), needed.least())
        && Closeness.isAtMost(time.most(), needed.most());
  }

  /** A mixer of the plant whose time it is; then the batch is rather of another size than meant. */
  private static Optional<Mixer> other(RuleContext recipe, Setting time) {
    if (recipe.recipe().plant().isPresent()) {
      for (Mixer mixer : recipe.recipe().plant().get().mixers()) {
        if (mixer.time().isPresent() && takes(mixer.time().get(), time)) {
          return Optional.of(mixer);
        }
      }
    }
    return Optional.empty();
  }

  private static Finding ofBatch(BatchSize batch, Setting time, Mixer mixer, Mixer other) {
    Mixer.Time needed = mixer.time().orElseThrow();
    return Finding.warning(
            CODE,
            batch.written().span(),
            batch.written().asWritten()
                + " goes into the "
                + mixer.title()
                + ", which mixes in "
                + needed.asWritten()
                + ", blend time is "
                + time.asWritten())
        .seeing("blend time written", time.span())
        .seeing("time of the mixer", needed.place())
        .helping(
            "make a batch for the "
                + other.title()
                + ", or blend as long as the "
                + mixer.title()
                + " needs");
  }

  private static Finding ofTime(Setting time, Mixer mixer, boolean far) {
    Mixer.Time needed = mixer.time().orElseThrow();
    return Finding.of(
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
            Closeness.isAbove(time.most(), needed.most())
                ? "blend shorter: what is even may part again, and the batch waits for nothing"
                : "blend longer, or test how even the mix is by then and fix the time in plant/");
  }
}
