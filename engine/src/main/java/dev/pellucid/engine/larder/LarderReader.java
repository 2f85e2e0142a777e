package dev.pellucid.engine.larder;

import dev.pellucid.engine.larder.Source.Standing;
import dev.pellucid.engine.yaml.Yaml;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Mapping;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.engine.yaml.YamlRead;
import dev.pellucid.engine.yaml.YamlReader;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Kind;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiConsumer;

/**
 * The data files of a folder to its larder: sources and groups first, then nutrients, practice,
 * species and plant, then ingredients, then prices, since each names those before.
 */
public final class LarderReader {
  private static final Code NO_SETTINGS = new Code("settings-missing");
  private static final Code NO_MOISTURE = new Code("data-no-moisture");

  private final SortedMap<String, SourceFile> files;
  private final List<Finding> findings = new ArrayList<>();
  private final SortedMap<String, Source> sources = new TreeMap<>();
  private final SortedMap<String, Larder.Group> groups = new TreeMap<>();
  private final SortedMap<String, Species> species = new TreeMap<>();
  private final SortedMap<String, Plant> plants = new TreeMap<>();
  private final SortedMap<String, Ingredient> ingredients = new TreeMap<>();
  private final SortedMap<String, List<Price>> prices = new TreeMap<>();
  private final Shelf shelf = new Shelf(findings, sources);

  private LarderReader(SortedMap<String, SourceFile> files) {
    this.files = files;
  }

  /** Reads the files, each under its path below the folder: {@code ingredients/maize.yaml}. */
  public static Stocked read(SortedMap<String, SourceFile> files) {
    return new LarderReader(files).read();
  }

  private Stocked read() {
    one("sources.yaml", Vocabulary.SOURCES, this::sources);
    one("groups.yaml", Vocabulary.GROUPS, this::groups);
    NutrientReader nutrientReader = new NutrientReader(shelf);
    each("nutrients/", Vocabulary.NUTRIENTS, (file, block) -> nutrientReader.read(block));
    Nutrients nutrients = new Nutrients(nutrientReader.nutrients());
    PracticeReader practice = new PracticeReader(shelf, nutrients);
    for (String name : List.of("bounds", "retention", "spreads", "steam", "cautions")) {
      String fileName = name + ".yaml";
      one(
          "practice/" + fileName,
          PracticeReader.keys(fileName).orElseThrow(),
          block -> practice.read(fileName, block));
    }
    SpeciesReader speciesReader = new SpeciesReader(shelf);
    each(
        "species/",
        Vocabulary.SPECIES,
        (file, block) -> species.put(file.stem(), speciesReader.read(file, block)));
    each("plant/", Vocabulary.PLANT, (file, block) -> plants.put(file.stem(), plant(file, block)));
    ingredients(new IngredientReader(shelf, nutrients, groups.keySet()));
    Settings settings = settings();
    each("prices/", Vocabulary.PRICES, (file, block) -> prices(block, settings.currency()));
    if (nutrients.moisture() < 0) {
      findings.add(
          Finding.error(NO_MOISTURE, settings.place(), "no file of nutrients/ tells moisture")
              .helping("add a nutrient moisture with unit \"%\" and of-the-whole: yes"));
    }
    Optional<Plant> plant = settings.plant().flatMap(name -> Optional.ofNullable(plants.get(name)));
    return new Stocked(
        new Larder(
            settings,
            sources,
            nutrients,
            groups,
            ingredients,
            species,
            plant,
            practice.practice(),
            prices),
        findings);
  }

  private void one(String path, Keys keys, java.util.function.Consumer<Fields> reader) {
    SourceFile file = files.get(path);
    if (file != null) {
      fields(file, keys).ifPresent(reader);
    }
  }

  private void each(String folder, Keys keys, BiConsumer<SourceFile, Fields> reader) {
    files.forEach(
        (path, file) -> {
          if (path.startsWith(folder)) {
            fields(file, keys).ifPresent(block -> reader.accept(file, block));
          }
        });
  }

  private Optional<Fields> fields(SourceFile file, Keys keys) {
    YamlRead read = YamlReader.read(file);
    findings.addAll(read.findings());
    if (read.root().isEmpty() && read.findings().isEmpty()) {
      findings.add(KeyFindings.emptyFile(file, keys));
    }
    return read.root().flatMap(root -> Fields.of(root, keys, file.beginning(), findings));
  }

  /** An ingredient whose file cannot be read is still there, so that no recipe calls it unknown. */
  private void ingredients(IngredientReader reader) {
    files.forEach(
        (path, file) -> {
          if (path.startsWith("ingredients/")) {
            int before = findings.size();
            Fields block = fields(file, Vocabulary.INGREDIENT).orElseGet(() -> nothing(file));
            boolean readable = findings.size() == before;
            ingredients.put(file.stem(), reader.read(file, block, readable));
          }
        });
  }

