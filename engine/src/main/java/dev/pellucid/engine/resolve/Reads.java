package dev.pellucid.engine.resolve;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What a file was made with: each thing that was looked up, with what was found then. Two arrays,
 * since a folder keeps one of these for each of its recipes. They stand as they were noted, and a
 * thing that was looked up again may stand twice: they are put in order for who asks, and hardly
 * anybody does.
 */
public final class Reads {
  /** Stands where nothing was found; no name can be equal to it. */
  private static final Object ABSENT = new Object();

  /** Nothing was looked up. */
  public static final Reads NONE = new Notes(0).reads();

  private final Ref[] refs;
  private final Object[] found;

  private Reads(Ref[] refs, Object[] found) {
    this.refs = refs;
    this.found = found;
  }

  /** Takes down what is looked up, as it comes. */
  static final class Notes {
    private Ref[] refs;
    private Object[] found;
    private int count;

    /**
     * @param expected about so many, to begin with
     */
    Notes(int expected) {
      refs = new Ref[expected];
      found = new Object[expected];
    }

    /** Everything that was taken down elsewhere, and room for about so many more. */
    Notes(Reads before, int expected) {
      count = before.refs.length;
      refs = Arrays.copyOf(before.refs, count + expected);
      found = Arrays.copyOf(before.found, count + expected);
    }

    void add(Ref ref, Optional<?> found) {
      addHeld(ref, held(found));
    }

    /** One that is there. */
    void addFound(Ref ref, Object thing) {
      addHeld(ref, thing);
    }

    private void addHeld(Ref ref, Object thing) {
      if (count == refs.length) {
        refs = Arrays.copyOf(refs, 2 * count + 1);
        found = Arrays.copyOf(found, 2 * count + 1);
      }
      refs[count] = ref;
      found[count] = thing;
      count++;
    }

    Reads reads() {
      return new Reads(Arrays.copyOf(refs, count), Arrays.copyOf(found, count));
    }
  }

  /** What was looked up, where nobody asks what was found. */
  static Reads of(Collection<Ref> refs) {
    Notes notes = new Notes(refs.size());
    for (Ref ref : refs) {
      notes.addHeld(ref, ABSENT);
    }
    return notes.reads();
  }

  /** The same with what else was looked up in one state. */
  Reads and(List<Ref> more, Scope scope) {
    Notes notes = new Notes(this, more.size());
    for (Ref ref : more) {
      notes.add(ref, scope.find(ref));
    }
    return notes.reads();
  }

  private static Object held(Optional<?> found) {
    return found.isPresent() ? found.get() : ABSENT;
  }

  /** Everything that was looked up, in order and each once, what is not there too. */
  public List<Ref> refs() {
    return List.copyOf(new TreeSet<>(Arrays.asList(refs)));
  }

  /** The names of one kind that were looked up. */
  public SortedSet<String> names(Ref.Kind... kinds) {
    List<Ref.Kind> wanted = Arrays.asList(kinds);
    SortedSet<String> names = new TreeSet<>();
    for (Ref ref : refs) {
      if (wanted.contains(ref.kind())) {
        names.add(ref.name());
      }
    }
    return names;
  }

  /**
   * Whether all that was looked up is the very same in another state. Things are the same where
   * they are one object; names and codes where they are equal.
   */
  boolean holdIn(Scope other) {
    for (int i = 0; i < refs.length; i++) {
      if (!isSame(refs[i], found[i], held(other.find(refs[i])))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isSame(Ref ref, Object then, Object now) {
    return switch (ref.kind()) {
      case PLANTS, LAW, FORMER_NAME, PRICES, MATERIALS, PROFILES, RECIPES, RECORDS, STORE ->
          then.equals(now);
      default -> then == now;
    };
  }
}
