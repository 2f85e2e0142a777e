package dev.pellucid.engine.form;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Usual;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.text.ToBeGiven;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * A new ingredient of a group: the parts that make up its whole, and what the law bounds in raw
 * materials of its group, each with what the group usually holds beside it.
 */
public final class IngredientForm {
  private final String name;
  private final String group;
  private final StringBuilder text = new StringBuilder();

  public IngredientForm(String name, String group) {
    this.name = name;
    this.group = group;
  }

  /**
   * Its text.
   *
   * @param nutrients all of the folder
   * @param others ingredients that are there; their form is taken where they are of the group
   * @param law files of law that bound raw materials under the jurisdiction of the folder
   */
  public String text(List<Nutrient> nutrients, Collection<Ingredient> others, List<Profile> law) {
    line("name: " + title());
    line("groups: [" + group + "]");
    line("form: " + form(others));
    line("contents:");
    line("  # Of an analysis, the label of the bag or a table: an entry of sources.yaml.");
    line("  - source: " + ToBeGiven.MARK);
    nutrients.stream().filter(IngredientForm::isOfTheWhole).forEach(this::content);
    Set<Nutrient> bounded = bounded(law);
    nutrients.stream().filter(one -> isToldByAll(one, others)).forEach(bounded::add);
    if (!bounded.isEmpty()) {
      line(
          "  # What the law bounds: as its seller declares it, below what was looked for, or none.");
      line("  - source: " + ToBeGiven.MARK);
      bounded.forEach(this::content);
    }
    line("# Whatever else is known, such as lysine or calcium, stands in a line more of contents.");
    line(
        "# What fish digest of it stands under digestibility, the most that they take under caps.");
    line(
        "# Its price stands in a file of prices/, in a line more: "
            + name
            + ", a colon, the price.");
    return text.toString();
  }

  private void line(String line) {
    text.append(line).append('\n');
  }

  private String title() {
    String words = name.replace('-', ' ');
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** That of most ingredients of the group; of two as frequent the first by name. */
  private String form(Collection<Ingredient> others) {
    Map<String, Integer> counts = new TreeMap<>();
    for (Ingredient other : others) {
      if (other.groups().contains(group)) {
        counts.merge(word(other.form()), 1, Integer::sum);
      }
    }
    String most = word(Ingredient.Form.MEAL);
    int found = 0;
    for (Map.Entry<String, Integer> each : counts.entrySet()) {
      if (each.getValue() > found) {
        most = each.getKey();
        found = each.getValue();
      }
    }
    return most;
  }

  private static String word(Ingredient.Form form) {
    return form.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static boolean isOfTheWhole(Nutrient nutrient) {
    return nutrient.ofTheWhole() && nutrient.formula().isEmpty();
  }

  private Set<Nutrient> bounded(List<Profile> law) {
    List<Nutrient> found = new ArrayList<>();
    for (Profile profile : law) {
      if (profile.materials().contains(group) || profile.materials().contains(name)) {
        for (Limit limit : profile.limits()) {
          found.addAll(limit.subject().raisedBy());
        }
      }
    }
    found.removeIf(one -> isOfTheWhole(one) || one.formula().isPresent());
    return new LinkedHashSet<>(found);
  }

  /** A substance that is looked for in every other ingredient of the group. */
  private boolean isToldByAll(Nutrient nutrient, Collection<Ingredient> others) {
    List<Ingredient> alike = others.stream().filter(one -> one.groups().contains(group)).toList();
    return nutrient.whereTold()
        && nutrient.formula().isEmpty()
        && !alike.isEmpty()
        && alike.stream()
            .allMatch(
                one ->
                    one.contents().stream()
                        .anyMatch(block -> block.byNutrient().containsKey(nutrient.name())));
  }

  private void content(Nutrient nutrient) {
    String given = "    " + nutrient.name() + ": " + FeedText.wanted(nutrient.unit().symbol());
    line(given + usual(nutrient).map(row -> "  # usually " + row.asWritten()).orElse(""));
  }

  private Optional<Usual> usual(Nutrient nutrient) {
    return nutrient.usual().stream()
        .filter(row -> !row.asAdditive())
        .filter(row -> row.groups().isEmpty() || row.groups().contains(group))
        .findFirst()
        .filter(row -> row.of().isEmpty());
  }
}
