package dev.pellucid.engine.check;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Mixer;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.engine.data.Practice.PracticeBound;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Closeness;
import dev.pellucid.measure.Unit;
import java.util.Optional;
import java.util.function.Consumer;

/** A mixer of a plant that left its mix too uneven in its own test, so its time is too short. */
final class MixerUneven {
  static final Code CODE = new Code("mixer-uneven");

  private MixerUneven() {}

  static void look(FeedTables tables, Consumer<Finding> out) {
    Optional<PracticeBound> bound = tables.practice().bound(BoundOf.MIXING_VARIATION);
    if (bound.isEmpty()) {
      return;
    }
    for (Plant plant : tables.plants().values()) {
      look(plant, bound.get(), out);
    }
  }

  private static void look(Plant plant, PracticeBound bound, Consumer<Finding> out) {
    for (Mixer mixer : plant.mixers()) {
      if (mixer.evenness().isPresent()
          && Closeness.isAbove(mixer.evenness().get().share(), bound.high())) {
        out.accept(finding(mixer, mixer.evenness().get(), bound));
      }
    }
  }

  private static Finding finding(Mixer mixer, Mixer.Evenness evenness, PracticeBound bound) {
    return Finding.warning(
            CODE,
            evenness.place(),
            "samples from the "
                + mixer.title()
                + " differ by "
                + Figures.plain(evenness.share(), Unit.PERCENT)
                + (evenness.day().isPresent() ? " in the test of " + evenness.day().get() : "")
                + ", practice is "
                + bound.asWritten())
        .seeing("source of the bound", bound.source().declared())
        .helping(
            "mix longer, look at the fill and the paddles, test again, then write the new time");
  }
}
