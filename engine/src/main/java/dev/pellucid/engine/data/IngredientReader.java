package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Ingredient.Form;
import dev.pellucid.engine.data.Ingredient.Modified;
import dev.pellucid.engine.data.Ingredient.OnBag;
import dev.pellucid.engine.data.Ingredient.Trait;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.measure.Extent;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One file of {@code ingredients/}. A file that cannot be read, or of which a part cannot, still
 * gives an ingredient, so that recipes do not call it unknown; it is then not whole.
 */
final class IngredientReader {
  private final Nutrients nutrients;
  private final Names names;
  private final Remarks remarks;
  private final FigureReader figures;
  private final List<Scalar> formerly = new ArrayList<>();

  private IngredientReader(Frame frame, Remarks remarks) {
    this.nutrients = frame.nutrients();
    this.names = frame.names();
    this.remarks = remarks;
    this.figures = new FigureReader(remarks);
  }

  /**
   * What a file declares.
   *
   * @param hasKeys whether any key of the file could be read
   * @param formerly where its former names stand
   */
  record Declared(Ingredient ingredient, boolean hasKeys, List<Scalar> formerly) {
    Declared {
      formerly = List.copyOf(formerly);
    }
  }

  static Read<Optional<Declared>> read(DataFile file, Frame frame) {
    Remarks remarks = new Remarks();
    Optional<Declared> declared =
        file.isNamed("an ingredient", remarks)
            ? Optional.of(new IngredientReader(frame, remarks).declared(file))
            : Optional.empty();
    return file.read(declared, remarks);
  }

  private Declared declared(DataFile file) {
    Optional<Fields> fields = file.fields(IngredientVocabulary.INGREDIENT_KEYS, remarks);
    Ingredient ingredient = fields.isPresent() ? ingredient(file, fields.get()) : unread(file);
    boolean whole = file.read().whole() && fields.isPresent() && remarks.isSound();
    IngredientChecks checks = new IngredientChecks(ingredient, nutrients, remarks);
    if (fields.isPresent() && file.read().whole()) {
      checks.run(whole);
    }
    return new Declared(
        whole && checks.hasMoisture() && remarks.isSound() ? ingredient : partly(ingredient),
        fields.isPresent(),
        formerly);
  }

  private Ingredient ingredient(DataFile file, Fields fields) {
    return new Ingredient(
        file.stem(),
        fields.textOr(IngredientVocabulary.NAME, file.stem()),
        formerly(fields),
        groups(fields),
        form(fields),
        traits(fields),
        new ContentsReader(nutrients, names, remarks).read(fields, IngredientVocabulary.CONTENTS),
        new DigestibilityReader(nutrients, names, remarks).read(fields),
        stability(fields),
        protein(fields),
        new CapsReader(names, remarks).read(fields),
        usualShare(fields),
        figures.positive(fields.text(IngredientVocabulary.BULK_DENSITY), Extent.DENSITY),
        new ParticleReader(names.sources(), remarks).read(fields),
        figures.share(fields.text(IngredientVocabulary.USE_BELOW_MOISTURE)),
        fields.strings(IngredientVocabulary.CAUTIONS),
        additive(fields),
        bag(
            fields,
            fields.string(IngredientVocabulary.LABEL_NAME),
            fields.placeOf(IngredientVocabulary.NAME)),
        "",
        true,
        fields.has(IngredientVocabulary.NAME)
            ? fields.placeOf(IngredientVocabulary.NAME)
            : fields.place());
  }

  private static Ingredient unread(DataFile file) {
    return new Ingredient(
        file.stem(),
        file.stem(),
        List.of(),
        Set.of(),
        Form.MEAL,
        Set.of(),
        List.of(),
        List.of(),
        Map.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        OptionalDouble.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        List.of(),
        Optional.empty(),
        new OnBag(Optional.empty(), Modified.UNTOLD, file.place()),
        "",
        false,
        file.place());
  }

  private static Ingredient partly(Ingredient one) {
    return new Ingredient(
        one.name(),
        one.title(),
        one.formerly(),
        one.groups(),
        one.form(),
        one.traits(),
        one.contents(),
        one.digestibility(),
        one.stability(),
        one.protein(),
        one.caps(),
        one.usualShare(),
        one.bulkDensity(),
        one.particle(),
        one.maxMoisture(),
        one.cautions(),
        one.additive(),
        one.bag(),
        one.lot(),
        false,
        one.declared());
  }

