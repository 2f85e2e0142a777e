package dev.pellucid.engine.records;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Rebalanced;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Lot;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a batch is ordered by: its recipe, or the recipe with the shares that the record of the
 * batch gives in their place, as if they stood in its text.
 */
final class RebalancedOrder {
  static final Code NO_GROUND = new Code("rebalanced-without-lots");
  static final Code NOT_DECIDED = new Code("rebalanced-not-decided");

  private final FeedTables tables;
  private final FeedComputer computer;
  private final Reshared reshared;

  RebalancedOrder(FeedTables tables, FeedComputer computer, Reshared reshared) {
    this.tables = tables;
    this.computer = computer;
    this.reshared = reshared;
  }

  /** Every code that it can give. */
  static List<Code> codes() {
    return List.of(RebalancedShares.OFF_RECIPE, RebalancedShares.TOTAL_OFF, NO_GROUND, NOT_DECIDED);
  }

  /**
   * What came of it.
   *
   * @param feed by which the batch is ordered; that of the recipe where its own shares cannot be
   *     taken
   * @param usable whether the shares of the record could be taken, or it tells none
   */
  record Ordered(ComputedFeed feed, boolean usable, List<Finding> findings) {
    Ordered {
      findings = List.copyOf(findings);
    }
  }

  Ordered of(ComputedFeed planned, BatchRecord record) {
    if (record.rebalanced().isEmpty()) {
      return new Ordered(planned, true, List.of());
    }
    RebalancedShares shares = new RebalancedShares(planned.recipe(), record);
    List<Finding> findings = new ArrayList<>(shares.findings());
    Optional<ComputedFeed> feed =
        findings.isEmpty() ? feed(planned.recipe(), record, shares, findings) : Optional.empty();
    decided(record, record.rebalanced().get(), findings);
    return new Ordered(feed.orElse(planned), feed.isPresent(), findings);
  }

  /** A premix is made as its file says. */
  static Optional<Finding> ofPremix(BatchRecord record) {
    return record
        .rebalanced()
        .map(
            told ->
                Finding.error(
                        RebalancedShares.OFF_RECIPE,
                        told.signed().place(),
                        record.code() + " is a premix, and premixes are made as their file says")
                    .helping("take rebalanced out, and have the premix changed"));
  }

  private Optional<ComputedFeed> feed(
      ResolvedRecipe recipe, BatchRecord record, RebalancedShares shares, List<Finding> out) {
    Optional<ResolvedRecipe> anew = reshared.with(recipe, shares.edits());
    Optional<ComputedFeed> feed = anew.flatMap(one -> computer.compute(one).feed());
    if (feed.isEmpty()) {
      out.add(
          Finding.error(
                  RebalancedShares.TOTAL_OFF,
                  record.rebalanced().orElseThrow().shares().get(0).name(),
                  anew.isEmpty()
                      ? "with overage for stability the shares of this batch make no recipe"
                      : "the process cannot make a feed of the shares of this batch")
              .helping(
                  "mvn pellucid:rebalance -Dpellucid.batch=" + record.number() + " finds some"));
    }
    return feed;
  }

  private void decided(BatchRecord record, Rebalanced told, List<Finding> out) {
    if (measured(record).isEmpty()) {
      out.add(
          Finding.error(
                  NO_GROUND,
                  told.signed().place(),
                  "this batch is re-balanced, and no lot that it names was measured")
              .helping(
                  "name the lots that it is re-balanced for under weighed, and write what was"
                      + " measured of them under lots/")
              .helping("or take rebalanced out: then the shares of the recipe count"));
    }
    if (record.isMade() && told.signed().day().isAfter(last(record))) {
      out.add(
          Finding.error(
                  NOT_DECIDED,
                  told.signed().place(),
                  "the shares of this batch are of "
                      + told.signed().day()
                      + ", and it was made on "
                      + record.day())
              .helping("shares are given before anything is weighed: if it is a slip, fix the day")
              .helping(
                  "else take rebalanced out, write under deviations what went otherwise, and have"
                      + " it decided"));
    } else if (told.signed().by().isEmpty()) {
      out.add(unsigned(record, told));
    }
  }

  /**
   * On which its shares could be given: a batch is made in the night after its day at the latest.
   */
  private static LocalDate last(BatchRecord record) {
    LocalDate night = record.day().plusDays(1);
    return record
        .release()
        .flatMap(BatchRecord.Release::day)
        .filter(day -> day.isBefore(night))
        .orElse(night);
  }

  private static Finding unsigned(BatchRecord record, Rebalanced told) {
    return record.isMade()
        ? Finding.error(
                NOT_DECIDED,
                told.signed().place(),
                "this batch was made by shares of its own that nobody answers for")
            .helping("write behind by who answers for them, as it stands on the signed sheet")
        : Finding.note(
                NOT_DECIDED,
                told.signed().place(),
                "nobody answers for the shares of this batch yet, so its sheet is a draft")
            .helping("write behind by who answers for them");
  }

  /** Lots of a record of which anything was measured, through batches of premixes too. */
  List<String> measured(BatchRecord record) {
    List<String> lots = new ArrayList<>();
    for (BatchRecord.Entry entry : record.entries()) {
      Lot lot = tables.lots().get(entry.lot());
      BatchRecord premix = tables.batches().get(entry.lot());
      boolean counts =
          lot != null
              ? !lot.measured().isEmpty()
              : premix != null && isBefore(premix, record) && !measured(premix).isEmpty();
      if (counts && !lots.contains(entry.lot())) {
        lots.add(entry.lot());
      }
    }
    return lots;
  }

  /** A record that names itself, or a later one, is told of elsewhere, and has no end. */
  private static boolean isBefore(BatchRecord one, BatchRecord other) {
    return one.day().isBefore(other.day())
        || one.day().equals(other.day()) && one.number().compareTo(other.number()) < 0;
  }
}
