package dev.pellucid.engine.check;

import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.judge.Once;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Severity;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What all searches for a fix of one recipe share; nothing is worked out before the first limit is
 * found broken, and no more than so many changes are proven. For one thread.
 */
public final class Fixing {
  /** So many changes of a recipe are proven at most. */
  private static final int PROOFS = 40;

  /** What a label says is written anew with the recipe. */
  private static final Set<Code> OF_LABEL =
      Set.of(new Code("label-beyond-tolerance"), new Code("label-spends-tolerance"));

  private final Again again;
  private final boolean solves;
  private boolean solvable;
  private final Once<Set<String>> said;
  private int proofs;
  private Optional<Moves> moves = Optional.empty();
  private Optional<Cure> cure = Optional.empty();
  private boolean cureSought;
  private Optional<Change> manyCure = Optional.empty();
  private boolean manyCureSought;

  /** A recipe that can be tried again. */
  public Fixing(Again again) {
    this(again, false);
  }

  /**
   * @param solves whether a change of many lines is looked for too
   */
  public Fixing(Again again, boolean solves) {
    this.again = again;
    this.solves = solves;
    this.said = new Once<>(() -> again.with(List.of()).map(Fixing::keys).orElse(Set.of()));
  }

  /** Of a feed as it was made, and of one that is itself a trial. */
  public static Fixing none() {
    return new Fixing(Again.NONE);
  }

  /** The same recipe with its text changed. */
  public Again again() {
    return again;
  }

  /** Whether a change of many lines is looked for; that it would be is kept in mind. */
  boolean maySolve() {
    solvable = true;
    return solves;
  }

  /** Whether one was asked for. */
  public boolean isSolvable() {
    return solvable;
  }

  /** A change of many lines that meets every broken limit. */
  Optional<Change> manyCure(RuleContext recipe) {
    if (!manyCureSought) {
      manyCureSought = true;
      manyCure = new ManyLines(recipe, Fix.broken(recipe)).change();
    }
    return manyCure;
  }

  /** Takes one of the proofs that are left. */
  boolean mayProve() {
    return again != Again.NONE && proofs++ < PROOFS;
  }

  /** What may move in the feed of this recipe, and what each does. */
  Moves moves(RuleContext recipe) {
    if (moves.isEmpty()) {
      moves = Optional.of(new Moves(recipe.feed().orElseThrow()));
    }
    return moves.get();
  }

  /**
   * One change that meets every broken limit.
   *
   * @param tried the recipe with it
   */
  record Cure(String words, RuleContext tried) {}

  /** It, where there is one: the moisture that is aimed at, where that is broken, else shares. */
  Optional<Cure> cure(RuleContext recipe) {
    if (!cureSought) {
      cureSought = true;
      cure = MoistureFix.cure(recipe).or(() -> Fix.together(recipe));
    }
    return cure;
  }

  /** Whether a recipe that was tried again has an error or a warning that was not there. */
  public boolean saysMore(RuleContext tried) {
    return firstMore(tried).isPresent();
  }

  /** The first of these in words. */
  public Optional<String> firstMore(RuleContext tried) {
    for (Remark remark : Rules.remarks(tried)) {
      if (counts(remark) && !said.get().contains(key(remark))) {
        return Optional.of(remark.finding().headline());
      }
    }
    return Optional.empty();
  }

  private static Set<String> keys(RuleContext recipe) {
    Set<String> keys = new HashSet<>();
    for (Remark remark : Rules.remarks(recipe)) {
      if (counts(remark)) {
        keys.add(key(remark));
      }
    }
    return keys;
  }

  private static boolean counts(Remark remark) {
    return remark.finding().severity() != Severity.NOTE
        && !OF_LABEL.contains(remark.finding().code());
  }

  private static String key(Remark remark) {
    String about = remark.finding().about().subject() + " " + remark.finding().about().side();
    Optional<LimitStatus> limit = remark.about();
    return remark.finding().code().text()
        + " "
        + (limit.isPresent() ? limit.get().limit().name() : about);
  }
}
