package dev.pellucid.engine.larder;

import dev.pellucid.engine.larder.Larder.Group;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The data files of a folder to a {@link Larder} and findings; never an exception for what a person
 * wrote.
 *
 * <p>The place of a file says what it tells. What others name is read before what names it: the
 * settings, sources, groups, stability classes, nutrients, species, plant, ingredients, practice
 * and prices. A file that cannot be read is one finding, and what it would have declared is then
 * never called unknown elsewhere.
 */
public final class LarderReader {
  private final List<Finding> findings = new ArrayList<>();
  private final Places places;
  private final Sources sources;

  private LarderReader(SortedMap<String, SourceFile> files, SortedMap<String, SourceFile> closed) {
    SortedMap<String, DataFile> read = new TreeMap<>();
    files.forEach((relative, file) -> read.put(relative, DataFile.of(relative, file)));
    closed.forEach((relative, named) -> read.put(relative, DataFile.closed(relative, named)));
    this.places = new Places(List.copyOf(read.values()));
    this.sources = new Sources(places.file(Sources.FILE), findings);
  }

  /**
   * Reads the data files of one folder.
   *
   * @param files every YAML file under its path below it: {@code ingredients/maize.yaml}
   * @param closed those that have no text that can be had, with their names alone; what is wrong
   *     with them was said elsewhere
   */
  public static Stocked read(
      SortedMap<String, SourceFile> files, SortedMap<String, SourceFile> closed) {
    return new LarderReader(files, closed).stocked();
  }

  /** Whether a finding says that a file stands where no data is read, whatever it holds. */
  public static boolean isMisplaced(Finding finding) {
    return finding.code().equals(Places.MISPLACED);
  }

  /** Every code that reading a larder can give, those of YAML left out. */
  public static List<Code> codes() {
    return Stream.of(
            KeyFindings.CODES,
            FigureFindings.CODES,
            ReferenceFindings.CODES,
            NutrientFindings.CODES,
            SettingsReader.CODES,
            LotFindings.CODES,
            List.of(
                SteamReader.ROWS,
                SequenceReader.CODE,
                ToleranceReader.CODE,
                Places.MISPLACED,
                PlantReader.SCALE,
                ParticleReader.PARTICLE))
        .flatMap(Collection::stream)
        .toList();
  }

  private Stocked stocked() {
    places.warn(findings);
    Settings settings = new SettingsReader(findings).read(places.file(SettingsReader.FILE));
    SortedMap<String, Group> groups =
        new GroupsReader(findings).read(places.file(GroupsReader.FILE));
    Map<String, Retention> retention =
        new RetentionReader(sources, findings).read(places.file(RetentionReader.FILE));
    Known classes = classes(retention.keySet());
    NutrientsReader nutrientsReader = new NutrientsReader(sources, classes, findings);
    Nutrients nutrients =
        nutrientsReader.read(places.in(Places.NUTRIENTS), settings.place().file());
    Known nutrientNames = nutrientsReader.known();
    SortedMap<String, Species> species = species();
    Names names =
        new Names(sources, groups(groups.keySet()), nutrientNames, known(species), classes);
    SortedMap<String, Ingredient> ingredients = ingredients(nutrients, names, groups.values());
    LotsReader lots = new LotsReader(nutrients, names, ingredientNames(ingredients), findings);
    lots.read(places.in(Places.LOTS));
    SortedMap<String, List<Price>> prices = prices(settings, ingredientNames(ingredients));
    Larder larder =
        new Larder(
            settings,
            sources.byId(),
            nutrients,
            groups,
            ingredients,
            species,
            plant(settings),
            label(settings, nutrients, names),
            practice(retention, nutrientNames, sequence(names, nutrients, groups, ingredients)),
            prices,
            isWhole(places.in(Places.PRICES)),
            lots.byNumber(),
            new BatchRecords(ingredientNames(ingredients), findings)
                .read(places.in(Places.BATCHES), lots));
    return new Stocked(larder, inOrder());
  }

  private List<Finding> inOrder() {
    Set<Finding> all = new LinkedHashSet<>();
    places.files().forEach(file -> all.addAll(file.read().findings()));
    all.addAll(findings);
    return all.stream().sorted().toList();
  }

  private Known classes(Collection<String> classes) {
    return new Known(
        ReferenceFindings.STABILITY,
        "a stability class",
        RetentionReader.FILE,
        classes,
        isWhole(places.file(RetentionReader.FILE)));
  }

  private Known groups(Collection<String> groups) {
    return new Known(
        ReferenceFindings.GROUP,
        "a group",
        GroupsReader.FILE,
        groups,
        isWhole(places.file(GroupsReader.FILE)));
  }

  /** Species and their groups. */
  private Known known(SortedMap<String, Species> species) {
    Set<String> words = new LinkedHashSet<>(species.keySet());
    species.values().forEach(one -> words.addAll(one.groups()));
    boolean whole = places.in(Places.SPECIES).stream().allMatch(it -> it.read().whole());
    return new Known(
        ReferenceFindings.SPECIES, "a species or group of species", "species/", words, whole);
  }

  private static boolean isWhole(Optional<DataFile> file) {
    return file.map(it -> it.read().whole()).orElse(true);
  }

