package dev.pellucid.engine.data;

import dev.pellucid.engine.data.FeedTables.Group;
import dev.pellucid.engine.data.IngredientReader.Declared;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All files of {@code ingredients/}: each as it was read, and what they are together.
 *
 * @param byName the first of each name
 * @param names what is called an ingredient, for all that name one
 */
record Ingredients(
    ReadFiles<Optional<Declared>> reads,
    SortedMap<String, Ingredient> byName,
    Known names,
    List<Finding> findings) {

  private static final Nutrients NO_NUTRIENTS = new Nutrients(List.of(), List.of(Places.NUTRIENTS));

  static final Ingredients NONE = of(ReadFiles.none(), List.of(), NO_NUTRIENTS);

  Ingredients next(Nodes nodes, Frame frame) {
    return of(
        reads.next(nodes.in(Places.INGREDIENTS), file -> IngredientReader.read(file, frame)),
        frame.groups().values(),
        frame.nutrients());
  }

  static Known names(Set<String> names) {
    return new Known(ReferenceFindings.INGREDIENT, "an ingredient", "ingredients/", names, true);
  }

  private static Ingredients of(
      ReadFiles<Optional<Declared>> reads, Collection<Group> groups, Nutrients nutrients) {
    List<Ingredient> ingredients = new ArrayList<>();
    Map<String, List<Scalar>> formerly = new LinkedHashMap<>();
    SortedMap<String, Ingredient> byName = new TreeMap<>();
    for (Optional<Declared> read : reads.things()) {
      if (read.isPresent()) {
        Ingredient one = read.get().ingredient();
        ingredients.add(one);
        byName.putIfAbsent(one.name(), one);
        if (read.get().hasKeys()) {
          formerly.put(one.name(), read.get().formerly());
        }
      }
    }
    Remarks remarks = new Remarks();
    remarks.addAll(reads.findings());
    new Sisters(nutrients, remarks).look(byName.values());
    new CapSisters(byName.values(), remarks).look();
    new NameClashes(remarks).check(groups, ingredients, formerly);
    return new Ingredients(reads, byName, names(byName.keySet()), remarks.findings());
  }
}
