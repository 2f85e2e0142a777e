package dev.pellucid.engine.trace;

import dev.pellucid.engine.trace.Trace.Batch;
import dev.pellucid.engine.trace.Trace.Doubt;
import dev.pellucid.engine.trace.Trace.Thing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What a recall of a lot or of a batch has to tell, as values: each batch with it, whom to call,
 * what to stop, the ways that it took, and whether the books add up.
 *
 * <p>What the records prove is told apart from what may be, and nothing that may be is left out. On
 * the line one step is followed: the batch made next after one that holds the thing may hold what
 * was left behind. What that batch leaves behind for the one after it is the rest of a rest, and is
 * not followed; who reworks it, or fills up its part bag, is.
 */
public final class Recall {
  private static final double CLOSE = 1e-9;

  private Recall() {}

  /** How a thing came into a batch. */
  public enum Kind {
    /** A lot of an ingredient that was weighed in. */
    WEIGHED,
    /** A batch that was made here and weighed in as a premix. */
    PREMIX,
    /** A batch that was weighed in again. */
    REWORK,
    /** Run through the line, and so in what the flush was put into. */
    FLUSH,
    /** What the sieve took out of one batch and was put into another. */
    FINES,
    /** A part bag of one batch that was filled up with another. */
    PART_BAG,
    /** What the batch before, or the flush, left behind on the line. */
    NEXT_ON_LINE,
    /** From a bin in which more than one lot could be. */
    SAME_BIN,
    /** A line of the record does not tell its lot, or tells one that cannot be right. */
    LOT_NOT_TOLD,
    /** Made at the same plant, and no record tells after which batch. */
    ORDER_NOT_TOLD
  }

  /**
   * One step of a thing through the plant.
   *
   * @param from the number of a lot or a batch
   * @param to the number of the batch that it came into, or may have
   * @param line of the record, where there is one; else empty
   * @param bin the bin that it came from, where one is told or the lot lay in one; else empty
   * @param kg of {@code from} that came with this step; where it is not certain, at most so much
   * @param certain whether the records prove the step
   */
  public record Step(
      String from, String to, Kind kind, String line, String bin, Kilograms kg, boolean certain) {}

  /**
   * So much feed.
   *
   * @param bags those that are told
   * @param kg of all, of what is in the bags too
   */
  public record Amount(int bags, double kg) {
    /** Nothing. */
    public static final Amount NONE = new Amount(0, 0);

    Amount plus(Amount more) {
      return new Amount(bags + more.bags, kg + more.kg);
    }

    Amount less(Amount other) {
      return new Amount(bags - other.bags, kg - other.kg);
    }

    /** Never less than nothing. */
    Amount orNothing() {
      return kg > CLOSE ? new Amount(Math.max(0, bags), kg) : NONE;
    }
  }

  /** So many kg, of which records tell the bounds. */
  public record Between(double least, double most) {
    /** Whether they tell just how many. */
    public boolean isExact() {
      return most - least < CLOSE;
    }
  }

  /**
   * One entry of a record that tells where feed, or some of a lot, went.
   *
   * @param party to whom or from whom; empty where the entry has none
   * @param note the delivery note, or the reason
   */
  public record Moved(LocalDate day, String by, String party, Amount amount, String note) {}

  /**
   * Taken by another batch.
   *
   * @param into its number
   * @param kind weighed, premix, rework, fines or part bag
   * @param planned whether nothing of it is weighed yet
   */
  public record Taken(String into, LocalDate day, Kind kind, Kilograms kg, boolean planned) {}

  /**
   * A sample that was put aside.
   *
   * @param until the day until which it is kept
   */
  public record Retained(double kg, String place, Optional<LocalDate> until) {}

  /**
   * What lies in the store.
   *
   * @param amount at most; bags are told only where they can be; never less than nothing
   * @param least kg; as many as there are at most where records tell just how many there are
   * @param counted the day of the last count, later moves taken off or added; absent where nobody
   *     counted
   * @param emptied the day on which its bin was empty after it came, where nobody counted since
   * @param moved whether anything moved since that day, or may have
   */
  public record Store(
      Amount amount,
      double least,
      Optional<LocalDate> counted,
      Optional<LocalDate> emptied,
      boolean moved) {
    /** Whether only the books say so. */
    public boolean isByBooks() {
      return counted.isEmpty() && emptied.isEmpty();
    }

    public Between kg() {
      return new Between(least, amount.kg());
    }
  }

