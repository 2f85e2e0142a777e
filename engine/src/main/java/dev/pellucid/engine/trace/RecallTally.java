package dev.pellucid.engine.trace;

import dev.pellucid.engine.trace.Recall.Affected;
import dev.pellucid.engine.trace.Recall.Amount;
import dev.pellucid.engine.trace.Recall.Answer;
import dev.pellucid.engine.trace.Recall.Call;
import dev.pellucid.engine.trace.Recall.Store;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What a recall comes to, summed up once for all who show it.
 *
 * @param certain of the batches that hold the thing, planned ones apart
 * @param possible of those that may
 * @param planned how many batches are to be made with it, or may be
 * @param toStop how many lots and batches nobody has stopped yet
 * @param left of the thing itself; absent where nobody can say
 */
public record RecallTally(
    Part certain, Part possible, int planned, int toStop, Optional<Store> left) {
  /**
   * Of the batches of one sort.
   *
   * @param batches how many were made
   * @param onLine how many of them only by what was left behind on the line
   * @param out what parties got of them, less what came back of each batch
   * @param toNobody kg of it that were delivered, and no record tells to whom
   * @param parties how many have any
   * @param store what is left of them, at most, as far as that is told
   * @param least kg of it, at least
   * @param notTold of how many nobody can say what is left
   * @param notCounted of how many only the books say it
   */
  public record Part(
      int batches,
      int onLine,
      Amount out,
      double toNobody,
      int parties,
      Amount store,
      double least,
      int notTold,
      int notCounted) {}

  /** Sums an answer up. */
  public static RecallTally of(Answer answer) {
    return new RecallTally(
        part(answer.certain(), answer.calls().stream().map(Call::certain).toList()),
        part(answer.possible(), answer.calls().stream().map(Call::possible).toList()),
        answer.stop().planned().size(),
        answer.stop().hold().size(),
        answer.balance().store());
  }

  private static Part part(List<Affected> batches, List<Amount> out) {
    List<Affected> made = batches.stream().filter(one -> !one.isPlanned()).toList();
    List<Store> stores = made.stream().flatMap(one -> one.balance().store().stream()).toList();
    Amount toNobody = toNobody(batches);
    return new Part(
        made.size(),
        count(made, Affected::onLine),
        out.stream().reduce(toNobody, Amount::plus),
        toNobody.kg(),
        (int) out.stream().filter(one -> !one.equals(Amount.NONE)).count(),
        stores.stream().map(Store::amount).reduce(Amount.NONE, Amount::plus),
        stores.stream().mapToDouble(Store::least).sum(),
        made.size() - stores.size(),
        (int) stores.stream().filter(Store::isByBooks).count());
  }

  private static Amount toNobody(List<Affected> batches) {
    return batches.stream()
        .flatMap(one -> one.delivered().stream())
        .filter(one -> one.party().isBlank())
        .map(Recall.Moved::amount)
        .reduce(Amount.NONE, Amount::plus);
  }

  private static int count(List<Affected> all, Predicate<Affected> which) {
    return (int) all.stream().filter(which).count();
  }
}
