package dev.pellucid.engine.check;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.resolve.MaterialMaxima;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** What rules say of premixes, profiles and plants themselves, whatever recipes are there. */
public final class SharedRules {
  private SharedRules() {}

  /** All that is said of them, in their order. */
  public static List<Finding> findings(
      Collection<ResolvedPremix> premixes,
      Collection<Profile> profiles,
      MaterialMaxima maxima,
      FeedTables tables,
      LocalDate day) {
    List<Finding> findings = new ArrayList<>();
    MaterialAboveMaximum.look(tables, maxima, findings::add);
    SubstanceNotTold.look(tables, maxima, findings::add);
    AuthorisationEnded.look(tables, profiles, day, findings::add);
    PricesNotYet.look(tables, day, findings::add);
    MixerUneven.look(tables, findings::add);
    MadeAtNoPlant.look(tables, findings::add);
    for (ResolvedPremix premix : premixes) {
      PremixNotDry.look(premix, findings::add);
      ProcessOutsidePractice.look(
          new ProcessBounds(tables.practice(), premix.process(), true), findings::add);
      BagNotAtPlant.look(premix.process(), premix.plant(), findings::add);
    }
    for (Profile profile : profiles) {
      FishBeyondSpecies.look(profile, tables, findings::add);
    }
    return findings;
  }

  /** Whether it says that an ingredient is over what its kind of material may hold. */
  public static boolean isOverMaximum(Finding finding) {
    return finding.code().equals(MaterialAboveMaximum.CODE);
  }

  /** The codes that no rule of recipes has. */
  static List<Code> codes() {
    return List.of(
        MixerUneven.CODE,
        MadeAtNoPlant.CODE,
        PremixNotDry.CODE,
        MaterialAboveMaximum.CODE,
        AuthorisationEnded.CODE,
        PricesNotYet.CODE,
        SubstanceNotTold.CODE);
  }
}
