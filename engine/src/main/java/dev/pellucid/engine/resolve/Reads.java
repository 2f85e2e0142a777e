package dev.pellucid.engine.resolve;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What a file was made with: each thing that was looked up, with what was found then. Two arrays,
 * since a folder keeps one of these for each of its recipes.
 */
public final class Reads {
  /** Stands where nothing was found; no name can be equal to it. */
  private static final Object ABSENT = new Object();

  /** Nothing was looked up. */
  public static final Reads NONE = new Reads(new TreeMap<>());

  private final Ref[] refs;
  private final Object[] found;

  Reads(Map<Ref, Optional<?>> seen) {
    Map<Ref, Optional<?>> sorted = new TreeMap<>(seen);
    this.refs = sorted.keySet().toArray(Ref[]::new);
    this.found = sorted.values().stream().map(Reads::held).toArray();
  }

  /** What was looked up, where nobody asks what was found. */
  static Reads of(Collection<Ref> refs) {
    Map<Ref, Optional<?>> seen = new TreeMap<>();
    refs.forEach(ref -> seen.put(ref, Optional.empty()));
    return new Reads(seen);
  }

  /** The same with what else was looked up in one state. */
  Reads and(List<Ref> more, Scope scope) {
    Map<Ref, Optional<?>> seen = new TreeMap<>();
    for (int i = 0; i < refs.length; i++) {
      seen.put(refs[i], found[i] == ABSENT ? Optional.empty() : Optional.of(found[i]));
    }
    more.forEach(ref -> seen.put(ref, scope.find(ref)));
    return new Reads(seen);
  }

  private static Object held(Optional<?> found) {
    return found.isPresent() ? found.get() : ABSENT;
  }

  /** Everything that was looked up, in order, what is not there too. */
  public List<Ref> refs() {
    return List.of(refs);
  }

  /** The names of one kind that were looked up. */
  public SortedSet<String> names(Ref.Kind... kinds) {
    List<Ref.Kind> wanted = Arrays.asList(kinds);
    SortedSet<String> names = new TreeSet<>();
    Stream.of(refs)
        .filter(ref -> wanted.contains(ref.kind()))
        .forEach(ref -> names.add(ref.name()));
    return names;
  }

  /**
   * Whether all that was looked up is the very same in another state. Things are the same where
   * they are one object; names and codes where they are equal.
   */
  public boolean holdIn(Scope other) {
    for (int i = 0; i < refs.length; i++) {
      if (!isSame(refs[i], found[i], held(other.find(refs[i])))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isSame(Ref ref, Object then, Object now) {
    return switch (ref.kind()) {
      case LAW, FORMER_NAME, PRICES, MATERIALS, PROFILES, RECIPES, RECORDS, STORE ->
          then.equals(now);
      default -> then == now;
    };
  }
}
