package dev.pellucid.engine.goal;

import dev.pellucid.engine.check.SmallestChange.Step;
import dev.pellucid.engine.data.BatchRecord;
import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.engine.data.BatchRecord.NewShare;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.quantity.Share;
import dev.pellucid.engine.rebalance.Balancing;
import dev.pellucid.engine.rebalance.Rebalancing;
import dev.pellucid.engine.rebalance.Rebalancing.LimitMove;
import dev.pellucid.engine.rebalance.RecordEdit;
import dev.pellucid.engine.rebalance.RecordEdit.Named;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import dev.pellucid.engine.workspace.Summary;
import dev.pellucid.engine.workspace.Whole;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.ToBeGiven;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What was found as an edit of the record, and its proof: the folder is read and checked with the
 * edit as if it stood there. What check would then say of the record that it does not say now, or
 * anything of the record that would be lost, and nothing is offered.
 */
final class RebalanceEdit {
  private final Texts texts;
  private final LocalDate day;
  private final BatchRecord record;
  private final List<Named> lots;

  /**
   * @param lots to be named beside the shares
   */
  RebalanceEdit(Texts texts, LocalDate day, BatchRecord record, List<Named> lots) {
    this.texts = texts;
    this.day = day;
    this.record = record;
    this.lots = lots;
  }

  /**
   * What may be offered.
   *
   * @param block the lines to be added by hand, or by this program
   * @param text of the whole record with them; empty where they are to be added by hand
   */
  record Edited(Rebalancing told, List<String> block, Optional<String> text) {}

  Edited of(Balancing.Found found, List<Finding> before) {
    boolean back = found.told().standing() == Rebalancing.Standing.RECIPE_KEEPS;
    if (!found.told().isMoved() && !back) {
      return new Edited(found.told(), List.of(), Optional.empty());
    }
    List<String> block = back ? List.of() : block(found);
    Optional<String> text = RecordEdit.of(record, block, back ? List.of() : lots);
    Optional<Shared> after = text.map(this::read).filter(it -> isWhole(it, found, back));
    if (after.isEmpty()) {
      return new Edited(found.told(), byHand(block), Optional.empty());
    }
    Optional<String> against = against(after.get(), before);
    return against.isPresent()
        ? new Edited(notProven(found.told(), against.get()), List.of(), Optional.empty())
        : new Edited(found.told(), byHand(block), text);
  }

  private Shared read(String text) {
    String path = record.declared().file().path();
    return Shared.of(ReadFolder.of(texts.over(Map.of(path, text))), Days.on(day));
  }

  /** The lines of the block, and of the lots that go with it. */
  private List<String> byHand(List<String> block) {
    List<String> all = new ArrayList<>(block);
    if (!block.isEmpty() && !lots.isEmpty()) {
      all.add("weighed:");
      lots.forEach(one -> all.add("  - {line: " + one.line() + ", lot: " + one.lot() + "}"));
    }
    return all;
  }

  private List<String> block(Balancing.Found found) {
    List<String> block = new ArrayList<>();
    block.add("rebalanced:");
    block.add("  day: " + day);
    block.add("  by: " + ToBeGiven.MARK);
    block.add("  because: \"" + because(found.told()) + "\"");
    block.add("  shares:");
    for (Step step : moved(found)) {
      block.add(
          "    - {line: "
              + step.line().material().name()
              + ", share: "
              + share(step, found.decimals()).toPlainString()
              + " %}");
    }
    return block;
  }

  private static List<Step> moved(Balancing.Found found) {
    return found.steps().stream().filter(step -> !step.line().rest()).toList();
  }

  private static BigDecimal share(Step step, int decimals) {
    BigDecimal share = step.line().designed().percent().add(step.points());
    return share.setScale(
        Math.max(decimals, Math.max(0, share.stripTrailingZeros().scale())),
        RoundingMode.UNNECESSARY);
  }

