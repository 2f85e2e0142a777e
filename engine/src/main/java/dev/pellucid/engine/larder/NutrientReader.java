package dev.pellucid.engine.larder;

import dev.pellucid.engine.larder.Nutrient.Formula;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Files of {@code nutrients/}, in the order of display. */
final class NutrientReader {
  static final Code FORMULA = new Code("data-formula");
  private static final Pattern TERM =
      Pattern.compile(
          "\\s*([+-])?\\s*(?:([0-9]+(?:\\.[0-9]+)?)\\s*(%|[A-Za-z]+/[A-Za-z]+)?)?\\s*([a-z][a-z0-9]*(?:-[a-z0-9]+)*)?");

  private final Shelf shelf;
  private final List<Nutrient> nutrients = new ArrayList<>();

  NutrientReader(Shelf shelf) {
    this.shelf = shelf;
  }

  List<Nutrient> nutrients() {
    return nutrients;
  }

  void read(Fields file) {
    for (Entry entry : file.others()) {
      file.blockOf(entry, Vocabulary.NUTRIENT).ifPresent(block -> nutrient(entry.key(), block));
    }
  }

  private void nutrient(Scalar name, Fields block) {
    if (nutrients.stream().anyMatch(one -> one.name().equals(name.text()))) {
      shelf
          .findings()
          .add(
              Finding.error(FORMULA, name.span(), name.text() + " is told twice")
                  .helping("keep one of the two"));
      return;
    }
    Optional<Unit> unit = block.text("unit").flatMap(shelf.figures()::unit);
    if (unit.isEmpty()) {
      return;
    }
    Optional<Formula> formula = block.text("formula").flatMap(text -> formula(text, block));
    nutrients.add(
        new Nutrient(
            nutrients.size(),
            name.text(),
            block.text("title").map(Scalar::text).orElse(name.text()),
            unit.get(),
            block.text("part-of").map(Scalar::text),
            block.has("of-the-whole"),
            block.text("stability").map(Scalar::text).orElse(Nutrient.STABLE),
            formula,
            block.text("digestible-of").map(Scalar::text),
            name.span()));
  }

  private Optional<Formula> formula(Scalar text, Fields block) {
    Matcher term = TERM.matcher(text.text());
    List<Formula.Term> terms = new ArrayList<>();
    double constant = 0;
    int at = 0;
    while (at < text.text().length()) {
      term.region(at, text.text().length());
      if (!term.lookingAt() || term.end() == at || (at > 0 && term.group(1) == null)) {
        shelf
            .findings()
            .add(
                Finding.error(FORMULA, text.span(), "the formula cannot be read: " + text.text())
                    .helping("write it like: methionine + cystine, or 100 % - moisture"));
        return Optional.empty();
      }
      double figure = figure(term) * ("-".equals(term.group(1)) ? -1 : 1);
      String nutrient = term.group(4);
      if (nutrient == null) {
        constant += figure;
      } else {
        terms.add(new Formula.Term(figure, nutrient));
      }
      at = term.end();
    }
    Optional<Source> source = block.has("source") ? shelf.source(block) : Optional.empty();
    return Optional.of(new Formula(constant, terms, text.text(), source));
  }

  private static double figure(Matcher term) {
    if (term.group(2) == null) {
      return 1;
    }
    double figure = new BigDecimal(term.group(2)).doubleValue();
    String unit = term.group(3);
    return unit == null ? figure : Unit.of(unit).map(u -> u.toBase(figure)).orElse(figure);
  }
}