  /**
   * Whether what came in is what went out: a mock recall adds up.
   *
   * <p>{@code had = used + returned + disposed + corrected + in store + gap} for what was bought;
   * {@code had = used + delivered - returned + disposed + samples + in store + gap} for what was
   * made. Of bounds the most in the store and the least gap belong together. Where nobody counted,
   * the store is what is left by the books, and the gap is absent: it cannot be told.
   *
   * @param had kg received, or made: all that is in the bags, a part bag of another batch too;
   *     absent where no record tells
   * @param used kg that batches took of it as their records name it: weighed, reworked, part bags;
   *     planned batches apart
   * @param planned kg that planned batches are to take
   * @param delivered kg that left
   * @param returned of a lot, kg that went back to the supplier; of a batch, kg that came back
   * @param corrected kg that the books were made less by; below zero where more
   * @param samples kg put aside
   * @param unnamed kg, at most, that may be of it besides, and no record proves it: from a bin in
   *     which it lay, its lot named or not, or of a line of its kind that does not tell its lot
   * @param store what is left; absent where neither a count nor the books tell
   * @param gap kg that are missing, on the day of the last count; below zero where there is more
   *     than there can be. Where nobody counted, absent unless more left than there ever was
   */
  public record Balance(
      OptionalDouble had,
      Kilograms used,
      Kilograms planned,
      double delivered,
      double returned,
      double disposed,
      double corrected,
      double samples,
      Kilograms unnamed,
      Optional<Store> store,
      Optional<Between> gap) {
    /** The gap as a share of what was had, of 1. */
    public Optional<Between> gapShare() {
      double all = had.orElse(0);
      return gap.filter(it -> all > CLOSE)
          .map(it -> new Between(it.least() / all, it.most() / all));
    }
  }

  /**
   * How a lot or batch stands.
   *
   * @param word of a lot, as its file has it ({@code passed}, {@code on-hold}, ...), {@code not
   *     inspected} where nobody has looked; of a batch what was decided last, {@code planned} or
   *     {@code open}
   * @param day from which it is so, where that is told
   * @param isStopped whether nothing of it may leave the store: on hold, held, failed, rejected,
   *     withdrawn, returned
   */
  public record State(
      String word, Optional<LocalDate> day, String by, String because, boolean isStopped) {}

  /**
   * A batch that holds the thing, or may.
   *
   * @param certain whether the records prove that it does
   * @param kg of the thing, as weighed in, that the records prove; none for a batch that only may
   * @param most kg of the thing that can be in it at most, where that is told
   * @param why it may; empty where it is certain
   * @param onLine whether it may only hold what was left behind on the line
   * @param made what is in its bags; absent where no record tells
   * @param takenBy batches that took of it
   * @param disposed and counted, by kg and bags
   * @param begunWith the batch whose part bag it filled up, and how many kg that had
   */
  public record Affected(
      Batch batch,
      State state,
      boolean certain,
      Kilograms kg,
      Kilograms most,
      List<Doubt> why,
      boolean onLine,
      Optional<Amount> made,
      OptionalDouble bag,
      List<Moved> delivered,
      List<Moved> returned,
      List<Moved> disposed,
      List<Moved> counted,
      List<Taken> takenBy,
      List<Retained> samples,
      Optional<PartBag> begunWith,
      Balance balance) {
    public Affected {
      why = List.copyOf(why);
      delivered = List.copyOf(delivered);
      returned = List.copyOf(returned);
      disposed = List.copyOf(disposed);
      counted = List.copyOf(counted);
      takenBy = List.copyOf(takenBy);
      samples = List.copyOf(samples);
    }

    /** Whether all that it may hold was left on the line, which was cleaned by its record. */
    public boolean isCleaned() {
      return onLine && !why.isEmpty() && why.stream().noneMatch(one -> one.cleaned().isEmpty());
    }

    /** Whether nothing of it is weighed yet. */
    public boolean isPlanned() {
      return batch.became().equals("planned");
    }
  }

  /** A part bag of an earlier batch that was filled up. */
  public record PartBag(String batch, double kg) {}

  /** Of one batch to one party. */
  public record Sent(Batch batch, boolean certain, Moved moved) {}

  /**
   * Somebody to call.
   *
   * @param party as the first record of it writes the name
   * @param sent what they got, in the order of the days
   * @param back what came back from them
   * @param certain what they got of batches that hold the thing, less what came back of each
   * @param possible the same of batches that may
   * @param tooMuchBack batches of which more came back from them than they got, by the records:
   *     theirs does not add up, and nothing is taken off what they have of others
   */
  public record Call(
      String party,
      List<Sent> sent,
      List<Sent> back,
      Amount certain,
      Amount possible,
      List<String> tooMuchBack) {
    public Call {
      sent = List.copyOf(sent);
      back = List.copyOf(back);
      tooMuchBack = List.copyOf(tooMuchBack);
    }
  }

