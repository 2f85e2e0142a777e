package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.data.Nutrient.Formula;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.measure.Kind;
import dev.pellucid.measure.Unit;
import dev.pellucid.text.BundledPath;
import dev.pellucid.text.Span;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * {@code nutrients/}: first every name and its unit, then what each says of the others, since a
 * formula may name a nutrient that stands below it or in a later file.
 */
final class NutrientsReader {
  private final Sources sources;
  private final Known classes;
  private final Known groups;
  private final Remarks remarks;
  private final Map<String, Draft> drafts = new LinkedHashMap<>();
  private final Map<String, Kind> kinds = new HashMap<>();
  private final Set<String> mendFirst = new LinkedHashSet<>();
  private final Set<String> unread = new LinkedHashSet<>();
  private boolean told;

  NutrientsReader(Sources sources, Known classes, Known groups, Remarks remarks) {
    this.sources = sources;
    this.classes = classes;
    this.groups = groups;
    this.remarks = remarks;
  }

  /** A nutrient of which so far only its own words are known. */
  private record Draft(Scalar name, Fields fields, Optional<Scalar> symbol, Unit unit) {
    Kind kind() {
      return unit.kind();
    }
  }

  /**
   * @param files in the order in which they are shown
   * @param settings where it is said that there are none
   */
  Nutrients read(List<DataFile> files, Span settings) {
    told = !files.isEmpty();
    for (DataFile file : files) {
      names(file);
    }
    water(files, settings);
    for (Draft draft : drafts.values()) {
      kinds.put(draft.name().text(), draft.kind());
    }
    Known known = known();
    NutrientCycles cycles = new NutrientCycles();
    int index = 0;
    for (Draft draft : drafts.values()) {
      cycles.add(nutrient(draft, index++, known));
    }
    List<Nutrient> nutrients = cycles.broken(remarks);
    if (whole()) {
      StandInSisters.look(nutrients, remarks);
    }
    return new Nutrients(nutrients, List.copyOf(mendFirst));
  }

  /**
   * What the names of nutrients are, for all that name one. Where no file tells any, or one could
   * not be read, no name is called unknown: it may stand in what is missing.
   */
  Known known() {
    return new Known(
        ReferenceFindings.NUTRIENT, "a nutrient", "nutrients/", drafts.keySet(), told && whole());
  }

  private boolean whole() {
    return unread.isEmpty();
  }

  /** Without water no feed can be computed; where a file could not be read, it may be in there. */
  private void water(List<DataFile> files, Span settings) {
    mendFirst.addAll(unread);
    Draft water = drafts.get(Nutrients.MOISTURE);
    if (water != null && water.kind() != Kind.SHARE) {
      mendFirst.add(water.name().span().file().fileName());
    } else if (water == null && whole()) {
      Span place = told ? files.get(0).source().beginning() : settings;
      mendFirst.add(told ? place.file().fileName() : Places.NUTRIENTS + "/");
      remarks.add(
          told || !SettingsReader.isOwn(settings.file())
              ? NutrientFindings.noMoistureNutrient(place)
              : NutrientFindings.nothingOwn(place));
    }
  }

  private void names(DataFile file) {
    if (!file.read().whole()) {
      unread.add(file.source().fileName());
    }
    Optional<Fields> fields = file.fields(NutrientVocabulary.NUTRIENTS_KEYS, remarks);
    if (fields.isPresent()) {
      for (Entry entry : fields.get().others()) {
        name(fields.get(), entry);
      }
    }
  }

  private void name(Fields fields, Entry entry) {
    Scalar name = entry.key();
    if (!Vocabulary.isName(name.text())) {
      remarks.add(KeyFindings.name(name.span(), name.text(), "a nutrient"));
      return;
    }
    Draft earlier = drafts.get(name.text());
    if (earlier != null && comesAlong(name)) {
      // The folder tells it otherwise, in a file of another name.
      return;
    }
    if (earlier != null && !comesAlong(earlier.name())) {
      remarks.add(
          ReferenceFindings.nameTwice(
              name.text(), "a nutrient", name.span(), earlier.name().span(), "another"));
      return;
    }
    Optional<Fields> block = fields.blockOf(entry, NutrientVocabulary.NUTRIENT_KEYS);
    if (block.isPresent()) {
      drafts.put(name.text(), draft(name, block.get()));
    } else {
      unread.add(name.span().file().fileName());
    }
  }

  private static boolean comesAlong(Scalar name) {
    return BundledPath.is(name.span().file().path());
  }

  private Draft draft(Scalar name, Fields own) {
    Optional<Scalar> symbol = own.text(NutrientVocabulary.UNIT);
    Optional<Unit> unit =
        symbol.isPresent() ? new FigureReader(remarks).unit(symbol.get()) : Optional.empty();
    return new Draft(name, own, symbol, unit.orElse(Unit.PERCENT));
  }

