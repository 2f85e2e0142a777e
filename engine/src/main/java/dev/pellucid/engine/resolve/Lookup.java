package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Price;
import dev.pellucid.text.Span;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;

/**
 * What one file may name. It is the only way from a line to a thing of the folder, and it notes
 * everything that was looked up, what is not there too: what is made with it hangs on just that.
 * One for each file that is resolved, in one thread.
 */
public final class Lookup {
  private final Scope scope;
  private final Map<Ref, Optional<?>> seen = new HashMap<>();

  /** What was looked up through it so far. */
  Reads reads() {
    return new Reads(seen);
  }

  /**
   * @param scope all that can be looked up
   */
  Lookup(Scope scope) {
    this.scope = scope;
    for (Ref.Kind each :
        List.of(
            Ref.Kind.FRAME, Ref.Kind.PRACTICE, Ref.Kind.PLANT, Ref.Kind.LABEL, Ref.Kind.PRICES)) {
      Ref all = Ref.only(each);
      seen.put(all, scope.find(all));
    }
  }

  private <T> Optional<T> noted(Ref.Kind kind, String name, Optional<T> found) {
    seen.put(new Ref(kind, name), found);
    return found;
  }

  private <T> T noted(Ref.Kind kind, T found) {
    seen.put(Ref.only(kind), Optional.of(found));
    return found;
  }

  /** Settings, sources, groups, species and nutrients, on which every file hangs. */
  FeedTables frame() {
    return scope.tables();
  }

  Days days() {
    return scope.days();
  }

  Optional<Ingredient> ingredient(String name) {
    return noted(Ref.Kind.INGREDIENT, name, scope.ingredient(name));
  }

  /** The ingredient that had this name before. */
  Optional<String> formerly(String name) {
    return noted(Ref.Kind.FORMER_NAME, name, scope.formerly(name));
  }

  /** The price of an ingredient on the day of the run. */
  Optional<Price> price(String ingredient) {
    return noted(Ref.Kind.PRICE, ingredient, scope.price(ingredient));
  }

  /** A premix that could be made. */
  Optional<ResolvedPremix> premix(String code) {
    noted(Ref.Kind.PREMIX, code, scope.find(new Ref(Ref.Kind.PREMIX, code)));
    return scope.premix(code);
  }

  /** Whether a premix is there whose own file says why it cannot be used. */
  boolean isBrokenPremix(String code) {
    noted(Ref.Kind.PREMIX, code, scope.find(new Ref(Ref.Kind.PREMIX, code)));
    return scope.brokenPremixes().containsKey(code);
  }

  Optional<Profile> profile(String name) {
    return noted(Ref.Kind.PROFILE, name, scope.profile(name));
  }

  /** The names of all profiles. */
  SortedSet<String> profiles() {
    return noted(Ref.Kind.PROFILES, scope.profileNames());
  }

  /** The profiles of law of the jurisdiction, by name. */
  List<Profile> law() {
    return noted(Ref.Kind.LAW, scope.law());
  }

  /** Whether this can stand as the subject of a line. */
  boolean isMaterial(String name) {
    return ingredient(name).isPresent() || premix(name).isPresent() || isBrokenPremix(name);
  }

  /** All that can stand as the subject of a line. */
  SortedSet<String> materials() {
    return noted(Ref.Kind.MATERIALS, scope.materials());
  }

  /** Codes of recipes, and where each is declared. */
  Map<String, Span> recipes() {
    noted(Ref.Kind.RECIPES, scope.recipes().keySet());
    return scope.recipes();
  }

  /** What the finished feed of a recipe is made of; empty where that must be mended first. */
  Optional<Material.Reworked> reworked(String recipe) {
    noted(Ref.Kind.REWORK, recipe, scope.reworks().state(recipe));
    return scope.reworks().of(recipe);
  }
}
