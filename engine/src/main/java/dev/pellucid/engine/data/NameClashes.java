package dev.pellucid.engine.data;

import dev.pellucid.engine.data.FeedTables.Group;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.text.Span;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Ingredients, groups and codes share one namespace, former names included. Codes are written in
 * capitals and cannot clash.
 */
final class NameClashes {
  private final Map<String, Owner> owners = new HashMap<>();
  private final Remarks remarks;

  private record Owner(String what, Span place) {}

  NameClashes(Remarks remarks) {
    this.remarks = remarks;
  }

  /**
   * @param formerly the former names of each ingredient, in the order of the ingredients
   */
  void check(
      Collection<Group> groups,
      Collection<Ingredient> ingredients,
      Map<String, List<Scalar>> formerly) {
    for (Group group : groups) {
      owners.put(group.name(), new Owner("a group", group.declared()));
    }
    for (Ingredient one : ingredients) {
      ingredient(one);
    }
    for (Map.Entry<String, List<Scalar>> one : formerly.entrySet()) {
      former(one.getKey(), one.getValue());
    }
  }

  private void ingredient(Ingredient one) {
    Owner earlier = owners.putIfAbsent(one.name(), new Owner("an ingredient", one.declared()));
    if (earlier != null) {
      remarks.add(
          ReferenceFindings.nameTwice(
              one.name(), "an ingredient", one.declared(), earlier.place(), earlier.what()));
    }
  }

  private void former(String name, List<Scalar> formerly) {
    for (Scalar old : formerly) {
      Owner now = owners.putIfAbsent(old.text(), new Owner("what is now " + name, old.span()));
      if (now != null) {
        remarks.add(ReferenceFindings.formerly(old, now.what(), now.place()));
      }
    }
  }
}
