package dev.pellucid.engine.site;

import dev.pellucid.engine.compare.FeedFigures;
import dev.pellucid.engine.explain.Column;
import dev.pellucid.engine.plan.Expectation;
import java.util.List;
import java.util.Optional;

/**
 * What the pages tell of one feed.
 *
 * @param species for people; empty where none is told
 * @param fish their size, as written; empty where none is told
 * @param findings as they are printed
 * @param figures absent where it could not be computed
 * @param past earlier figures, the newest first; the first is the one before today's
 */
public record FeedView(
    String code,
    String title,
    String path,
    String species,
    String fish,
    String status,
    FeedStatus standing,
    List<String> findings,
    Optional<Figured> figures,
    List<Past> past) {
  public FeedView {
    findings = List.copyOf(findings);
    past = List.copyOf(past);
  }

  /** {@code African catfish, 50 to 250 g}. */
  public String whom() {
    return fish.isEmpty() ? species : species.isEmpty() ? fish : species + ", " + fish;
  }

  /** How a feed stands with its limits, the gravest first. */
  public enum FeedStatus {
    NOT_CHECKED("not checked"),
    BROKEN("broken"),
    NOT_JUDGED("not all judged"),
    /** Its limits are kept and something else is an error. */
    FAULTY("kept, with other errors"),
    /** A feed of which nothing is asked has passed nothing. */
    NOTHING_ASKED("nothing asked"),
    WAIVED("kept with a waiver"),
    KEPT("kept");

    private final String words;

    FeedStatus(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * The figures of a feed.
   *
   * @param batch what the masses are told for: {@code 60 kg weighed}
   * @param lines of mix and coat
   * @param held what is analysed and what is asked of it
   * @param taken the figures as they are compared between states
   * @param flow from the scale to the bag
   * @param columns what each line brings of all that is limited
   */
  public record Figured(
      String batch,
      List<Line> lines,
      List<Expectation> held,
      FeedFigures taken,
      List<Flow> flow,
      List<Column> columns) {
    public Figured {
      lines = List.copyOf(lines);
      held = List.copyOf(held);
      flow = List.copyOf(flow);
      columns = List.copyOf(columns);
    }
  }

  /**
   * A line of the recipe.
   *
   * @param place mix or coat
   * @param share percent
   * @param kg that the scale must show for the batch, overage included
   */
  public record Line(String name, String title, String place, String share, String kg) {}

  /**
   * A step from the scale to the bag, in kg per 100 kg of recipe.
   *
   * @param from what there is beside it: of all before, if it comes, of what is left, if it goes
   * @param water the part of the mass that is water; told of all there is
   * @param kind what it does
   */
  public record Flow(String words, double kg, double from, double water, FlowKind kind) {}

  /** What a step does to the mass. */
  public enum FlowKind {
    /** All there is. */
    WHOLE,
    COMES,
    GOES
  }

  /**
   * Its figures at an earlier state.
   *
   * @param name of the state, a commit
   * @param day of the state
   */
  public record Past(String name, String day, FeedFigures figures) {}
}