  private SortedMap<String, Species> species() {
    SortedMap<String, Species> species = new TreeMap<>();
    SpeciesReader reader = new SpeciesReader(sources, findings);
    for (DataFile file : places.in(Places.SPECIES)) {
      if (file.isNamed("a species", findings)) {
        Species one = reader.read(file);
        Species earlier = species.putIfAbsent(one.name(), one);
        if (earlier != null) {
          findings.add(
              ReferenceFindings.nameTwice(
                  one.name(), "a species", one.declared(), earlier.declared(), "another"));
        }
      }
    }
    return species;
  }

  private SortedMap<String, Ingredient> ingredients(
      Nutrients nutrients, Names names, Collection<Group> groups) {
    List<Ingredient> all = new ArrayList<>();
    IngredientReader reader = new IngredientReader(nutrients, names, findings);
    for (DataFile file : places.in(Places.INGREDIENTS)) {
      if (file.isNamed("an ingredient", findings)) {
        all.add(reader.read(file));
      }
    }
    new NameClashes(findings).check(groups, all, reader.formerly());
    SortedMap<String, Ingredient> ingredients = new TreeMap<>();
    all.forEach(one -> ingredients.putIfAbsent(one.name(), one));
    return ingredients;
  }

  private Optional<Plant> plant(Settings settings) {
    TreeMap<String, Plant> plants = new TreeMap<>();
    PlantReader reader = new PlantReader(findings);
    for (DataFile file : places.in(Places.PLANT)) {
      if (file.isNamed("a plant", findings)) {
        plants.put(file.stem(), reader.read(file));
      }
    }
    Optional<String> name = settings.plant();
    if (name.isPresent() && !plants.containsKey(name.get())) {
      Known known = new Known(ReferenceFindings.PLANT, "a plant", "plant/", plants.keySet(), true);
      known.check(new Scalar(name.get(), false, placeOf("plant", settings)), findings);
    }
    return name.map(plants::get);
  }

  private Optional<LabelRules> label(Settings settings, Nutrients nutrients, Names names) {
    TreeMap<String, LabelRules> sets = new TreeMap<>();
    LabelReader reader = new LabelReader(nutrients, names, findings);
    boolean whole = true;
    for (DataFile file : places.in(Places.LABEL)) {
      whole &= file.read().whole();
      if (file.isNamed("a set of label rules", findings)) {
        reader.read(file).ifPresent(rules -> sets.put(file.stem(), rules));
      }
    }
    Optional<String> name = settings.label();
    if (name.isPresent()) {
      Known known =
          new Known(
              ReferenceFindings.LABEL, "a set of label rules", "label/", sets.keySet(), whole);
      known.check(new Scalar(name.get(), false, placeOf("label", settings)), findings);
    }
    return name.map(sets::get);
  }

  private Span placeOf(String key, Settings settings) {
    return places
        .file(SettingsReader.FILE)
        .flatMap(file -> file.fields(Vocabulary.SETTINGS, new ArrayList<>()))
        .map(fields -> fields.placeOf(key))
        .orElse(settings.place());
  }

  private List<Carryover> sequence(
      Names names,
      Nutrients nutrients,
      SortedMap<String, Group> groups,
      SortedMap<String, Ingredient> ingredients) {
    Set<String> holdable = new LinkedHashSet<>(groups.keySet());
    holdable.addAll(ingredients.keySet());
    Known known =
        new Known(
            ReferenceFindings.INGREDIENT,
            "a group or an ingredient",
            "groups.yaml or ingredients/",
            holdable,
            isWhole(places.file(GroupsReader.FILE)));
    return new SequenceReader(
            names, nutrients, groups, ingredients, known, ingredientNames(ingredients), findings)
        .read(places.file(SequenceReader.FILE));
  }

  private Practice practice(
      Map<String, Retention> retention, Known nutrients, List<Carryover> sequence) {
    CautionsReader cautions = new CautionsReader(places.file(CautionsReader.FILE), findings);
    return new Practice(
        new BoundsReader(sources, findings).read(places.file(BoundsReader.FILE)),
        retention,
        new SpreadsReader(sources, nutrients, findings).read(places.file(SpreadsReader.FILE)),
        new DensitiesReader(sources, findings).read(places.file(DensitiesReader.FILE)),
        new SteamReader(sources, findings).read(places.file(SteamReader.FILE)),
        cautions.cautions(),
        sequence,
        cautions.inspection());
  }

  private static Known ingredientNames(SortedMap<String, Ingredient> ingredients) {
    return new Known(
        ReferenceFindings.INGREDIENT, "an ingredient", "ingredients/", ingredients.keySet(), true);
  }

  private SortedMap<String, List<Price>> prices(Settings settings, Known ingredients) {
    return new PricesReader(sources, ingredients, settings.currency(), findings)
        .read(places.in(Places.PRICES));
  }

  /** Whether no file of these has an error. */
  private boolean isWhole(List<DataFile> files) {
    Set<String> broken = new HashSet<>();
    for (Finding finding : findings) {
      if (finding.severity() == Severity.ERROR) {
        broken.add(finding.span().file().path());
      }
    }
    return files.stream()
        .allMatch(file -> file.read().whole() && !broken.contains(file.source().path()));
  }
}
