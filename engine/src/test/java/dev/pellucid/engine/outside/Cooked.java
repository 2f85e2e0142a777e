package dev.pellucid.engine.outside;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.FeedComputer;
import dev.pellucid.engine.compute.Readings;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Pantry;
import dev.pellucid.engine.data.TablesRead;
import dev.pellucid.engine.resolve.Basis;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.Resolution;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import dev.pellucid.engine.resolve.Resolver;
import dev.pellucid.engine.resolve.Reworks;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.finding.Severity;
import dev.pellucid.parse.FeedParser;
import dev.pellucid.parse.Parsed;
import dev.pellucid.show.FindingText;
import dev.pellucid.syntax.FeedFile;
import dev.pellucid.text.SourceFile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A feed from a few lines of text: ingredients with their contents, premixes and one recipe. */
public final class Cooked {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  private final Pantry pantry = lawless();
  private final List<FeedFile.PremixFile> premixes = new ArrayList<>();

  private static Pantry lawless() {
    Pantry pantry = Pantry.full();
    String settings = pantry.text("pellucid.yaml");
    return pantry.with("pellucid.yaml", settings.replace("jurisdiction: EU", "jurisdiction: none"));
  }

  /** Adds an ingredient; {@code contents} is {@code moisture: 10 %, crude-protein: 44 %}. */
  public Cooked ingredient(String name, String contents) {
    pantry.with(
        "ingredients/" + name + ".yaml",
        "name: "
            + name
            + "\ngroups: []\nform: meal\ncontents:\n  - source: workshop\n    "
            + contents.replace(", ", "\n    ")
            + "\n");
    return this;
  }

  /** Lays any file over the pantry. */
  public Cooked with(String path, String text) {
    pantry.with(path, text);
    return this;
  }

  public Cooked premix(String code, String text) {
    Parsed parsed = FeedParser.parse(new SourceFile(code + ".premix", text));
    require(parsed.findings().isEmpty(), FindingText.of(parsed.findings()));
    premixes.add((FeedFile.PremixFile) parsed.file());
    return this;
  }

  /** The lines below the opening of a recipe, resolved; errors are failures of the test. */
  ResolvedRecipe resolved(String lines) {
    Parsed parsed = FeedParser.parse(new SourceFile("A-1.recipe", "recipe A-1\n" + lines));
    require(parsed.findings().isEmpty(), FindingText.of(parsed.findings()));
    Resolver.Prepared prepared =
        Resolver.prepare(
            new Resolver.Named(tables(), premixes, List.of(), Map.of(), Reworks.NONE, Days.on(DAY)),
            java.util.Optional.empty());
    require(prepared.findings().isEmpty(), FindingText.of(prepared.findings()));
    Resolution<ResolvedRecipe> resolution =
        prepared.resolver().recipe((FeedFile.RecipeFile) parsed.file());
    require(
        resolution.findings().stream().noneMatch(f -> f.severity() == Severity.ERROR),
        FindingText.of(resolution.findings()));
    return resolution.thing().orElseThrow();
  }

  /** The feed of the lines below the opening of a recipe. */
  public ComputedFeed feed(String lines) {
    return feedOf(resolved(lines));
  }

  /** The feed of a recipe that is resolved. */
  public ComputedFeed feedOf(ResolvedRecipe recipe) {
    return new FeedComputer(tables()).compute(recipe).feed().orElseThrow();
  }

  /** All that is in the pantry. */
  public FeedTables tables() {
    TablesRead stocked = pantry.stocked();
    require(
        stocked.findings().stream().noneMatch(f -> f.severity() == Severity.ERROR),
        FindingText.of(stocked.findings()));
    return stocked.tables();
  }

  private static void require(boolean right, String otherwise) {
    if (!right) {
      throw new AssertionError(otherwise);
    }
  }

  /** A content as fed, in the base of its kind. */
  static double content(ComputedFeed feed, String nutrient) {
    return told(feed, nutrient, new Basis.AsFed());
  }

  static double told(ComputedFeed feed, String nutrient, Basis basis) {
    return new Readings(feed).at(sum(feed, nutrient), basis, Scenario.EXPECTED).value();
  }

  static Subject.Nutrients sum(ComputedFeed feed, String nutrient) {
    return new Subject.Nutrients(List.of(feed.nutrients().named(nutrient).orElseThrow()), nutrient);
  }
}
