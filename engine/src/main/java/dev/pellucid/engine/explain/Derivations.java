package dev.pellucid.engine.explain;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Digestibility;
import dev.pellucid.engine.data.Digestibility.Coefficient;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.explain.Worked.Head;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.measure.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How the contents of ingredients follow from others: by a formula, by a coefficient of digestion,
 * or as the part of another that is written for a species. One table for each of them, each after
 * those that it follows from, and a line for each ingredient that it holds for.
 */
final class Derivations {
  private static final int PERCENT_DECIMALS = 1;

  private final ComputedFeed feed;
  private final RowContents contents;
  private final List<Row> rows;
  private final List<Worked> tables = new ArrayList<>();
  private final Set<String> seen = new LinkedHashSet<>();

  private Derivations(ComputedFeed feed, List<Row> rows) {
    this.feed = feed;
    this.contents = new RowContents(feed);
    this.rows = rows;
  }

  /**
   * @param rows that bring enough to be seen, the most first
   */
  static List<Worked> of(ComputedFeed feed, List<Nutrient> nutrients, List<Row> rows) {
    Map<String, Row> byIngredient = new LinkedHashMap<>();
    for (Row row : rows) {
      byIngredient.putIfAbsent(row.ingredient().name(), row);
    }
    Derivations all = new Derivations(feed, List.copyOf(byIngredient.values()));
    for (Nutrient one : nutrients) {
      all.visit(one);
    }
    return all.tables;
  }

  private void visit(Nutrient nutrient) {
    List<Row> following = new ArrayList<>();
    for (Row row : rows) {
      boolean known = !row.composition().isUnknown(nutrient.index());
      if (known && contents.written(row, nutrient).isEmpty()) {
        following.add(row);
      }
    }
    if (!seen.add(nutrient.name())) {
      return;
    }
    if (following.isEmpty()) {
      partForSpecies(nutrient);
      return;
    }
    for (Nutrient needed : needed(nutrient)) {
      visit(needed);
    }
    if (nutrient.formula().isPresent()) {
      byFormula(nutrient, nutrient.formula().get(), following);
    } else if (nutrient.digestibleOf().isPresent()) {
      byCoefficient(nutrient, following);
    }
  }

  private List<Nutrient> needed(Nutrient nutrient) {
    List<Nutrient> needed = new ArrayList<>();
    if (nutrient.formula().isPresent()) {
      for (Nutrient.Formula.Term term : nutrient.formula().get().terms()) {
        feed.nutrients().named(term.nutrient()).ifPresent(needed::add);
      }
    }
    nutrient.digestibleOf().flatMap(feed.nutrients()::named).ifPresent(needed::add);
    return needed;
  }

  private void byFormula(Nutrient nutrient, Nutrient.Formula formula, List<Row> following) {
    List<Nutrient> terms = needed(nutrient);
    List<Head> heads = new ArrayList<>();
    heads.add(Head.ofWords("Ingredient"));
    for (Nutrient term : terms) {
      heads.add(Head.ofFigures(head(term)));
    }
    heads.add(Head.ofFigures("= " + head(nutrient)));
    List<List<String>> lines = new ArrayList<>();
    for (Row row : following) {
      List<String> line = new ArrayList<>();
      line.add(row.ingredient().name());
      for (Nutrient term : terms) {
        line.add(figure(row, term));
      }
      line.add(figure(row, nutrient));
      lines.add(line);
    }
    String source =
        formula.source().map(from -> "source " + RowContents.source(from)).orElse("no source");
    tables.add(
        new Worked(
            nutrient.title() + " by its formula",
            heads,
            lines,
            false,
            List.of(
                nutrient.name() + " = " + formula.asWritten() + ", " + source + ".",
                "A result is rounded, as are the figures that it follows from; a figure below"
                    + " zero counts as zero.")));
  }

  private void byCoefficient(Nutrient nutrient, List<Row> following) {
    Optional<Nutrient> found = nutrient.digestibleOf().flatMap(feed.nutrients()::named);
    if (found.isEmpty()) {
      return;
    }
    Nutrient whole = found.get();
    List<List<String>> lines = new ArrayList<>();
    List<String> standIns = new ArrayList<>();
    for (Row row : following) {
      Optional<Coefficient> part = contents.coefficient(row, nutrient);
      if (part.isPresent()) {
        lines.add(
            List.of(
                row.ingredient().name(),
                figure(row, whole),
                Figures.plain(part.get().part(), Unit.PERCENT),
                figure(row, nutrient),
                RowContents.source(part.get().told().source()) + holdsFor(part.get().told())));
        if (part.get().standsInFor(nutrient)) {
          standIns.add(row.ingredient().name());
        }
      }
    }
    List<String> notes = new ArrayList<>();
    notes.add(
        "A coefficient stands in ingredients/NAME.yaml under digestibility: " + whole.name() + ".");
    if (!standIns.isEmpty()) {
      notes.add(
          "The coefficient of "
              + nutrient.standsIn().orElse("")
              + " stands in for that of "
              + whole.name()
              + ", which is not told: "
              + String.join(", ", standIns)
              + ".");
    }
    tables.add(
        new Worked(
            nutrient.title() + " by the coefficient of each ingredient",
            List.of(
                Head.ofWords("Ingredient"),
                Head.ofFigures(head(whole)),
                Head.ofFigures("× Coefficient"),
                Head.ofFigures("= " + head(nutrient)),
                Head.ofWords("Coefficient from")),
            lines,
            false,
            notes));
  }

  private static String holdsFor(Digestibility part) {
    return part.species().map(fish -> ", for " + fish).orElse("")
        + part.process().map(kind -> ", " + kind.word()).orElse("");
  }

  /** What is written for a species, beside the whole of which it is a part. */
  private void partForSpecies(Nutrient nutrient) {
    Optional<Nutrient> whole = nutrient.partOf().flatMap(feed.nutrients()::named);
    List<List<String>> lines = new ArrayList<>();
    for (Row row : rows) {
      Optional<RowContents.Written> written = contents.written(row, nutrient);
      if (whole.isPresent() && written.flatMap(one -> one.species()).isPresent()) {
        double all = row.composition().expected().at(whole.get().index());
        double part = row.composition().expected().at(nutrient.index());
        lines.add(
            List.of(
                row.ingredient().name(),
                figure(row, whole.get()),
                all > 0 ? Figures.fixed(part / all * 100, PERCENT_DECIMALS) + " %" : "",
                written.get().content().asWritten(),
                RowContents.source(written.get().content().source())
                    + ", for "
                    + written.get().species().orElse("")));
      }
    }
    if (!lines.isEmpty()) {
      tables.add(
          new Worked(
              nutrient.title() + " as it is written for the species",
              List.of(
                  Head.ofWords("Ingredient"),
                  Head.ofFigures("Of " + whole.map(Derivations::head).orElse("")),
                  Head.ofFigures("Part"),
                  Head.ofFigures(head(nutrient)),
                  Head.ofWords("Written in")),
              lines,
              false,
              List.of("The content is what is written; the part is what that comes to.")));
    }
  }

  private static String head(Nutrient nutrient) {
    return nutrient.title() + " " + nutrient.unit().symbol();
  }

  private static String figure(Row row, Nutrient nutrient) {
    double figure = nutrient.unit().fromBase(row.composition().expected().at(nutrient.index()));
    return figure == 0 ? "0" : Figures.fixed(figure, Figures.decimals(figure));
  }
}
