package dev.pellucid.engine.check;

import dev.pellucid.engine.data.Content;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Ingredient.ContentBlock;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.MaterialMaxima;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.BundledPath;
import dev.pellucid.text.Choices;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * An ingredient that is silent on a substance that is judged where it is told, and of which all
 * like it tell: the others of a group, and those that a maximum of raw materials holds with it.
 * What is not told counts as nothing, so a line that was lost shows nowhere else. It is said only
 * of an ingredient that tells most of what they tell; one on which nobody looked for anything is no
 * slip. What comes with the program stands beside the others and is not looked at.
 */
final class SubstanceNotTold {
  static final Code CODE = new Code("substance-not-told");

  /** Fewer of a group say nothing. */
  private static final int OF_GROUP = 2;

  /** Fewer that one maximum holds say nothing. */
  private static final int OF_MAXIMUM = 3;

  private static final double MOST = 0.5;

  private final List<String> substances = new ArrayList<>();
  private final Map<String, Map<String, Content>> told = new HashMap<>();
  private final Map<String, Tells> byGroup = new HashMap<>();
  private final Map<Limit, Tells> byMaximum = new HashMap<>();
  private final MaterialMaxima maxima;

  private SubstanceNotTold(FeedTables tables, MaterialMaxima maxima) {
    this.maxima = maxima;
    for (Nutrient one : tables.nutrients().inOrder()) {
      if (one.whereTold()) {
        substances.add(one.name());
      }
    }
    for (Ingredient one : tables.ingredients().values()) {
      told.put(one.name(), told(one));
      for (String group : one.groups()) {
        byGroup.computeIfAbsent(group, any -> new Tells()).add(one);
      }
      for (Limit limit : maxima.of(one.name())) {
        byMaximum.computeIfAbsent(limit, any -> new Tells()).add(one);
      }
    }
  }

  /** How many of some ingredients tell each substance, and how many say nothing of it at all. */
  private final class Tells {
    private final Map<String, Integer> telling = new HashMap<>();
    private final Map<String, Integer> silent = new HashMap<>();

    void add(Ingredient one) {
      for (String name : substances) {
        if (tells(one, name)) {
          telling.merge(name, 1, Integer::sum);
        } else if (!one.isNotKnown(name)) {
          silent.merge(name, 1, Integer::sum);
        }
      }
    }

    /** Whether all beside one tell it, and enough; who says not-known says so of itself alone. */
    boolean allBeside(Ingredient one, String name, int enough) {
      boolean its = tells(one, name);
      int others = telling.getOrDefault(name, 0) - (its ? 1 : 0);
      int silentOnes = silent.getOrDefault(name, 0) - (its || one.isNotKnown(name) ? 0 : 1);
      return others >= enough && silentOnes == 0;
    }
  }

  private boolean tells(Ingredient one, String name) {
    return told.getOrDefault(one.name(), Map.of()).containsKey(name);
  }

  static void look(FeedTables tables, MaterialMaxima maxima, Consumer<Finding> out) {
    SubstanceNotTold all = new SubstanceNotTold(tables, maxima);
    for (Ingredient one : tables.ingredients().values()) {
      if (one.whole() && !BundledPath.is(one.declared().file().path())) {
        all.look(one, out);
      }
    }
  }

  private Map<String, Content> told(Ingredient one) {
    Map<String, Content> its = new HashMap<>();
    for (ContentBlock block : one.contents()) {
      for (String name : substances) {
        Content content = block.byNutrient().get(name);
        if (content != null && block.species().isEmpty()) {
          its.putIfAbsent(name, content);
        }
      }
    }
    return its;
  }

  private void look(Ingredient one, Consumer<Finding> out) {
    Set<String> expected = expected(one);
    Map<String, Content> its = told.getOrDefault(one.name(), Map.of());
    Set<String> lost = new TreeSet<>(expected);
    lost.removeIf(name -> its.containsKey(name) || one.isNotKnown(name));
    Content place = last(its);
    if (!lost.isEmpty() && place != null && lost.size() <= MOST * expected.size()) {
      out.accept(
          Finding.note(
                  CODE,
                  place.place(),
                  one.name()
                      + " does not tell "
                      + Choices.all(lost)
                      + ", which all ingredients like it tell")
              .noting("what is not told counts as nothing where a feed is judged on it")
              .helping("write what it holds, none or below a figure, with its source")
              .helping("or not-known, where nobody has looked for it"));
    }
  }

  /** What all of a group tell beside it, or all that one maximum of raw materials holds. */
  private Set<String> expected(Ingredient one) {
    Set<String> expected = new HashSet<>();
    for (String group : one.groups()) {
      add(byGroup.get(group), one, OF_GROUP, substances, expected);
    }
    for (Limit limit : maxima.of(one.name())) {
      List<String> names = new ArrayList<>();
      for (Nutrient nutrient : limit.subject().addends()) {
        if (nutrient.whereTold()) {
          names.add(nutrient.name());
        }
      }
      add(byMaximum.get(limit), one, OF_MAXIMUM, names, expected);
    }
    return expected;
  }

  private static void add(
      @Nullable Tells like, Ingredient one, int enough, List<String> names, Set<String> expected) {
    for (String name : names) {
      if (like != null && like.allBeside(one, name, enough)) {
        expected.add(name);
      }
    }
  }

  /** The last of them in the file, below which one more would be written. */
  private static @Nullable Content last(Map<String, Content> told) {
    Content last = null;
    for (Content one : told.values()) {
      last = last == null || one.place().compareTo(last.place()) > 0 ? one : last;
    }
    return last;
  }
}