  /**
   * A lot or batch of which something is left in the store.
   *
   * @param certain whether it is, or holds, the thing
   * @param store absent where nobody can say
   */
  public record Left(Thing thing, State state, boolean certain, Optional<Store> store) {}

  /** A bin, with the lots that may lie in it together with the thing. */
  public record InBin(String bin, List<String> lots, Optional<LocalDate> emptied) {
    public InBin {
      lots = List.copyOf(lots);
    }
  }

  /**
   * What to stop.
   *
   * @param hold made, and something of it may still be in the store or on its way, and nobody has
   *     stopped it yet; the thing itself first, where that is a lot or batch of which some is left
   * @param held the same, stopped already
   * @param closed batches whose records are closed, and of which something may be left that nobody
   *     counted
   * @param planned batches that are to be made with it, or may be
   */
  public record Stop(
      List<Left> hold,
      List<Left> held,
      List<Left> closed,
      List<Affected> planned,
      List<InBin> bins) {
    public Stop {
      hold = List.copyOf(hold);
      held = List.copyOf(held);
      closed = List.copyOf(closed);
      planned = List.copyOf(planned);
      bins = List.copyOf(bins);
    }
  }

  /** Why something was not followed further. */
  public enum Limit {
    /** Batches made next after one that only holds what was left behind on the line. */
    SECOND_ON_LINE,
    /** What such a flush or such fines became is told in words, not by the number of a batch. */
    TOLD_IN_WORDS,
    /** Which batches were made at its plant is not known, since its recipe cannot be read. */
    PLANT_NOT_KNOWN,
    /** It was delivered, and no record tells to whom. */
    PARTY_NOT_TOLD,
    /** A batch with such a line, its lot not told, but of a day before there was any. */
    MADE_BEFORE,
    /** It was decided for a day that is still to come, and does not count yet. */
    DECIDED_AHEAD,
    /** It is to leave, to come back or to be counted on a day that is still to come. */
    MOVED_AHEAD
  }

  /**
   * What was not followed.
   *
   * @param numbers the batches that this is about
   * @param words as the record has them; empty where it has none
   */
  public record NotFollowed(Limit limit, List<String> numbers, String words) {
    public NotFollowed {
      numbers = List.copyOf(numbers);
    }
  }

  /**
   * The whole answer.
   *
   * @param balance of the thing itself; of a number that only records tell, it has no {@code had}
   * @param batches first those that hold it, then those that may, then those that only may by what
   *     was left on the line, each in the order of the days; a batch that is recalled itself comes
   *     first
   * @param steps every one that leads from the thing onward, in the order of the days
   * @param calls those who got the most that is certain first
   * @param circle batches that hold themselves, if the records are right
   */
  public record Answer(
      Thing thing,
      State state,
      Balance balance,
      List<Taken> takenBy,
      List<Affected> batches,
      List<Step> steps,
      List<Call> calls,
      Stop stop,
      List<NotFollowed> notFollowed,
      List<String> circle) {
    public Answer {
      takenBy = List.copyOf(takenBy);
      batches = List.copyOf(batches);
      steps = List.copyOf(steps);
      calls = List.copyOf(calls);
      notFollowed = List.copyOf(notFollowed);
      circle = List.copyOf(circle);
    }

    /** Those of which something is in the bags, in the store or with somebody. */
    public List<Affected> certain() {
      return batches.stream().filter(Affected::certain).toList();
    }

    /** Those that may hold it. */
    public List<Affected> possible() {
      return batches.stream().filter(one -> !one.certain()).toList();
    }
  }

  /**
   * What a batch is made of, all the way back.
   *
   * @param may lots and batches that may be in it besides what it holds, through whatever leads to
   *     it
   * @param steps how all of them came in, or may have, in the order of the days
   */
  public record Origins(Trace.Back back, List<Thing> may, List<Step> steps) {
    public Origins {
      may = List.copyOf(may);
      steps = List.copyOf(steps);
    }

    /**
     * What was bought of it: those that are in it for certain first, batches made here left out.
     */
    public List<Origin> lots() {
      List<Origin> all = new ArrayList<>();
      back.holds().forEach(one -> all.add(new Origin(one.thing(), true)));
      may.forEach(one -> all.add(new Origin(one, false)));
      return all.stream().filter(one -> one.thing().batch().isEmpty()).toList();
    }
  }

  /** A lot that is in a batch, or may be. */
  public record Origin(Thing thing, boolean certain) {}

  /** How many bags are told. */
  static Amount amount(OptionalInt bags, double kg) {
    return new Amount(bags.orElse(0), kg);
  }
}
