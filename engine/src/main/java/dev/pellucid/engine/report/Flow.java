package dev.pellucid.engine.report;

import dev.pellucid.engine.trace.Kilograms;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What went from where to where, to be drawn: boxes, and arrows between them.
 *
 * @param boxes in the order in which they are to stand
 * @param arrows between boxes by their keys; one to or from a box that is not there is a bug
 */
record Flow(List<Box> boxes, List<Arrow> arrows) {
  Flow {
    boxes = List.copyOf(boxes);
    arrows = List.copyOf(arrows);
  }

  /** In which group of columns a box stands, from left to right. */
  enum Place {
    LOT("Lots", "lots"),
    PREMIX("Premixes", "batches"),
    FEED("Feeds", "batches"),
    PARTY("Delivered to", "parties");

    private final String head;
    private final String many;

    Place(String head, String many) {
      this.head = head;
      this.many = many;
    }

    String head() {
      return head;
    }

    /** What several of them are called. */
    String many() {
      return many;
    }
  }

  /**
   * A lot, a batch or a party.
   *
   * @param of what it is of, by which many are folded into one box; may be empty
   * @param more a few words below its name; may be empty
   * @param certain whether it holds what is looked for; else it may
   * @param asked whether it is what is looked for
   */
  record Box(
      String key,
      Place place,
      String of,
      String name,
      String more,
      Optional<LocalDate> day,
      boolean certain,
      boolean asked) {}

  /**
   * A way from one box to another.
   *
   * @param kind in a word or two
   * @param kg absent where no figure belongs there
   * @param most whether it is no more than so many kg, and maybe less
   */
  record Arrow(
      String from,
      String to,
      String kind,
      Optional<Kilograms> kg,
      boolean most,
      OptionalInt bags,
      boolean certain) {}
}
