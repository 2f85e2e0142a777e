package dev.pellucid.engine.leastcost;

import dev.pellucid.text.SourceFile;
import dev.pellucid.text.TextEdit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a person is told of one recipe. Money is in the currency of the folder and for a kg in the
 * bags where nothing else is said; shares are in percent of the recipe.
 *
 * @param path of the recipe below the folder
 * @param why nothing is offered, in a sentence; empty where something is, or where none is needed
 * @param costs absent where the feed has no figures
 * @param lines every line of the recipe and what comes in, in the order of the file
 * @param ladder changes of two lines, of three, of all that are free, the smallest first
 * @param conflict what cannot be met, where nothing can
 */
public record Advice(
    String code,
    String title,
    String path,
    Standing standing,
    String why,
    Optional<Costs> costs,
    List<LineMove> lines,
    List<Rung> ladder,
    Reasons reasons,
    Care care,
    Change change,
    Optional<Contradiction> conflict) {
  public Advice {
    lines = List.copyOf(lines);
    ladder = List.copyOf(ladder);
  }

  /** The same with what cannot be met together. */
  Advice unmet(Optional<Contradiction> what) {
    return new Advice(
        code, title, path, standing, why, costs, lines, ladder, reasons, care, change, what);
  }

  /** What there is to say. */
  public enum Standing {
    /** A cheaper recipe is offered. */
    CHEAPER,
    /** The recipe breaks a limit today; one that keeps all is offered, whatever it costs. */
    KEEPS_AGAIN,
    /** A cheaper one was found, and it saves less than is worth a change. */
    NOT_WORTH,
    /** There is none that is cheaper. */
    CHEAPEST,
    /** No shares keep all that is asked. */
    UNMET,
    /** Something in the text or the data must be put right first. */
    NOT_ASKED,
    /** Nothing could be proven. */
    NOT_PROVEN
  }

  /**
   * What a kg in the bags costs.
   *
   * @param then with the shares as they would be written
   * @param least with shares that are not rounded
   * @param tonnesPerMonth how much of it is made, where the folder says so
   * @param rounding where shares that can be written cost more than a tenth of a percent more than
   *     others: by how much, and why, in a sentence
   */
  public record Costs(
      double now,
      double then,
      double least,
      OptionalDouble tonnesPerMonth,
      Optional<String> rounding) {
    /** What a tonne in the bags costs less. */
    public double savesPerTonne() {
      return (now - then) * 1000;
    }
  }

  /**
   * A line, now and then.
   *
   * @param low the least that it may be; empty where it is not free
   * @param high the most that it may be
   * @param bound whether it stands at one of them
   * @param comesIn whether the recipe does not hold it today
   */
  public record LineMove(
      String name,
      double now,
      double then,
      OptionalDouble low,
      OptionalDouble high,
      AtBound bound,
      boolean comesIn) {
    public double moved() {
      return then - now;
    }
  }

  /** Where a share stands between its bounds. */
  public enum AtBound {
    BETWEEN,
    LOWEST,
    HIGHEST
  }

  /**
   * The change of the text.
   *
   * @param edits none where nothing changes
   * @param before as it is
   * @param after as it would be
   */
  public record Change(List<TextEdit> edits, SourceFile before, String after) {
    public Change {
      edits = List.copyOf(edits);
    }

    /** Whether there is one. */
    public boolean isSome() {
      return !edits.isEmpty();
    }
  }

  /**
   * The best change of so many lines.
   *
   * @param lines that change
   * @param cost of a kg in the bags then
   */
  public record Rung(List<LineMove> lines, double cost, Change change) {
    public Rung {
      lines = List.copyOf(lines);
    }
  }
}
