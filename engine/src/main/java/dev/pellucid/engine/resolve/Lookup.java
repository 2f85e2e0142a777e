package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.text.Span;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;

/**
 * What one file may name. It is the only way from a line to a thing of the folder, and it notes
 * everything that was looked up, what is not there too: what is made with it hangs on just that.
 * One for each file that is resolved, in one thread.
 */
public final class Lookup {
  /** About so many notes a recipe makes, those that every file makes not counted. */
  private static final int NOTES = 72;

  private final Scope scope;
  private final Reads.Notes notes;

  /** Kinds that stand for a whole folder and are noted, so that none stands there twice. */
  private final Set<Ref.Kind> whole = EnumSet.noneOf(Ref.Kind.class);

  /**
   * @param scope all that can be looked up
   */
  Lookup(Scope scope) {
    this.scope = scope;
    this.notes = new Reads.Notes(scope.ofEach(), NOTES);
  }

  /** What was looked up through it so far. */
  Reads reads() {
    return notes.reads();
  }

  private <T> Optional<T> noted(Ref.Kind kind, String name, Optional<T> found) {
    notes.add(new Ref(kind, name), found);
    return found;
  }

  private <T> T noted(Ref.Kind kind, T found) {
    if (whole.add(kind)) {
      notes.addFound(Ref.only(kind), found);
    }
    return found;
  }

  /** Settings, sources, groups, species and nutrients, on which every file hangs. */
  FeedTables frame() {
    return scope.tables();
  }

  /**
   * Whether no file of the frame has an error. Where one has, what it should declare may be missing
   * because of that, and nothing is called unknown.
   */
  boolean isFrameWhole() {
    return frame().nutrients().mendFirst().isEmpty();
  }

  /** One nutrient of the frame by itself, as something that a limit is about. */
  Subject.Nutrients alone(Nutrient nutrient) {
    return scope.alone(nutrient);
  }

  Days days() {
    return scope.days();
  }

  /** The ingredient of a line with its price, where it is there and could be read whole. */
  Optional<Material> stocked(String name) {
    Scope.Stocked one = scope.stocked().get(name);
    if (one == null) {
      return Optional.empty();
    }
    notes.addFound(one.ingredient(), one.line().ingredient());
    notes.add(one.price(), one.line().price());
    return Optional.of(one.line());
  }

  /** A plant, by the name of its file. */
  Optional<Plant> plant(String name) {
    return noted(Ref.Kind.PLANT, name, Optional.ofNullable(frame().plants().get(name)));
  }

  /** The names of all plants. */
  Set<String> plants() {
    return noted(Ref.Kind.PLANTS, frame().plants().keySet());
  }

  Optional<Ingredient> ingredient(String name) {
    return noted(Ref.Kind.INGREDIENT, name, scope.ingredient(name));
  }

  /** The ingredient that had this name before. */
  Optional<String> formerly(String name) {
    return noted(Ref.Kind.FORMER_NAME, name, scope.formerly(name));
  }

  /** A premix that could be made. */
  Optional<ResolvedPremix> premix(String code) {
    noted(Ref.Kind.PREMIX, code, scope.find(new Ref(Ref.Kind.PREMIX, code)));
    return scope.premix(code);
  }

  /** Whether a premix is there whose own file says why it cannot be used. */
  boolean isBrokenPremix(String code) {
    noted(Ref.Kind.PREMIX, code, scope.find(new Ref(Ref.Kind.PREMIX, code)));
    return scope.isBrokenPremix(code);
  }

  Optional<Profile> profile(String name) {
    return noted(Ref.Kind.PROFILE, name, scope.profile(name));
  }

  /** Whether a profile bounds raw materials, so that no feed meets it. */
  boolean boundsMaterials(String profile) {
    return scope.boundsMaterials(profile);
  }

  /** The names of all profiles. */
  SortedSet<String> profiles() {
    return noted(Ref.Kind.PROFILES, scope.profileNames());
  }

  /** The profiles of law and guidance of the jurisdiction, by name. */
  List<Profile> binding() {
    return noted(Ref.Kind.LAW, scope.binding());
  }

  /** What some profiles ask together; each was looked up already. */
  MergedLimits limitsOf(List<Profile> profiles) {
    return scope.limitsOf(profiles);
  }

  /** Whether this can stand as the subject of a line. */
  boolean isMaterial(String name) {
    return ingredient(name).isPresent() || premix(name).isPresent() || scope.isBrokenPremix(name);
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

  /** What the finished feed of a recipe is made of; empty where that must be fixed first. */
  Optional<Material.Reworked> reworked(String recipe) {
    noted(Ref.Kind.REWORK, recipe, scope.reworks().state(recipe));
    return scope.reworks().of(recipe);
  }
}