  private Nutrient nutrient(Draft draft, int index, Known known) {
    Fields own = draft.fields();
    boolean ofTheWhole = own.word(NutrientVocabulary.OF_THE_WHOLE, "yes").isPresent();
    Optional<Scalar> partOf = other(own, NutrientVocabulary.PART_OF, known);
    Optional<Scalar> digestibleOf = other(own, NutrientVocabulary.DIGESTIBLE_OF, known);
    Optional<Scalar> written = own.text(NutrientVocabulary.FORMULA);
    Optional<Formula> formula =
        written.isPresent() ? formula(draft, written.get(), known) : Optional.empty();
    kinds(draft, ofTheWhole, partOf, digestibleOf);
    return new Nutrient(
        index,
        draft.name().text(),
        own.textOr(NutrientVocabulary.TITLE, draft.name().text()),
        draft.unit(),
        text(partOf),
        ofTheWhole,
        own.word(NutrientVocabulary.JUDGED, "a way to judge").isPresent(),
        own.word(NutrientVocabulary.ANALYSED, "no").isEmpty() && digestibleOf.isEmpty(),
        stability(own),
        formula,
        text(digestibleOf),
        standsIn(own, known),
        usual(draft, NutrientVocabulary.USUAL_MINIMUM),
        usual(draft, NutrientVocabulary.USUAL_MAXIMUM),
        new UsualReader(sources, groups, known, kinds, remarks).read(own, draft.kind()),
        draft.name().span());
  }

  /** Whose coefficient stands in for that of what it is the digestible part of. */
  private Optional<String> standsIn(Fields own, Known known) {
    Optional<Scalar> other = other(own, NutrientVocabulary.STANDS_IN, known);
    if (other.isPresent() && !own.has(NutrientVocabulary.DIGESTIBLE_OF)) {
      remarks.add(
          KeyFindings.missingKey(
              other.get().span(),
              NutrientVocabulary.DIGESTIBLE_OF,
              NutrientVocabulary.NUTRIENT_KEYS,
              "what it is the digestible part of"));
    }
    return text(other);
  }

  private Optional<Nutrient.UsualBound> usual(Draft draft, Key<Text> key) {
    Optional<Scalar> written = draft.fields().text(key);
    Optional<FigureReader.Ends> ends = new FigureReader(remarks).range(written, draft.kind());
    return ends.isPresent()
        ? Optional.of(
            new Nutrient.UsualBound(
                draft.name().text(),
                ends.get().low(),
                ends.get().high(),
                written.get().text(),
                written.get().span()))
        : Optional.empty();
  }

  private static Optional<String> text(Optional<Scalar> name) {
    return name.isPresent() ? Optional.of(name.get().text()) : Optional.empty();
  }

  private Optional<Scalar> other(Fields own, Key<Text> key, Known known) {
    Optional<Scalar> name = own.text(key);
    return name.isPresent() && known.check(name.get(), remarks) ? name : Optional.empty();
  }

  private Optional<Formula> formula(Draft draft, Scalar text, Known known) {
    FormulaReader reader = new FormulaReader(text, draft.kind(), kinds, known, remarks);
    Optional<FormulaReader.Sum> sum = reader.read();
    Fields own = draft.fields();
    if (sum.isPresent() && sum.get().hasFactor() && !own.has(NutrientVocabulary.SOURCE)) {
      remarks.add(
          KeyFindings.missingKey(
              text.span(),
              NutrientVocabulary.SOURCE,
              NutrientVocabulary.NUTRIENT_KEYS,
              "where the factors come from"));
    }
    Optional<Source> source =
        own.has(NutrientVocabulary.SOURCE)
            ? Optional.of(sources.of(own, NutrientVocabulary.SOURCE))
            : Optional.empty();
    return sum.isPresent()
        ? Optional.of(new Formula(sum.get().constant(), sum.get().terms(), text.text(), source))
        : Optional.empty();
  }

  private String stability(Fields own) {
    Optional<Scalar> word = own.text(NutrientVocabulary.STABILITY);
    if (word.isPresent()) {
      boolean known =
          word.get().text().equals(Nutrient.STABLE)
              || classes.check(word.get(), List.of(Nutrient.STABLE), remarks);
      return known ? word.get().text() : Nutrient.STABLE;
    }
    if (!own.has(NutrientVocabulary.STABILITY)
        && !own.has(NutrientVocabulary.FORMULA)
        && !own.has(NutrientVocabulary.DIGESTIBLE_OF)) {
      remarks.add(
          KeyFindings.missingKey(
              own.place(),
              NutrientVocabulary.STABILITY,
              NutrientVocabulary.NUTRIENT_KEYS,
              "stable, or the class it decays by"));
    }
    return Nutrient.STABLE;
  }

  private void kinds(
      Draft draft, boolean ofTheWhole, Optional<Scalar> partOf, Optional<Scalar> digestibleOf) {
    if (draft.symbol().isEmpty()) {
      return;
    }
    Scalar symbol = draft.symbol().get();
    boolean share = draft.kind() == Kind.SHARE;
    if (!share && draft.name().text().equals(Nutrients.MOISTURE)) {
      remarks.add(NutrientFindings.wholeKind(symbol, "moisture is one"));
    } else if (!share && ofTheWhole) {
      remarks.add(NutrientFindings.wholeKind(symbol, "parts of the whole add up to 100 %"));
    } else if (!share && partOf.isPresent()) {
      remarks.add(NutrientFindings.wholeKind(symbol, "a part is given as its whole is"));
    }
    Kind whole = digestibleOf.isPresent() ? kinds.get(digestibleOf.get().text()) : null;
    if (whole != null && whole != draft.kind()) {
      remarks.add(
          FigureFindings.wrongKind(
              symbol, symbol.text(), draft.kind(), whole, "the unit of its whole"));
    }
  }
}
