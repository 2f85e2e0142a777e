package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.DataFileKind;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * All that one file hangs on: what it looked up, and what was looked up for that in turn, through
 * premixes, profiles and feeds that are worked in again.
 */
public final class DependsOn {
  private final String own;
  private final Predicate<String> mayBeLaw;
  private final SortedSet<Ref> refs = new TreeSet<>();

  /** Says what was looked up for a thing. */
  interface Behind {
    Stream<Reads> of(Ref ref);
  }

  /**
   * @param own the path of the file itself, below the folder
   * @param mayBeLaw whether the profile of a name is law, or may have been before it was changed
   */
  DependsOn(String own, Reads reads, Behind behind, Predicate<String> mayBeLaw) {
    this.own = own;
    this.mayBeLaw = mayBeLaw;
    Deque<Ref> left = new ArrayDeque<>(reads.refs());
    while (!left.isEmpty()) {
      Ref ref = left.pop();
      if (refs.add(ref)) {
        behind.of(ref).forEach(more -> left.addAll(more.refs()));
      }
    }
  }

  /** Everything that was looked up on the way, in order. */
  public SortedSet<Ref> refs() {
    return new TreeSet<>(refs);
  }

  /** Whether the file hangs on what another one tells, or would tell if it were there. */
  public boolean on(String path) {
    return path.equals(own) || toldBy(path).stream().anyMatch(this::holds);
  }

  private boolean holds(Ref told) {
    if (told.kind() == Ref.Kind.PROFILE && mayBeLaw.test(told.name())) {
      return true;
    }
    return told.name().isEmpty()
        ? refs.stream().anyMatch(ref -> ref.kind() == told.kind())
        : refs.contains(told);
  }

  /** Whether a premix of this code was looked up on the way. */
  public boolean holdsPremix(String code) {
    return refs.contains(new Ref(Ref.Kind.PREMIX, code));
  }

  /** Whether feeds hang on files of this place at all: on lots, records and plans none does. */
  public static boolean bearsOnFeeds(String path) {
    return !toldBy(path).isEmpty();
  }

  /**
   * What a file tells by its place; of what has no name here, whatever the file tells of that kind.
   */
  private static Set<Ref> toldBy(String path) {
    String name = path.substring(path.lastIndexOf('/') + 1);
    String stem = name.substring(0, Math.max(0, name.lastIndexOf('.')));
    if (name.endsWith(".premix")) {
      return Set.of(new Ref(Ref.Kind.PREMIX, stem));
    }
    if (name.endsWith(".limits")) {
      return Set.of(new Ref(Ref.Kind.PROFILE, stem));
    }
    if (name.endsWith(".recipe")) {
      return Set.of(new Ref(Ref.Kind.REWORK, stem));
    }
    return DataFileKind.of(path).map(kind -> toldBy(kind, stem)).orElse(Set.of());
  }

  private static Set<Ref> toldBy(DataFileKind kind, String stem) {
    return switch (kind) {
      case SETTINGS, SOURCES, GROUPS, RETENTION, NUTRIENTS, SPECIES ->
          Set.of(Ref.only(Ref.Kind.FRAME));
      case BOUNDS, SPREADS, DENSITIES, STEAM, CAUTIONS, SEQUENCE ->
          Set.of(Ref.only(Ref.Kind.PRACTICE));
      case PLANT -> Set.of(new Ref(Ref.Kind.PLANT, stem));
      case LABEL -> Set.of(Ref.only(Ref.Kind.LABEL));
      case PRICES -> Set.of(Ref.only(Ref.Kind.PRICE));
      case INGREDIENTS -> Set.of(new Ref(Ref.Kind.INGREDIENT, stem));
      case LOTS, BATCHES, PLANS -> Set.of();
    };
  }
}
