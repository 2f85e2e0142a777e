package dev.pellucid.engine.plan;

import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.data.Ingredient.Trait;
import dev.pellucid.engine.data.Practice;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.syntax.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the folder warns of, brought to where the work is; each sentence once, where it bites first.
 * A trait inside a premix counts for the premix, since its dust is the same. Asked in the order of
 * the work.
 */
final class Cautions {
  private static final String FOR_THE_WHOLE_STEP = "";
  private static final String EVERY_LINE = "Every line";
  private static final int HANDFUL = 4;
  private static final String BETWEEN_SENTENCES = "(?<=[.!?]) +";

  private final ComputedFeed feed;
  private final Practice practice;

  /** Where a sentence was said, by whom it is about. */
  private final Map<Said, Optional<Step>> said = new LinkedHashMap<>();

  private record Said(String about, String sentence) {}

  Cautions(ComputedFeed feed, Practice practice) {
    this.feed = feed;
    this.practice = practice;
  }

  List<Caution> ofMix() {
    return warned(about(Place.MIX), Optional.empty()).first();
  }

  Warned of(Step step) {
    Map<String, Set<String>> sentences = new LinkedHashMap<>();
    for (String text : practice.cautions().getOrDefault(step.word(), List.of())) {
      add(sentences, text, FOR_THE_WHOLE_STEP);
    }
    if (step == Step.COAT) {
      about(Place.COAT).forEach((text, titles) -> titles.forEach(t -> add(sentences, text, t)));
    }
    return warned(sentences, Optional.of(step));
  }

  /** Sentences about the same things stand together. */
  private Warned warned(Map<String, Set<String>> sentences, Optional<Step> here) {
    Map<String, List<String>> first = new LinkedHashMap<>();
    Set<Optional<Step>> again = new LinkedHashSet<>();
    sentences.forEach(
        (sentence, titles) -> {
          List<String> fresh = new ArrayList<>();
          for (String title : titles) {
            Optional<Step> before = said.putIfAbsent(new Said(title, sentence), here);
            if (before == null) {
              fresh.add(title);
            } else {
              again.add(before);
            }
          }
          if (!fresh.isEmpty()) {
            first
                .computeIfAbsent(String.join(", ", fresh), none -> new ArrayList<>())
                .add(sentence);
          }
        });
    List<Caution> cautions = new ArrayList<>();
    first.forEach((about, list) -> cautions.add(new Caution(about, String.join(" ", list))));
    return new Warned(cautions, List.copyOf(again));
  }

  private Map<String, Set<String>> about(Place place) {
    Map<String, Set<String>> sentences = new LinkedHashMap<>();
    List<Row> rows = feed.rows().stream().filter(row -> row.line().place() == place).toList();
    for (Trait trait : Trait.values()) {
      String word = trait.name().toLowerCase(Locale.ROOT).replace('_', '-');
      List<String> texts = practice.cautions().getOrDefault(word, List.of());
      rows.stream()
          .filter(row -> row.ingredient().traits().contains(trait))
          .forEach(row -> texts.forEach(text -> add(sentences, text, title(row))));
    }
    for (Row row : rows) {
      row.ingredient().cautions().forEach(text -> add(sentences, text, title(row)));
    }
    sentences.replaceAll((sentence, titles) -> summed(titles));
    return sentences;
  }

  /** Beyond a handful of names nobody reads them; then it holds for all that is weighed. */
  private static Set<String> summed(Set<String> titles) {
    return titles.size() > HANDFUL ? Set.of(EVERY_LINE) : titles;
  }

  private static String title(Row row) {
    return row.line().material().title();
  }

  private static void add(Map<String, Set<String>> sentences, String text, String title) {
    for (String sentence : text.split(BETWEEN_SENTENCES, -1)) {
      sentences.computeIfAbsent(sentence, none -> new LinkedHashSet<>()).add(title);
    }
  }
}
