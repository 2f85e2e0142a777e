package dev.pellucid.engine.resolve;

/**
 * A thing of a folder that was looked up, whether it is there or not.
 *
 * @param name within its kind; empty where there is only one of a kind
 */
public record Ref(Kind kind, String name) implements Comparable<Ref> {
  /** The kinds of things. Those that stand for a whole folder or file have no name. */
  public enum Kind {
    /** Settings, sources, groups, species and nutrients: every feed hangs on them. */
    FRAME,
    /** What is usual, and what each step leaves: every feed hangs on it. */
    PRACTICE,
    /** A plant, by its name. */
    PLANT,
    /** The names of all plants. */
    PLANTS,
    /** The rules by which bags are labelled. */
    LABEL,
    /** The profiles of law that hold in the jurisdiction of the folder. */
    LAW,
    /** An ingredient, by its name. */
    INGREDIENT,
    /** An ingredient, by a name that it had before. */
    FORMER_NAME,
    /** The price of an ingredient on the day of the run. */
    PRICE,
    /** Whether there are prices at all, and whether all of them could be read. */
    PRICES,
    /** A premix, by its code. */
    PREMIX,
    /** A profile, by its name. */
    PROFILE,
    /** The finished feed of a recipe that is worked in again, by the code of the recipe. */
    REWORK,
    /** All names that may stand in a line of shares; what is like a wrong name hangs on them. */
    MATERIALS,
    /** The names of all profiles. */
    PROFILES,
    /** The codes of all recipes. */
    RECIPES,
    /** The records of batches of a recipe or premix, by its code. */
    RECORDS,
    /** Lots, batches and ingredients of every name: what a record names, and what is like it. */
    STORE
  }

  /** One that is the only one of its kind. */
  static Ref only(Kind kind) {
    return new Ref(kind, "");
  }

  @Override
  public int compareTo(Ref other) {
    int byKind = kind.compareTo(other.kind);
    return byKind == 0 ? name.compareTo(other.name) : byKind;
  }
}
