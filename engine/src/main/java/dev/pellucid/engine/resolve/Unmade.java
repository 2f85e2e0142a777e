package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.finding.Severity;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;

/**
 * The premixes that could not be made, and which files are at fault. A premix that only holds one
 * at fault is not, however far down that stands and however many ways lead to it.
 */
final class Unmade {
  private final Scope scope;
  private final TreeMap<String, Why> premixes = new TreeMap<>();

  /**
   * Why a premix could not be made.
   *
   * @param parts every name that it looked up
   * @param own whether its own file says what is wrong
   */
  private record Why(SortedSet<String> parts, boolean own) {}

  /** Asked only when all premixes of the scope have been tried. */
  Unmade(Scope scope) {
    this.scope = scope;
  }

  /** One that was tried. */
  void add(String code, Resolution<ResolvedPremix> tried) {
    boolean own =
        tried.findings().stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
    premixes.put(code, new Why(tried.reads().names(Ref.Kind.INGREDIENT, Ref.Kind.PREMIX), own));
  }

  /** One that was not tried, since it is in a circle, is too deep, or holds one that is. */
  void add(PremixOrder.LeftOut one) {
    premixes.put(one.code(), new Why(one.parts(), one.own()));
  }

  /** Whether nothing can be made with what has this name, an ingredient or a premix. */
  boolean isBroken(String name) {
    return scope.isBrokenPremix(name) || isBrokenIngredient(name);
  }

  private boolean isBrokenIngredient(String name) {
    Ingredient ingredient = scope.tables().ingredients().get(name);
    return ingredient != null && !ingredient.whole();
  }

  /** The names of the files behind names; parts stand before the premix that holds them. */
  List<String> atFault(SortedSet<String> names) {
    List<String> files = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    Deque<String> left = new ArrayDeque<>();
    pushBroken(names, left);
    while (!left.isEmpty()) {
      String name = left.pop();
      if (!seen.add(name)) {
        continue;
      }
      Why why = premixes.get(name);
      if (isBrokenIngredient(name)) {
        files.add(name + ".yaml");
      } else if (why == null) {
        files.add(name + ".premix");
      } else {
        if (why.own() || why.parts().stream().noneMatch(this::isBroken)) {
          files.add(name + ".premix");
        }
        pushBroken(why.parts(), left);
      }
    }
    Collections.reverse(files);
    return List.copyOf(files);
  }

  /** The last is taken first, and in the end all are turned round. */
  private void pushBroken(Collection<String> names, Deque<String> left) {
    names.stream().filter(this::isBroken).forEach(left::push);
  }
}
