package dev.pellucid.engine.goal;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.form.Form;
import dev.pellucid.engine.form.IngredientForm;
import dev.pellucid.engine.form.LotForm;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.BundledPath;
import dev.pellucid.text.Choices;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import dev.pellucid.text.SourceFile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A new file of one thing, complete but for what a person must give. What is there already is left
 * as it is, and a name that something bears is refused.
 */
public final class NewGoal {
  /** What can be asked for, one at a time. */
  private static final List<String> KINDS =
      List.of("recipe", "ingredient", "premix", "batch", "lot", "own");

  private final Texts texts;
  private final LocalDate day;
  private final Map<String, String> typed;
  private final Shared shared;

  private NewGoal(Texts texts, LocalDate day, Map<String, String> typed) {
    this.texts = texts;
    this.day = day;
    this.typed = typed;
    this.shared = Shared.of(ReadFolder.of(texts), Days.on(day));
  }

  /**
   * What would be written; writes nothing.
   *
   * @param typed what is asked for, by the name of the parameter behind {@code pellucid.}
   */
  public static NewReport of(Texts texts, LocalDate day, Map<String, String> typed) {
    List<String> asked =
        KINDS.stream().filter(kind -> !typed.getOrDefault(kind, "").isBlank()).toList();
    if (asked.size() != 1) {
      return NewReport.refused(
          (asked.isEmpty() ? "nothing is asked for" : "one thing at a time")
              + "; write one of -Dpellucid.recipe=CODE, -Dpellucid.ingredient=NAME"
              + " -Dpellucid.group=GROUP, -Dpellucid.premix=CODE, -Dpellucid.batch=CODE of a recipe,"
              + " -Dpellucid.lot=NUMBER -Dpellucid.of=INGREDIENT, -Dpellucid.own=FILE that comes"
              + " with the plugin");
    }
    return new NewGoal(texts, day, typed).made(asked.get(0));
  }

  private NewReport made(String kind) {
    String name = typed(kind);
    return switch (kind) {
      case "ingredient" -> ingredient(name);
      case "batch" -> new NewBatch(texts, shared, day).of(name);
      case "lot" -> lot(name);
      case "own" -> own(name);
      default -> new NewFeed(shared, typed).of(kind, name);
    };
  }

  private String typed(String parameter) {
    return typed.getOrDefault(parameter, "").strip();
  }

  private NewReport ingredient(String name) {
    Map<String, Ingredient> there = shared.tables().ingredients();
    if (!name.matches("[a-z][a-z0-9]*(-[a-z0-9]+)*")) {
      return NewReport.refused(
          name
              + " cannot be the name of an ingredient: it is of lower-case letters and digits,"
              + " parted by hyphens, and begins with a letter, as in wheat-bran or fish-meal-65");
    }
    Optional<Ingredient> taken =
        Optional.ofNullable(there.get(name))
            .or(() -> there.values().stream().filter(one -> was(one, name)).findFirst());
    if (taken.isPresent()) {
      return taken(name, taken.get().declared().file().path());
    }
    String group = typed("group");
    if (!shared.tables().groups().containsKey(group)) {
      return unknown(group, "group", "-Dpellucid.group", shared.tables().groups().keySet());
    }
    String path = "ingredients/" + name + ".yaml";
    String text =
        new IngredientForm(name, group)
            .text(shared.tables().nutrients().inOrder(), there.values(), law());
    return NewReport.of(
        new Form(path, text), "its price goes into a file of prices/, and then a recipe names it");
  }

  private static boolean was(Ingredient one, String name) {
    return one.formerly().contains(name);
  }

  private List<Profile> law() {
    Optional<String> ours = shared.tables().settings().jurisdiction();
    return shared.resolver().profilesOfMaterials().stream()
        .filter(profile -> profile.kind() == Limit.Kind.LAW)
        .filter(profile -> ours.isPresent() && profile.jurisdiction().equals(ours))
        .toList();
  }

  private NewReport lot(String number) {
    if (!number.matches("[A-Za-z0-9]+([._-][A-Za-z0-9]+)*")) {
      return NewReport.refused(
          number
              + " cannot be the number of a lot here: it is of letters and digits, parted by"
              + " hyphens, points or low lines, as in FM-26-1187");
    }
    Optional<String> taken =
        shared.tables().lots().values().stream()
            .filter(lot -> lot.number().equalsIgnoreCase(number))
            .map(lot -> lot.declared().file().path())
            .findFirst();
    if (taken.isPresent()) {
      return taken(number, taken.get());
    }
    String of = typed("of");
    Collection<String> known = shared.tables().ingredients().keySet();
    return known.contains(of)
        ? NewReport.of(new Form("lots/" + number + ".yaml", LotForm.text(number, of, day)))
        : unknown(of, "ingredient", "-Dpellucid.of", known);
  }

  /** A file that comes along, to be changed. */
  private NewReport own(String typedPlace) {
    String place = BundledPath.is(typedPlace) ? BundledPath.below(typedPlace) : typedPlace;
    if (List.of("sources.yaml", "groups.yaml").contains(place)) {
      return NewReport.refused(
          place
              + " of the folder adds to that of the plugin, and its entries win; write only your"
              + " own into it");
    }
    if (texts.has(place)) {
      return taken(place, place);
    }
    if (!texts.has(BundledPath.of(place))) {
      return unknown(place, "file that comes with the plugin", "-Dpellucid.own", along());
    }
    Optional<SourceFile> file = texts.read(BundledPath.of(place), new ArrayList<Finding>());
    return NewReport.of(
        new Form(place, file.orElseThrow().text()),
        "from now on it stands in place of the one that comes with the plugin, newer ones too");
  }

  private List<String> along() {
    List<String> along = new ArrayList<>(texts.comingAlong());
    along.removeAll(List.of("sources.yaml", "groups.yaml"));
    return along;
  }

  static NewReport taken(String name, String path) {
    return NewReport.refused(
        BundledPath.is(path)
            ? name
                + " comes with the plugin; take another name, or write -Dpellucid.own="
                + BundledPath.below(path)
                + " for a copy of your own"
            : name + " is there already, in " + path + "; change that file, or take another name");
  }

  static NewReport unknown(String typed, String thing, String parameter, Collection<String> known) {
    List<String> near = NearNames.of(typed, known);
    List<String> holding = near.isEmpty() ? NearNames.holding(typed, known) : near;
    String asked =
        typed.isBlank()
            ? parameter + " is to say the " + thing
            : typed + " is no " + thing + " here";
    return NewReport.refused(
        asked
            + "; "
            + (typed.isBlank() ? Optional.<String>empty() : Meant.question(holding))
                .orElseGet(() -> "there are " + Choices.all(known)));
  }
}
