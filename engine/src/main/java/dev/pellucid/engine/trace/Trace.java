package dev.pellucid.engine.trace;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a trace can be asked for, and its answers, as values. */
public final class Trace {
  private Trace() {}

  /** Why nobody can say which lot a line was weighed from. */
  public enum Reason {
    /** The record tells the line without its lot. */
    NOT_TOLD,
    /** The recipe has the line, the record does not tell it. */
    LEFT_OUT,
    /** It was run through the line before the batch. */
    FLUSHED,
    /** The folder has no lot of the number that is named. */
    NO_SUCH_LOT,
    /** The number that is named is that of something else. */
    LOT_OF_ANOTHER,
    /** The number that is named is of what came or was made later, or was gone from its bin. */
    NOT_THERE,
    /** It is of a premix or feed, and which batch of it no record tells; what it is made of. */
    NO_RECORD,
    /** It was weighed from a bin in which more than one lot could be; the bin is named. */
    FROM_BIN,
    /** The lot is named itself, and others could be in the bin with it; the bin is named. */
    NAMED_IN_BIN,
    /** It was weighed from a bin in which no lot of it could be; the bin is named. */
    BIN_EMPTY,
    /** It was weighed from a bin that by the books had too little of it; the bin is named. */
    BIN_SHORT,
    /** The lot is told: a batch that may hold what is looked for. */
    TAKEN,
    /** The sieve's fines of a batch that may hold it were put into this one. */
    FINES,
    /** It was begun with a part bag of a batch that may hold it. */
    PART_BAG,
    /** A flush was put into it that was run through the line after a batch with it. */
    FLUSH_INTO,
    /** It was made on the line right after a batch with it; the names tell a flush between. */
    NEXT_ON_LINE,
    /** It was made at the plant of a batch with it, and no record tells which came after which. */
    ORDER_NOT_TOLD
  }

  /**
   * A batch.
   *
   * @param became what was decided of it, in a word; {@code planned} while nothing was weighed,
   *     {@code open} while nothing is decided
   * @param closed whether it is fed or gone
   */
  public record Batch(String number, String code, LocalDate day, String became, boolean closed) {}

  /**
   * A number in words.
   *
   * @param lot what {@code lots/} tells of it
   * @param batch what {@code batches/} tells of it
   */
  public record Thing(String number, Optional<LotOf> lot, Optional<Batch> batch) {}

  /**
   * A lot of an ingredient.
   *
   * @param title the ingredient for people
   * @param inspection as the file has it
   * @param supplierLot the number that the supplier has for it
   * @param deliveryNote the number of the paper that it came with
   * @param bin what it was put into
   * @param remark may be empty
   */
  public record LotOf(
      String ingredient,
      String title,
      LocalDate received,
      double kg,
      Optional<LocalDate> bestBefore,
      Optional<String> inspection,
      Optional<String> supplier,
      Optional<String> supplierLot,
      Optional<String> deliveryNote,
      Optional<String> bin,
      String remark) {}

  /**
   * One way into a batch.
   *
   * @param through the number of the batch that was weighed in and holds it; absent where it was
   *     weighed in itself
   */
  public record Way(Optional<String> through, Kilograms kg) {}

  /**
   * A number in a batch.
   *
   * @param kg over all ways
   * @param ways its own weighing first
   */
  public record Holding(Thing thing, Batch batch, Kilograms kg, List<Way> ways) {
    public Holding {
      ways = List.copyOf(ways);
    }
  }

  /**
   * Why a batch may hold a number.
   *
   * @param line its line; empty where it did not come in with one
   * @param names the number that is named there, or the bin, or the flush before it in words; empty
   *     where none is
   * @param of what the line may have been weighed from, or what came before it on the line: the
   *     number itself or batches with it, the earliest of them where there are many
   * @param more how many more there are than {@code of} has
   * @param cleaned when and by whom the line was cleaned between the two, as the record of the
   *     batch tells it; empty where it does not
   */
  public record Doubt(
      String line, Reason reason, String names, List<String> of, int more, String cleaned) {
    public Doubt {
      of = List.copyOf(of);
    }
  }

  /** A batch that may hold a number, and none of its records can say. */
  public record Maybe(Batch batch, List<Doubt> doubts) {
    public Maybe {
      doubts = List.copyOf(doubts);
    }
  }

  /**
   * Where a number went.
   *
   * @param holds the batches that hold it, in the order of their days
   * @param may the batches that may hold it
   * @param onLine the batches that may only hold what was left behind on the line by a batch before
   *     them, or took of such a batch
   * @param earlier batches with such a line, its lot not told, that were made before it was there
   */
  public record Onward(
      Thing thing,
      List<Holding> holds,
      List<Maybe> may,
      List<Maybe> onLine,
      List<String> earlier,
      List<String> circle) {
    public Onward {
      holds = List.copyOf(holds);
      may = List.copyOf(may);
      onLine = List.copyOf(onLine);
      earlier = List.copyOf(earlier);
      circle = List.copyOf(circle);
    }
  }

  /**
   * A line of which nobody can say what it was weighed from.
   *
   * @param batch whose line it is: the batch that was asked for, or one in it
   * @param of every lot and batch that was there and that it may be
   */
  public record Unknown(
      String batch, String line, Reason reason, String names, OptionalDouble kg, List<String> of) {
    public Unknown {
      of = List.copyOf(of);
    }
  }

  /**
   * What is in a batch.
   *
   * @param holds lots of ingredients and batches made here, down to the raw materials
   * @param circle batches that hold themselves, if the records are right
   */
  public record Back(Thing thing, List<Holding> holds, List<Unknown> unknown, List<String> circle) {
    public Back {
      holds = List.copyOf(holds);
      unknown = List.copyOf(unknown);
      circle = List.copyOf(circle);
    }
  }
}
