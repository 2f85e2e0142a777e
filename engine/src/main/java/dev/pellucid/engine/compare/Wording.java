package dev.pellucid.engine.compare;

import com.github.difflib.DiffUtils;
import com.github.difflib.patch.AbstractDelta;
import java.util.ArrayList;
import java.util.List;

/** Which lines of a recipe say something else than before. */
final class Wording {
  private Wording() {}

  /** Lines that are gone and lines that are new; the code of a recipe is no line. */
  static List<String> changed(RecipeState was, RecipeState is) {
    return was.words().equals(is.words()) ? List.of() : changed(nameless(was), nameless(is));
  }

  /** Lines that are gone and lines that are new. */
  static List<String> changed(List<String> was, List<String> is) {
    List<String> changed = new ArrayList<>();
    for (AbstractDelta<String> delta : DiffUtils.diff(was, is).getDeltas()) {
      delta.getSource().getLines().forEach(line -> changed.add("was: " + line));
      delta.getTarget().getLines().forEach(line -> changed.add("now: " + line));
    }
    return changed;
  }

  /** Its lines without its code. */
  static List<String> nameless(RecipeState state) {
    String named = "recipe " + state.code();
    return state.words().stream()
        .map(line -> line.startsWith(named) ? "recipe" + line.substring(named.length()) : line)
        .toList();
  }
}