  private Optional<Ingredient.Usual> usualShare(Fields fields) {
    Optional<Scalar> written = fields.text(IngredientVocabulary.USUAL_SHARE);
    Optional<FigureReader.Ends> ends =
        written.isPresent() ? figures.part(written.get()) : Optional.empty();
    return ends.isPresent()
        ? Optional.of(
            new Ingredient.Usual(
                ends.get().low(), ends.get().high(), written.get().text(), written.get().span()))
        : Optional.empty();
  }

  private List<String> formerly(Fields fields) {
    for (Scalar name : fields.texts(IngredientVocabulary.FORMERLY)) {
      if (Vocabulary.isName(name.text())) {
        formerly.add(name);
      } else {
        remarks.add(KeyFindings.name(name.span(), name.text(), "an ingredient"));
      }
    }
    List<String> names = new ArrayList<>();
    for (Scalar name : formerly) {
      names.add(name.text());
    }
    return names;
  }

  private Set<String> groups(Fields fields) {
    Set<String> groups = new LinkedHashSet<>();
    for (Scalar group : fields.texts(IngredientVocabulary.GROUPS)) {
      names.groups().check(group, remarks);
      groups.add(group.text());
    }
    return groups;
  }

  private static Form form(Fields fields) {
    return fields.oneOf(IngredientVocabulary.FORM, "a form").orElse(Form.MEAL);
  }

  private static Set<Trait> traits(Fields fields) {
    return new LinkedHashSet<>(fields.allOf(IngredientVocabulary.TRAITS, "a trait"));
  }

  private Map<String, String> stability(Fields fields) {
    Map<String, String> classes = new HashMap<>();
    Optional<Fields> block = fields.block(IngredientVocabulary.STABILITY);
    if (block.isPresent()) {
      for (Entry entry : block.get().others()) {
        stability(block.get(), entry, classes);
      }
    }
    return classes;
  }

  private void stability(Fields block, Entry entry, Map<String, String> classes) {
    boolean known = names.nutrients().check(entry.key(), remarks);
    Optional<Scalar> word = block.textOf(entry);
    if (known && word.isPresent()) {
      String name = word.get().text();
      if (name.equals(Nutrient.STABLE)
          || names.classes().check(word.get(), List.of(Nutrient.STABLE), remarks)) {
        classes.put(entry.key().text(), name);
      }
    }
  }

  private List<String> protein(Fields fields) {
    List<String> species = new ArrayList<>();
    for (Scalar one : fields.texts(IngredientVocabulary.PROTEIN)) {
      names.species().check(one, remarks);
      species.add(one.text());
    }
    return species;
  }

  /**
   * What a file says for the bag of an ingredient or of a lot of it.
   *
   * @param otherwise where to point where it says nothing
   */
  static OnBag bag(Fields fields, Optional<String> name, Span otherwise) {
    Optional<Scalar> modified = fields.word(IngredientVocabulary.GENETICALLY_MODIFIED, "an answer");
    return modified.isPresent()
        ? new OnBag(
            name, Vocabulary.named(Modified.class, modified.get().text()), modified.get().span())
        : new OnBag(name, Modified.UNTOLD, otherwise);
  }

  private Optional<Additive> additive(Fields fields) {
    Optional<Fields> block = fields.block(IngredientVocabulary.ADDITIVE);
    return block.isPresent() ? Optional.of(additiveOf(block.get())) : Optional.empty();
  }

  private Additive additiveOf(Fields block) {
    Optional<Scalar> nutrient = block.text(IngredientVocabulary.ADDITIVE_NUTRIENT);
    if (nutrient.isPresent()) {
      names.nutrients().check(nutrient.get(), remarks);
    }
    return new Additive(
        block.textOr(IngredientVocabulary.ADDITIVE_FUNCTIONAL_GROUP, ""),
        block.string(IngredientVocabulary.ADDITIVE_NUMBER),
        nutrient.isPresent() ? Optional.of(nutrient.get().text()) : Optional.empty(),
        names.sources().of(block));
  }
}
