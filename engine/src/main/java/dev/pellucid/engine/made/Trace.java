package dev.pellucid.engine.made;

import dev.pellucid.engine.larder.BatchRecord;
import dev.pellucid.engine.larder.BatchRecord.Entry;
import dev.pellucid.engine.larder.Larder;
import dev.pellucid.engine.larder.Lot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which lots are in which batches, through premixes of any depth: one step back and one step on,
 * and all of them.
 *
 * @param steps in the order of the days of the batches, and as the record has them
 */
public record Trace(List<Step> steps) {
  public Trace {
    steps = List.copyOf(steps);
  }

  /**
   * A lot in a batch.
   *
   * @param lot the number of a lot of an ingredient
   * @param ingredient what it is a lot of
   * @param through the batches of premixes it came in, the outermost first
   * @param became what was decided of the batch, in a word; {@code planned} while nothing was
   *     weighed, {@code open} while nothing is decided
   */
  public record Step(
      String lot,
      String ingredient,
      String batch,
      LocalDate day,
      List<String> through,
      String became) {
    public Step {
      through = List.copyOf(through);
    }
  }

  /** The whole table. */
  public static Trace of(Larder larder) {
    List<Step> steps = new ArrayList<>();
    List<BatchRecord> records = new ArrayList<>(larder.batches().values());
    records.sort(java.util.Comparator.comparing(BatchRecord::day));
    records.forEach(record -> add(record, record, larder, List.of(), steps));
    return new Trace(new ArrayList<>(new LinkedHashSet<>(steps)));
  }

  private static void add(
      BatchRecord of, BatchRecord in, Larder larder, List<String> through, List<Step> steps) {
    for (Entry entry : in.entries()) {
      Lot lot = larder.lots().get(entry.lot());
      BatchRecord premix = larder.batches().get(entry.lot());
      if (lot != null) {
        steps.add(
            new Step(lot.number(), lot.ingredient(), of.number(), of.day(), through, became(of)));
      } else if (premix != null
          && !through.contains(premix.number())
          && !premix.number().equals(of.number())) {
        List<String> deeper = new ArrayList<>(through);
        deeper.add(premix.number());
        add(of, premix, larder, deeper, steps);
      }
    }
  }

  private static String became(BatchRecord record) {
    if (!record.isMade()) {
      return "planned";
    }
    return record
        .release()
        .map(it -> it.decision().name().toLowerCase(java.util.Locale.ROOT))
        .orElse("open");
  }

  /** The steps of one lot: the batches that hold it. */
  public Trace ofLot(String number) {
    return new Trace(steps.stream().filter(step -> step.lot().equalsIgnoreCase(number)).toList());
  }

  /**
   * The steps of one batch: the lots that are in it; of a batch of a premix also the batches that
   * it went into.
   */
  public Trace ofBatch(String number) {
    return new Trace(
        steps.stream()
            .filter(
                step ->
                    step.batch().equalsIgnoreCase(number)
                        || step.through().stream().anyMatch(number::equalsIgnoreCase))
            .toList());
  }

  /** The numbers of all batches in it, in their order. */
  public Set<String> batches() {
    Set<String> numbers = new LinkedHashSet<>();
    steps.forEach(step -> numbers.add(step.batch()));
    return numbers;
  }

  /** The number as the folder writes it, if it is that of a lot or of a batch. */
  public static Optional<String> known(String number, Larder larder) {
    List<String> numbers = new ArrayList<>(larder.lots().keySet());
    numbers.addAll(larder.batches().keySet());
    return numbers.stream().filter(number::equalsIgnoreCase).findFirst();
  }
}
