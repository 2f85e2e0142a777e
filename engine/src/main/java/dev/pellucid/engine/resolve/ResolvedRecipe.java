package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.data.Species;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Amount;
import dev.pellucid.syntax.Numeral;
import dev.pellucid.syntax.Range;
import dev.pellucid.syntax.Word;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A recipe with every name turned into its thing. Its lines add up to 100 %.
 *
 * @param status {@code draft}, {@code approved} or {@code retired}; {@code draft} where none is
 *     told
 * @param reviewed who looked at the figures that it rests on, and when; empty where nobody is told
 * @param plant where it is made; empty where neither the recipe nor the folder names one
 * @param profiles what it meets, the law of the jurisdiction included
 * @param limits each side of each limit once, the tighter where several ask the same
 */
public record ResolvedRecipe(
    SourceFile source,
    String code,
    String title,
    String status,
    Optional<Reviewed> reviewed,
    Optional<Species> species,
    Optional<Range> fish,
    Optional<Word> habit,
    Optional<BatchSize> batch,
    Optional<Plant> plant,
    List<Line> lines,
    Passes process,
    List<Met> profiles,
    List<Limit> limits,
    Optional<Label> label,
    Span declared) {
  public ResolvedRecipe {
    lines = List.copyOf(lines);
    profiles = List.copyOf(profiles);
    limits = List.copyOf(limits);
  }

  /**
   * A profile and where the recipe asks for it.
   *
   * @param asked the name behind {@code meets}; empty for law, which comes without being asked
   */
  public record Met(Profile profile, Optional<Span> asked) {}

  /** {@code reviewed by "A. Marsh" on 2026-11-20}. */
  public record Reviewed(String by, LocalDate on) {
    /** {@code A. Marsh, 2026-11-20}. */
    public String words() {
      return by + ", " + on;
    }
  }

  /** {@code batch 60 kg weighed}; kg. */
  public record BatchSize(double kg, BatchBasis basis, Amount written) {
    /** Of a batch whose size is not told by its recipe. */
    static BatchSize weighed(double kg, Span place) {
      String figure = BigDecimal.valueOf(kg).stripTrailingZeros().toPlainString();
      Amount written =
          new Amount(new Numeral(figure, place), Unit.KG, new Word(Unit.KG.symbol(), place), place);
      return new BatchSize(kg, BatchBasis.WEIGHED, written);
    }
  }

  /** What the size of a batch counts. */
  public enum BatchBasis {
    /** Everything weighed, before overage and water. */
    WEIGHED,
    /** What is in the bags. */
    FINISHED
  }

  /** The same recipe with the lines and the process of one batch as it was made. */
  public ResolvedRecipe asMade(List<Line> made, Passes passes) {
    return new ResolvedRecipe(
        source, code, title, status, reviewed, species, fish, habit, batch, plant, made, passes,
        profiles, limits, label, declared);
  }

  /** The same recipe as a batch of so many kg weighed, whatever size it tells itself. */
  public ResolvedRecipe inBatchOf(double kg) {
    return new ResolvedRecipe(
        source,
        code,
        title,
        status,
        reviewed,
        species,
        fish,
        habit,
        Optional.of(BatchSize.weighed(kg, batch.map(one -> one.written().span()).orElse(declared))),
        plant,
        lines,
        process,
        profiles,
        limits,
        label,
        declared);
  }

  /**
   * The same with the shares of another reading of its text, which has the same lines; what is told
   * of a line stays where it stands in this one.
   */
  public ResolvedRecipe withSharesOf(ResolvedRecipe other) {
    List<Line> anew = new ArrayList<>(lines.size());
    for (Line line : lines) {
      anew.add(line.withSharesOf(other.lines().get(line.index())));
    }
    return asMade(anew, process);
  }

  /** The same of its other lines alone, in their proportion. */
  public ResolvedRecipe withoutRework() {
    List<Line> others = new ArrayList<>();
    for (Line line : lines) {
      if (line.material().reworked().isEmpty()) {
        others.add(line);
      }
    }
    if (others.size() == lines.size()) {
      return this;
    }
    BigDecimal whole =
        others.stream()
            .map(line -> line.share().percent())
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    List<Line> scaled = new ArrayList<>();
    for (Line line : others) {
      scaled.add(line.scaled(scaled.size(), whole));
    }
    return asMade(scaled, process);
  }

  /** The same recipe as if none of its limits were waived. */
  public ResolvedRecipe withoutWaivers() {
    return new ResolvedRecipe(
        source,
        code,
        title,
        status,
        reviewed,
        species,
        fish,
        habit,
        batch,
        plant,
        lines,
        process,
        profiles,
        limits.stream().map(Limit::withoutWaiver).toList(),
        label,
        declared);
  }

  /** Whether it may be made and fed as it is written. */
  public boolean isApproved() {
    return status.equals("approved");
  }

  /** The lines of which there is some: one may stand at zero, to be taken up again later. */
  public List<Line> taken() {
    int some = 0;
    for (Line line : lines) {
      some += line.isTaken() ? 1 : 0;
    }
    if (some == lines.size()) {
      return lines;
    }
    List<Line> taken = new ArrayList<>(some);
    for (Line line : lines) {
      if (line.isTaken()) {
        taken.add(line);
      }
    }
    return taken;
  }

  /** The line that takes what the others leave. */
  public Optional<Line> rest() {
    for (Line line : lines) {
      if (line.rest()) {
        return Optional.of(line);
      }
    }
    return Optional.empty();
  }
}