  /** {@code with its lots, crude-protein was 33.6 % where min 34 % is asked}. */
  private static String because(Rebalancing told) {
    List<String> words = new ArrayList<>();
    for (LimitMove one : told.limits()) {
      if (one.missed()) {
        words.add(
            one.lots().subject()
                + " was "
                + Figures.plainBeside(one.lots().judged(), one.lots().bound())
                + one.lots().unit().written()
                + " where "
                + one.lots().demand().askedNow()
                + " is asked");
      }
    }
    Set<String> numbers = new TreeSet<>();
    told.lots().forEach(lot -> numbers.add(lot.number()));
    String text =
        (numbers.size() == 1 ? "with lot " : "with lots ")
            + String.join(", ", numbers)
            + " "
            + String.join(", and ", words);
    return text.replace("\\", "\\\\").replace("\"", "\\\"");
  }

  /** Whether the record that is read back is the old one with what was added, and no more. */
  private boolean isWhole(Shared after, Balancing.Found found, boolean back) {
    BatchRecord anew = after.tables().batches().get(record.number());
    if (anew == null || anew.kg() != record.kg()) {
      return false;
    }
    List<String> wanted = new ArrayList<>();
    record.entries().stream()
        .filter(one -> !(one.written().isEmpty() && isNamed(one)))
        .forEach(one -> wanted.add(words(one)));
    if (!back) {
      lots.forEach(one -> wanted.add(one.line() + " " + one.lot()));
    }
    List<String> there =
        new ArrayList<>(anew.entries().stream().map(RebalanceEdit::words).toList());
    wanted.sort(String::compareTo);
    there.sort(String::compareTo);
    return wanted.equals(there)
        && anew.deviations().equals(record.deviations())
        && (back ? anew.rebalanced().isEmpty() : shares(anew).equals(shares(found)));
  }

  private boolean isNamed(Entry entry) {
    return lots.stream().anyMatch(one -> one.line().equals(entry.line()));
  }

  private static String words(Entry entry) {
    return (entry.line() + " " + entry.written()).strip();
  }

  private static List<String> shares(BatchRecord anew) {
    List<String> shares = new ArrayList<>();
    for (NewShare one : anew.rebalanced().map(it -> it.shares()).orElse(List.of())) {
      BigDecimal percent =
          BigDecimal.valueOf(one.share()).movePointRight(2).round(new MathContext(12));
      shares.add(one.line() + " " + new Share(percent));
    }
    return shares;
  }

  private static List<String> shares(Balancing.Found found) {
    return moved(found).stream()
        .map(
            step ->
                step.line().material().name()
                    + " "
                    + new Share(step.line().designed().percent().add(step.points())))
        .toList();
  }

  /** What check says of the record then and not now. */
  private Optional<String> against(Shared after, List<Finding> before) {
    Set<String> said = new HashSet<>();
    before.forEach(one -> said.add(words(one)));
    for (Finding one : Whole.of(after, Streamed.check(after, Summary::of)).findings()) {
      boolean counts = one.severity() == Severity.ERROR || !said.contains(words(one));
      if (one.severity() != Severity.NOTE && counts && isOfRecord(one)) {
        return Optional.of(one.headline());
      }
    }
    return Optional.empty();
  }

  private boolean isOfRecord(Finding finding) {
    return finding.span().file().path().equals(record.declared().file().path());
  }

  private static String words(Finding finding) {
    return finding.code() + " " + finding.headline();
  }

  private static Rebalancing notProven(Rebalancing told, String against) {
    return new Rebalancing(
        told.number(),
        told.code(),
        Rebalancing.Standing.NOT_PROVEN,
        "with other shares check would say: " + against,
        told.lots(),
        List.of(),
        told.limits().stream()
            .map(one -> new LimitMove(one.recipe(), one.lots(), Optional.empty(), one.missed()))
            .toList(),
        told.others(),
        told.causes(),
        Optional.empty(),
        List.of(),
        List.of(),
        List.of());
  }
}
