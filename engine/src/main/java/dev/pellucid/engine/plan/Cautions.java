package dev.pellucid.engine.plan;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.larder.Ingredient.Trait;
import dev.pellucid.engine.larder.Practice;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.syntax.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * What the folder warns of, brought to where the work is. A trait inside a premix counts for the
 * premix, since its dust is the same.
 */
final class Cautions {
  private final ComputedFeed feed;
  private final Practice practice;

  Cautions(ComputedFeed feed, Practice practice) {
    this.feed = feed;
    this.practice = practice;
  }

  List<Caution> ofMix() {
    return at(Place.MIX);
  }

  List<Caution> of(Step step) {
    List<Caution> cautions = new ArrayList<>();
    for (String sentence : practice.cautions().getOrDefault(step.word(), List.of())) {
      cautions.add(new Caution("", sentence));
    }
    if (step == Step.COAT) {
      cautions.addAll(at(Place.COAT));
    }
    return cautions;
  }

  private List<Caution> at(Place place) {
    Map<String, Set<String>> titles = new LinkedHashMap<>();
    for (Trait trait : Trait.values()) {
      String word = trait.name().toLowerCase(Locale.ROOT).replace('_', '-');
      for (Row row : rows(place)) {
        if (row.ingredient().traits().contains(trait)) {
          practice
              .cautions()
              .getOrDefault(word, List.of())
              .forEach(sentence -> add(titles, sentence, row));
        }
      }
    }
    for (Row row : rows(place)) {
      row.ingredient().cautions().forEach(sentence -> add(titles, sentence, row));
    }
    return titles.entrySet().stream()
        .map(entry -> new Caution(String.join(", ", entry.getValue()), entry.getKey()))
        .toList();
  }

  private List<Row> rows(Place place) {
    return feed.rows().stream().filter(row -> row.line().place() == place).toList();
  }

  private static void add(Map<String, Set<String>> titles, String sentence, Row row) {
    titles
        .computeIfAbsent(sentence, none -> new LinkedHashSet<>())
        .add(row.line().material().title());
  }
}