  private static Fields nothing(SourceFile file) {
    Yaml empty = new Mapping(List.of(), file.beginning());
    return Fields.of(empty, Vocabulary.INGREDIENT, file.beginning(), new ArrayList<>())
        .orElseThrow();
  }

  private void sources(Fields file) {
    for (Entry entry : file.others()) {
      file.blockOf(entry, Vocabulary.SOURCE_ENTRY).ifPresent(block -> source(entry.key(), block));
    }
  }

  private void source(Scalar id, Fields block) {
    Standing standing =
        block
            .word("standing", "a standing", Vocabulary.words(Standing.values()))
            .map(word -> Standing.valueOf(IngredientReader.upper(word)))
            .orElse(Standing.INVENTED);
    sources.put(
        id.text(),
        new Source(
            id.text(),
            standing,
            text(block, "cite").orElse(""),
            text(block, "address"),
            text(block, "read"),
            text(block, "licence"),
            id.span()));
  }

  private static Optional<String> text(Fields block, String name) {
    return block.has(name) ? block.text(name).map(Scalar::text) : Optional.empty();
  }

  private void groups(Fields file) {
    for (Entry entry : file.others()) {
      file.textOf(entry)
          .ifPresent(
              title ->
                  groups.put(
                      entry.key().text(),
                      new Larder.Group(entry.key().text(), title.text(), entry.key().span())));
    }
  }

  private Plant plant(SourceFile file, Fields block) {
    return new Plant(
        file.stem(),
        text(block, "name").orElse(file.stem()),
        block.text("shrink").map(t -> shelf.figures().share(t).orElse(0)).orElse(0.0),
        block
            .text("air-temperature")
            .map(t -> shelf.figures().base(t, Kind.TEMPERATURE).orElse(25))
            .orElse(25.0),
        block
            .text("tray-load")
            .map(t -> shelf.figures().base(t, Kind.MASS))
            .orElse(java.util.OptionalDouble.empty()),
        block
            .word("coater", "a coater", Vocabulary.words(Plant.Coater.values()))
            .map(word -> Plant.Coater.valueOf(IngredientReader.upper(word))),
        file.beginning());
  }

  private Settings settings() {
    SourceFile file = files.get("pellucid.yaml");
    if (file == null) {
      SourceFile missing = new SourceFile("pellucid.yaml", "");
      findings.add(
          Finding.error(NO_SETTINGS, missing.beginning(), "the folder has no pellucid.yaml")
              .helping("add one with format: 1, name, currency and jurisdiction"));
      return new Settings("", "EUR", Optional.empty(), Optional.empty(), missing.beginning());
    }
    Fields block = fields(file, Vocabulary.SETTINGS).orElseGet(() -> nothing(file));
    block.word("format", "a format this version reads", List.of("1"));
    Optional<Scalar> plant = block.has("plant") ? block.text("plant") : Optional.empty();
    plant.ifPresent(name -> shelf.known(name, "a plant of plant/", plants.keySet()));
    return new Settings(
        text(block, "name").orElse(""),
        text(block, "currency").orElse("EUR"),
        text(block, "jurisdiction").filter(name -> !name.equals("none")),
        plant.map(Scalar::text),
        block.placeOf("jurisdiction"));
  }

  private void prices(Fields block, String currency) {
    var from = block.text("from").flatMap(shelf.figures()::day);
    Optional<Source> source = shelf.source(block);
    if (from.isEmpty() || source.isEmpty()) {
      return;
    }
    block
        .block("prices", Vocabulary.PRICE_ENTRIES)
        .ifPresent(
            list ->
                list.others()
                    .forEach(
                        entry ->
                            list.textOf(entry)
                                .ifPresent(
                                    text ->
                                        price(
                                            entry.key(),
                                            text,
                                            from.get(),
                                            source.get(),
                                            currency))));
  }

  private void price(
      Scalar name, Scalar text, java.time.LocalDate from, Source source, String currency) {
    shelf.known(name, "an ingredient of this folder", ingredients.keySet());
    FigureReader.currency(text)
        .filter(written -> !written.equals(currency))
        .ifPresent(written -> findings.add(FigureFindings.currency(text, written, currency)));
    shelf
        .figures()
        .base(text, Kind.PRICE)
        .ifPresent(
            perKg ->
                prices
                    .computeIfAbsent(name.text(), n -> new ArrayList<>())
                    .add(new Price(name.text(), from, perKg, text.text(), source, text.span())));
  }
}
