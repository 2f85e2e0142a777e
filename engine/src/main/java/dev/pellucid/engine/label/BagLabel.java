package dev.pellucid.engine.label;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.plan.BatchPlan;
import java.util.List;
import java.util.Optional;

/**
 * What stands on the bag of a feed.
 *
 * @param what the kind of feed and whom it is for: "Complete feed for African catfish, 50 to 250 g"
 * @param draftBecause why no bag may be filled under this label; empty when one may
 * @param statements lists of the label in their order
 * @param facts weight, batch, days and maker; one without a value is written on by hand
 * @param aside what the printer of the label must know and the customer need not
 */
public record BagLabel(
    String code,
    String title,
    String what,
    List<String> draftBecause,
    List<Statement> statements,
    List<Fact> facts,
    List<String> aside) {
  public BagLabel {
    draftBecause = List.copyOf(draftBecause);
    statements = List.copyOf(statements);
    facts = List.copyOf(facts);
    aside = List.copyOf(aside);
  }

  /** A part of the label under its own words. */
  public sealed interface Statement {
    String heading();

    /** What the one method of the visitor that is for this kind makes of it. */
    <R> R accept(Visitor<R> visitor);

    /** Makes something of every kind of part. */
    interface Visitor<R> {
      R figures(Figures figures);

      R names(Names names);

      R groups(Groups groups);

      R sentences(Sentences sentences);
    }

    /** Names and figures. */
    record Figures(String heading, List<Fact> figures) implements Statement {
      public Figures {
        figures = List.copyOf(figures);
      }

      @Override
      public <R> R accept(Visitor<R> visitor) {
        return visitor.figures(this);
      }
    }

    /** Names one after the other, parted by semicolons since a name may hold commas. */
    record Names(String heading, List<String> names) implements Statement {
      public Names {
        names = List.copyOf(names);
      }

      @Override
      public <R> R accept(Visitor<R> visitor) {
        return visitor.names(this);
      }
    }

    /** Names under the group that they are of. */
    record Groups(String heading, List<Group> groups) implements Statement {
      public Groups {
        groups = List.copyOf(groups);
      }

      @Override
      public <R> R accept(Visitor<R> visitor) {
        return visitor.groups(this);
      }
    }

    /** Sentences. */
    record Sentences(String heading, List<String> sentences) implements Statement {
      public Sentences {
        sentences = List.copyOf(sentences);
      }

      @Override
      public <R> R accept(Visitor<R> visitor) {
        return visitor.sentences(this);
      }
    }
  }

  /** Names of one group. */
  public record Group(String name, List<String> names) {
    public Group {
      names = List.copyOf(names);
    }

    /** {@code Vitamins: Biotin (3a880); Folic acid (3a316).} */
    public String words() {
      return name + ": " + String.join("; ", names) + ".";
    }
  }

  /** One thing told. */
  public record Fact(String name, String value) {}

  /** The label of a feed; none where the recipe has no label or the folder no label rules. */
  public static Optional<BagLabel> of(ComputedFeed feed, FeedTables tables, BatchPlan plan) {
    return maker(feed, tables).map(maker -> maker.made(plan));
  }

  /** What of it is the same for every batch; nothing where there is no label. */
  public static List<Statement> statements(ComputedFeed feed, FeedTables tables) {
    return maker(feed, tables).map(LabelMaker::statements).orElse(List.of());
  }

  /**
   * The lists of ingredients that it names by falling weight, premixes opened: in each the names of
   * those that stand at a place together. None where there is no label.
   */
  public static List<List<List<Ingredient>>> byWeight(ComputedFeed feed, FeedTables tables) {
    return maker(feed, tables).map(LabelMaker::byWeight).orElse(List.of());
  }

  private static Optional<LabelMaker> maker(ComputedFeed feed, FeedTables tables) {
    return tables
        .label()
        .flatMap(
            rules ->
                feed.recipe().label().map(label -> new LabelMaker(feed, tables, rules, label)));
  }
}
