package dev.pellucid.engine.resolve;

import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Bound;
import dev.pellucid.syntax.FeedFile.ProfileFile;
import dev.pellucid.syntax.Word;
import java.util.List;
import java.util.Optional;

/**
 * What a profile of raw materials cannot ask: a lot on the floor has no species, no share and no
 * batches, only what it holds. What it asks all the same would never be looked at.
 */
final class MaterialsHead {
  static final Code UNFIT = new Code("materials-limit");

  private final ProfileFile file;
  private final List<Word> materials;
  private final List<Word> species;
  private final List<Finding> findings;

  MaterialsHead(
      ProfileFile file, List<Word> materials, List<Word> species, List<Finding> findings) {
    this.file = file;
    this.materials = materials;
    this.species = species;
    this.findings = findings;
  }

  /**
   * @param kind empty where the head says none
   * @param limits all that could be read
   */
  void look(Optional<Limit.Kind> kind, List<Limit> limits) {
    String name = file.source().stem();
    if (!species.isEmpty()) {
      findings.add(
          said(
                  Finding.error(
                      UNFIT,
                      species.get(0).span(),
                      name
                          + " names both species and materials; a profile is for feeds or for raw materials"),
                  "species")
              .seeing("materials named", materials.get(0).span())
              .helping("take the line out, or keep what is asked of feeds in a file of its own"));
    }
    if (kind.isEmpty() || kind.get() == Limit.Kind.NEED) {
      findings.add(
          said(
                  Finding.error(
                      UNFIT,
                      materials.get(0).span(),
                      name
                          + " bounds raw materials, and "
                          + (kind.isEmpty()
                              ? "does not say its kind"
                              : "a need is for feeds only")),
                  "kind")
              .helping("write in the head: kind law, kind guidance or kind practice"));
    }
    for (Limit limit : limits) {
      unfit(limit);
    }
  }

  private void unfit(Limit limit) {
    if (limit.side() != Bound.Side.MAX || limit.subject().addends().isEmpty()) {
      findings.add(
          said(
                  Finding.error(
                      UNFIT,
                      limit.origin().span(),
                      limit.demand().line() + " is no maximum of what a raw material holds"),
                  limit.subject().text())
              .helping("write the most that it may hold: mercury max 0.5 mg/kg at 12 % moisture"));
    } else if (limit.inBatches().isPresent()) {
      findings.add(
          said(
                  Finding.error(
                      UNFIT,
                      limit.origin().span(),
                      "each lot is held to "
                          + limit.demand().about()
                          + " by itself, not in a part of batches"),
                  limit.subject().text())
              .helping("take out the words: in ... of batches"));
    }
  }

  private static Finding said(Finding finding, String what) {
    return finding.about(new About(what, About.Side.NONE, List.of()));
  }
}
