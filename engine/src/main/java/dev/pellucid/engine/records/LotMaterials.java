package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.quantity.Share;
import dev.pellucid.engine.records.MadeBatch.Used;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedPremix;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Materials as the lots of a batch are: measured, or made here and recorded. */
final class LotMaterials {
  private static final int DEEPEST = 8;

  private final FeedTables tables;
  private final Map<String, ResolvedPremix> premixes;

  LotMaterials(FeedTables tables, Map<String, ResolvedPremix> premixes) {
    this.tables = tables;
    this.premixes = premixes;
  }

  /**
   * Of several lots for one line an equal part each, as long as nothing is weighed.
   *
   * @param named entries of one line
   * @param species that is fed
   */
  Material together(Material material, List<Entry> named, Optional<Species> species) {
    double part = 1.0 / named.size();
    return material.byKind(
        single ->
            new Material.Single(
                Blend.of(
                    species,
                    named.stream().map(entry -> ofLot(single, entry.lot()).ingredient()).toList(),
                    named.stream().map(entry -> part).toList()),
                single.price()),
        premixed -> ofBatches(premixed, named),
        reworked -> reworked);
  }

  /** A premix of the parts of several batches of it. */
  private Material ofBatches(Material.Premixed premixed, List<Entry> named) {
    Share part = Share.ratio(BigDecimal.ONE, BigDecimal.valueOf(named.size()));
    List<ResolvedPremix.Part> parts = new ArrayList<>();
    for (Entry entry : named) {
      for (ResolvedPremix.Part one : ofBatch(premixed, entry.lot(), 0).parts()) {
        parts.add(
            new ResolvedPremix.Part(
                one.material(),
                part.of(one.designed()),
                part.of(one.share()),
                part.of(one.onTop()),
                one.name()));
      }
    }
    return named.size() == 1
        ? ofBatch(premixed, named.get(0).lot(), 0)
        : new Material.Premixed(premixed.premix().asMade(parts));
  }

  /** Of what was weighed, or is to be. */
  Material of(Used used) {
    return material(used, 0);
  }

  private Material material(Used used, int depth) {
    String lot = used.entry().lot();
    return used.ask()
        .material()
        .byKind(
            single -> ofLot(single, lot),
            premixed -> ofBatch(premixed, lot, depth),
            reworked -> reworked);
  }

  private Material.Single ofLot(Material.Single single, String number) {
    Lot lot = tables.lots().get(number);
    return lot == null || !lot.ingredient().equals(single.name())
        ? single
        : new Material.Single(
            LotContents.of(single.ingredient(), lot, tables.nutrients()).ingredient(),
            single.price());
  }

  private Material ofBatch(Material.Premixed premixed, String lot, int depth) {
    BatchRecord batch = tables.batches().get(lot);
    ResolvedPremix premix = premixed.premix();
    return batch == null || !batch.code().equals(premix.code()) || depth > DEEPEST
        ? premixed
        : new Material.Premixed(premix(premix, batch, depth));
  }

  private ResolvedPremix premix(ResolvedPremix premix, BatchRecord batch, int depth) {
    ResolvedPremix planned = premixes.getOrDefault(premix.code(), premix);
    List<Used> used = MadeBatch.used(batch, BatchTarget.of(planned, batch.kg()));
    double all = used.stream().mapToDouble(Used::kg).sum();
    if (all <= 0) {
      return premix;
    }
    List<ResolvedPremix.Part> parts = new ArrayList<>();
    for (Used one : used) {
      Share share = Share.ratio(BigDecimal.valueOf(one.kg()), BigDecimal.valueOf(all));
      parts.add(
          new ResolvedPremix.Part(
              material(one, depth + 1), share, share, Share.ZERO, one.entry().name()));
    }
    return premix.asMade(parts);
  }
}
