package dev.pellucid.engine.larder;

import dev.pellucid.engine.larder.Digestibility.ProcessKind;
import dev.pellucid.engine.larder.Ingredient.Cap;
import dev.pellucid.engine.larder.Ingredient.ContentBlock;
import dev.pellucid.engine.larder.Ingredient.Form;
import dev.pellucid.engine.larder.Ingredient.Trait;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** A file of {@code ingredients/}. */
final class IngredientReader {
  static final Code NO_MOISTURE = new Code("data-moisture-missing");
  static final Code ADDS_UP = new Code("data-adds-up");
  private static final double MOST_OF_THE_WHOLE = 1.005;

  private final Shelf shelf;
  private final Nutrients nutrients;
  private final Collection<String> groups;

  IngredientReader(Shelf shelf, Nutrients nutrients, Collection<String> groups) {
    this.shelf = shelf;
    this.nutrients = nutrients;
    this.groups = groups;
  }

  Ingredient read(SourceFile file, Fields block, boolean readable) {
    int before = shelf.findings().size();
    List<Scalar> named = block.texts("groups");
    named.forEach(group -> shelf.known(group, "a group of groups.yaml", groups));
    List<ContentBlock> contents = contents(block);
    List<Digestibility> digestibility = digestibility(block);
    Map<String, String> stability = stability(block);
    List<Cap> caps = caps(block);
    OptionalDouble wettest =
        block.text("use-below-moisture").map(shelf.figures()::share).orElse(OptionalDouble.empty());
    Form form =
        block
            .word("form", "a form", Vocabulary.words(Form.values()))
            .map(word -> Form.valueOf(upper(word)))
            .orElse(Form.MEAL);
    Set<Trait> traits = new HashSet<>();
    block
        .words("traits", "a trait", Vocabulary.words(Trait.values()))
        .forEach(word -> traits.add(Trait.valueOf(upper(word))));
    checkWhole(file, contents);
    return new Ingredient(
        file.stem(),
        block.text("name").map(Scalar::text).orElse(file.stem()),
        strings(block.texts("formerly")),
        Set.copyOf(strings(named)),
        form,
        traits,
        contents,
        digestibility,
        stability,
        strings(block.texts("protein")),
        caps,
        wettest,
        strings(block.texts("cautions")),
        readable && shelf.findings().size() == before,
        file.beginning());
  }

  static String upper(Scalar word) {
    return word.text().toUpperCase(Locale.ROOT).replace('-', '_');
  }

  private static List<String> strings(List<Scalar> scalars) {
    return scalars.stream().map(Scalar::text).distinct().toList();
  }

  private List<ContentBlock> contents(Fields block) {
    List<ContentBlock> blocks = new ArrayList<>();
    for (Fields one : block.blocks("contents", Vocabulary.CONTENTS)) {
      Optional<Source> source = shelf.source(one);
      if (source.isEmpty()) {
        continue;
      }
      Map<String, Content> values = new HashMap<>();
      for (Entry entry : one.others()) {
        if (nutrient(entry)) {
          Nutrient nutrient = nutrients.named(entry.key().text()).orElseThrow();
          one.textOf(entry)
              .flatMap(text -> shelf.figures().content(text, nutrient.unit().kind(), source.get()))
              .ifPresent(content -> values.put(nutrient.name(), content));
        }
      }
      blocks.add(new ContentBlock(one.text("species").map(Scalar::text), source.get(), values));
    }
    return blocks;
  }

  private boolean nutrient(Entry entry) {
    return shelf.known(entry.key(), "a nutrient of this folder", nutrients.names());
  }

  private List<Digestibility> digestibility(Fields block) {
    List<Digestibility> rows = new ArrayList<>();
    for (Fields one : block.blocks("digestibility", Vocabulary.DIGESTIBILITY)) {
      Map<String, Double> coefficients = new HashMap<>();
      for (Entry entry : one.others()) {
        if (nutrient(entry)) {
          one.textOf(entry)
              .map(shelf.figures()::share)
              .ifPresent(share -> share.ifPresent(v -> coefficients.put(entry.key().text(), v)));
        }
      }
      Optional<ProcessKind> process =
          one.word("process", "a kind of process", Vocabulary.words(ProcessKind.values()))
              .map(word -> ProcessKind.valueOf(upper(word)));
      Optional<String> species = one.text("species").map(Scalar::text);
      shelf
          .source(one)
          .ifPresent(s -> rows.add(new Digestibility(species, process, s, coefficients)));
    }
    return rows;
  }

  private Map<String, String> stability(Fields block) {
    Map<String, String> classes = new HashMap<>();
    block
        .block("stability", Vocabulary.CLASSES)
        .ifPresent(
            one ->
                one.others()
                    .forEach(
                        entry ->
                            one.textOf(entry)
                                .ifPresent(text -> classes.put(entry.key().text(), text.text()))));
    return classes;
  }

  private List<Cap> caps(Fields block) {
    List<Cap> caps = new ArrayList<>();
    for (Fields one : block.blocks("caps", Vocabulary.CAP)) {
      Optional<Source> source = shelf.source(one);
      Optional<Scalar> most = one.text("max");
      OptionalDouble share = most.map(shelf.figures()::share).orElse(OptionalDouble.empty());
      Optional<Scalar> species = one.text("species");
      if (source.isPresent() && share.isPresent() && species.isPresent()) {
        caps.add(
            new Cap(
                species.get().text(),
                share.getAsDouble(),
                most.orElseThrow().text(),
                one.text("because").map(Scalar::text).orElse(""),
                source.get(),
                most.orElseThrow().span()));
      }
    }
    return caps;
  }

  private void checkWhole(SourceFile file, List<ContentBlock> contents) {
    double sum = 0;
    boolean moisture = false;
    for (ContentBlock block : contents) {
      moisture |= block.byNutrient().containsKey(Nutrients.MOISTURE);
      if (block.species().isEmpty()) {
        for (Nutrient nutrient : nutrients.inOrder()) {
          Content content = block.byNutrient().get(nutrient.name());
          sum += content != null && nutrient.ofTheWhole() ? content.low() : 0;
        }
      }
    }
    if (!moisture) {
      shelf
          .findings()
          .add(
              Finding.error(
                      NO_MOISTURE, file.beginning(), file.stem() + " does not tell its moisture")
                  .helping("add a line like: moisture: 10 %"));
    }
    if (sum > MOST_OF_THE_WHOLE) {
      String told = dev.pellucid.engine.quantity.Figures.plain(sum * 100);
      shelf
          .findings()
          .add(
              Finding.error(
                      ADDS_UP,
                      file.beginning(),
                      "the parts of " + file.stem() + " add up to " + told + " %")
                  .helping("mend the contents: together they cannot be more than 100 %"));
    }
  }
}
