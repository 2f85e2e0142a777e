package dev.pellucid.engine.label;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.LabelRules;
import dev.pellucid.engine.data.LabelWord;
import dev.pellucid.engine.data.Maker;
import dev.pellucid.engine.data.Species;
import dev.pellucid.engine.label.BagLabel.Fact;
import dev.pellucid.engine.label.BagLabel.Group;
import dev.pellucid.engine.label.BagLabel.Statement;
import dev.pellucid.engine.plan.BatchPlan;
import dev.pellucid.engine.resolve.Label;
import dev.pellucid.engine.resolve.Label.Claim;
import dev.pellucid.engine.resolve.ResolvedRecipe;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A recipe, its feed and its plan to the words on a bag. */
final class LabelMaker {
  private static final String CHECK_THE_LAW =
      "This label was made by a tool from the data of the folder. Whoever puts the feed on the"
          + " market must check it against the law of the place where it is sold.";

  private final ResolvedRecipe recipe;
  private final FeedTables tables;
  private final LabelRules rules;
  private final Label label;
  private final Contents contents;

  LabelMaker(ComputedFeed feed, FeedTables tables, LabelRules rules, Label label) {
    this.recipe = feed.recipe();
    this.tables = tables;
    this.rules = rules;
    this.label = label;
    this.contents = new Contents(feed, rules);
  }

  BagLabel made(BatchPlan plan) {
    return new BagLabel(
        recipe.code(),
        recipe.title(),
        what(),
        plan.draftBecause(),
        statements(),
        facts(plan),
        aside(plan));
  }

  List<Statement> statements() {
    List<Statement> statements = new ArrayList<>();
    figures(statements, LabelWord.CONSTITUENTS, label.claims().stream().map(this::claim).toList());
    names(statements, LabelWord.INGREDIENTS, contents.ingredients());
    groups(statements, LabelWord.ADDITIVES, contents.additives());
    groups(statements, LabelWord.OTHER_ADDITIVES, contents.otherAdditives());
    List<String> feeding = recipe.species().map(Species::feeding).orElse(List.of());
    sentences(statements, LabelWord.FEEDING, feeding);
    sentences(statements, LabelWord.STORAGE, rules.storage());
    List<String> cautions = new ArrayList<>(contents.sayings());
    cautions.addAll(rules.cautions());
    sentences(statements, LabelWord.CAUTIONS, cautions);
    return statements;
  }

  List<List<List<Ingredient>>> byWeight() {
    return contents.byWeight();
  }

  private String what() {
    List<String> whom = new ArrayList<>();
    recipe.species().ifPresent(species -> whom.add(species.title()));
    recipe.fish().ifPresent(fish -> whom.add(fish.asWritten()));
    return whom.isEmpty()
        ? rules.words(LabelWord.COMPLETE_FEED_UNTOLD)
        : rules.words(LabelWord.COMPLETE_FEED) + ": " + String.join(", ", whom);
  }

  private Fact claim(Claim claim) {
    String side =
        switch (claim.manner()) {
          case DECLARED -> "";
          case AT_LEAST -> rules.words(LabelWord.AT_LEAST) + " ";
          case AT_MOST -> rules.words(LabelWord.AT_MOST) + " ";
        };
    return new Fact(claim.nutrient().title(), side + claim.written().asWritten());
  }

  private List<Fact> facts(BatchPlan plan) {
    List<Fact> facts = new ArrayList<>();
    facts.add(
        new Fact(
            rules.words(LabelWord.NET_WEIGHT),
            plan.packing()
                .map(packing -> packing.bag().kg().stripTrailingZeros().toPlainString() + " kg")
                .orElse("")));
    facts.add(new Fact(rules.words(LabelWord.BATCH), plan.number().orElse("")));
    plan.storing()
        .ifPresent(
            storing -> {
              facts.add(day(LabelWord.PACKED, storing.useBy().minusDays(storing.days())));
              facts.add(day(LabelWord.BEST_BEFORE, storing.useBy()));
            });
    maker(facts, plan);
    return facts;
  }

  private void maker(List<Fact> facts, BatchPlan plan) {
    Optional<Maker> maker = tables.settings().maker();
    if (maker.isEmpty()) {
      facts.add(new Fact(rules.words(LabelWord.MADE_BY), plan.house()));
      return;
    }
    facts.add(new Fact(rules.words(LabelWord.MADE_BY), maker.get().name()));
    facts.add(new Fact(rules.words(LabelWord.ADDRESS), maker.get().address()));
    if (maker.get().approvalNumber().isPresent()) {
      facts.add(
          new Fact(rules.words(LabelWord.APPROVAL_NUMBER), maker.get().approvalNumber().get()));
    }
  }

  private Fact day(LabelWord word, LocalDate day) {
    return new Fact(rules.words(word), rules.dayOrder().words(day));
  }

  private List<String> aside(BatchPlan plan) {
    List<String> aside = new ArrayList<>();
    aside.add(CHECK_THE_LAW);
    aside.add("Label rules: " + rules.title() + ".");
    if (tables.settings().jurisdiction().isEmpty()) {
      aside.add("No law was judged, for the folder names no jurisdiction.");
    }
    if (plan.storing().isPresent()) {
      aside.add("Print it again when the feed is packed on another day.");
    }
    if (plan.packing().isPresent() && plan.packing().get().hasRemainder()) {
      aside.add("The last bag is not full: write its own weight on it.");
    }
    if (tables.settings().jurisdiction().isPresent()
        && rules.jurisdiction().isPresent()
        && !rules.jurisdiction().equals(tables.settings().jurisdiction())) {
      aside.add(
          "The folder is under the law of "
              + tables.settings().jurisdiction().get()
              + ", these label rules are of "
              + rules.jurisdiction().get()
              + ".");
    }
    return aside;
  }

  private void figures(List<Statement> statements, LabelWord heading, List<Fact> figures) {
    if (!figures.isEmpty()) {
      statements.add(new Statement.Figures(rules.words(heading), figures));
    }
  }

  private void names(List<Statement> statements, LabelWord heading, List<String> names) {
    if (!names.isEmpty()) {
      statements.add(new Statement.Names(rules.words(heading), names));
    }
  }

  private void groups(List<Statement> statements, LabelWord heading, List<Group> groups) {
    if (!groups.isEmpty()) {
      statements.add(new Statement.Groups(rules.words(heading), groups));
    }
  }

  private void sentences(List<Statement> statements, LabelWord heading, List<String> sentences) {
    if (!sentences.isEmpty()) {
      statements.add(new Statement.Sentences(rules.words(heading), sentences));
    }
  }
}
