package dev.pellucid.engine.form;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.resolve.Profile;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.syntax.FeedFile.RecipeFile;
import dev.pellucid.syntax.HeadLine;
import dev.pellucid.syntax.Range;
import dev.pellucid.syntax.ShareLine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A new recipe: with the lines and steps of one that is there, or, where none is, with an
 * ingredient of each kind that most feeds have. Shares and settings are left to a person; doses of
 * premixes are known.
 */
public final class RecipeForm {
  /** Groups of which most feeds hold something, the one that takes the rest last. */
  private static final List<String> MIXED =
      List.of("fish-meals", "oilseed-meals", "cereals", "milling-offals");

  private static final List<String> OILS = List.of("fish-oils", "plant-oils");

  private final Species species;
  private final List<Profile> profiles;
  private final FeedTables tables;
  private final Map<String, ResolvedPremix> premixes;
  private final FeedText text = new FeedText();

  /**
   * @param profiles of need that are for the species; that of the first is met
   * @param premixes those that may be put in
   */
  public RecipeForm(
      Species species,
      List<Profile> profiles,
      FeedTables tables,
      Map<String, ResolvedPremix> premixes) {
    this.species = species;
    this.profiles = List.copyOf(profiles);
    this.tables = tables;
    this.premixes = premixes;
  }

  /** With the lines of another recipe. */
  public String like(String code, RecipeFile model) {
    Model head = new Model(model);
    text.remark("Lines, bounds and steps are those of " + head.code + ", its figures are not.");
    opening(code);
    head(head.habit, head.plant, head.meets);
    text.section("mix");
    lines(FeedText.lines(model.mix()));
    if (model.coat().isPresent()) {
      text.section("coat");
      lines(FeedText.lines(model.coat()));
    }
    if (model.limits().isPresent()) {
      text.section("limits");
      text.note("Those of " + head.code + ": write what this feed is to keep.");
      text.limits(FeedText.lines(model.limits()));
    }
    return text.process(model.process()).toString();
  }

  /** Where there is no other to go by. */
  public String bare(String code) {
    text.remark("An ingredient of each kind that most feeds have; take others as they fit.");
    opening(code);
    head(new TreeSet<>(species.habits()).stream().limit(1).toList(), List.of(), List.of());
    text.section("mix");
    List<String> names = of(MIXED);
    for (int i = 0; i < names.size(); i++) {
      text.line(names.get(i), i == names.size() - 1 ? "rest" : FeedText.wanted("%"));
    }
    premixes.values().forEach(premix -> dose(premix).ifPresent(text::line));
    List<String> oils = of(OILS);
    if (!oils.isEmpty()) {
      text.section("coat").line(oils.get(0), FeedText.wanted("%"));
    }
    return text.section("process")
        .line("grind", "screen", FeedText.wanted("mm"))
        .line("blend", "time", FeedText.wanted("min"))
        .line("pack", "bag", FeedText.wanted("kg"))
        .line("store", "shelf-life", FeedText.wanted("d"))
        .line("store", "temperature", FeedText.wanted("°C"))
        .toString();
  }

  private void opening(String code) {
    text.opening("recipe", code, species.title() + " feed");
  }

  private void head(List<String> habit, List<String> plant, List<String> meets) {
    text.line("status", "draft");
    text.line("species", species.name());
    text.line(
        "fish",
        profiles.stream()
            .findFirst()
            .flatMap(Profile::fish)
            .map(Range::asWritten)
            .orElse(FeedText.wantedRange("g")));
    habit.forEach(word -> text.line("habit", word));
    plant.forEach(word -> text.line("plant", word));
    List<String> met = new ArrayList<>(meets);
    if (met.isEmpty()) {
      profiles.stream().limit(1).forEach(profile -> met.add(profile.name()));
    }
    List<String> others = profiles.stream().map(Profile::name).toList();
    if (others.size() > met.size()) {
      text.note("Profiles for the species: " + String.join(", ", others) + ".");
    }
    met.forEach(word -> text.line("meets", word));
    text.line("batch", FeedText.wanted("kg"), "weighed");
  }

  private void lines(List<ShareLine> lines) {
    for (ShareLine line : lines) {
      Optional<String[]> dosed =
          Optional.ofNullable(premixes.get(line.subject().text())).flatMap(this::dose);
      if (dosed.isPresent()) {
        text.line(dosed.get());
      } else if (!line.rework()) {
        text.shares(List.of(line));
      }
    }
  }

  private Optional<String[]> dose(ResolvedPremix premix) {
    return premix.dose().map(dose -> new String[] {premix.code(), percent(dose.percent()) + " %"});
  }

  private static String percent(BigDecimal percent) {
    return percent.setScale(Math.max(2, percent.stripTrailingZeros().scale())).toPlainString();
  }

  /** One ingredient of each group, where there is any: the first by name. */
  private List<String> of(List<String> groups) {
    List<String> names = new ArrayList<>();
    for (String group : groups) {
      tables.ingredients().values().stream()
          .filter(one -> one.groups().contains(group))
          .map(Ingredient::name)
          .findFirst()
          .ifPresent(names::add);
    }
    return names;
  }

  /** What the head of a recipe tells. */
  private static final class Model {
    final String code;
    final List<String> habit = new ArrayList<>();
    final List<String> plant = new ArrayList<>();
    final List<String> meets = new ArrayList<>();

    Model(RecipeFile file) {
      this.code = file.source().stem();
      HeadLine.Recipe head =
          new HeadLine.Recipe(
              status -> {},
              of -> {},
              fish -> {},
              line -> habit.add(line.habit().text()),
              line -> meets.add(line.profile().text()),
              batch -> {},
              line -> plant.add(line.plant().text()));
      file.head().forEach(line -> line.into(head));
    }
  }
}
