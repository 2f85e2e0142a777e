package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Nutrient.Formula.Term;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.measure.Kind;
import dev.pellucid.measure.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A formula of a nutrient: terms with {@code +} or {@code -} between them, each a name, a figure
 * and a name, or a figure alone.
 *
 * <p>A figure before a name is its factor; its unit, if it has one, makes the term what the
 * nutrient is: {@code 23.6 MJ/kg crude-protein} is an energy. All figures come out in the base of
 * their kind.
 */
final class FormulaReader {
  private final Scalar formula;
  private final Kind kind;
  private final Function<String, Optional<Kind>> kindOf;
  private final Known nutrients;
  private final Remarks remarks;
  private final List<Term> terms = new ArrayList<>();
  private double constant;
  private boolean hasFactor;
  private boolean whole = true;

  FormulaReader(
      Scalar formula,
      Kind kind,
      Function<String, Optional<Kind>> kindOf,
      Known nutrients,
      Remarks remarks) {
    this.formula = formula;
    this.kind = kind;
    this.kindOf = kindOf;
    this.nutrients = nutrients;
    this.remarks = remarks;
  }

  /** The formula as a sum. */
  record Sum(double constant, List<Term> terms, boolean hasFactor) {
    Sum {
      terms = List.copyOf(terms);
    }
  }

  /** Empty where any term cannot be read: half a formula is a wrong one. */
  Optional<Sum> read() {
    Iterator<String> words =
        Arrays.stream(FigureReader.spaced(formula).replace("−", "-").split("\\s+", -1)).iterator();
    List<String> term = new ArrayList<>();
    int sign = 1;
    boolean first = true;
    while (words.hasNext()) {
      String word = words.next();
      if (!word.equals("+") && !word.equals("-")) {
        term.add(word);
        continue;
      }
      if (!first || !term.isEmpty()) {
        term(term, sign);
      }
      first = false;
      term.clear();
      sign = word.equals("+") ? 1 : -1;
    }
    term(term, sign);
    return whole ? Optional.of(new Sum(constant, terms, hasFactor)) : Optional.empty();
  }

  private void term(List<String> words, int sign) {
    String last = words.isEmpty() ? "" : words.get(words.size() - 1);
    boolean named = last.matches(Vocabulary.NAME) && Unit.of(last).isEmpty();
    String figure = String.join(" ", named ? words.subList(0, words.size() - 1) : words);
    if (words.isEmpty()) {
      refuse("a sign of the formula has nothing behind it", "write a term behind each + and -");
    } else if (!named) {
      factor(figure).ifPresent(it -> constant(figure, it, sign));
    } else if (name(last)) {
      nutrient(last, figure, sign);
    }
  }

  private void nutrient(String name, String figure, int sign) {
    Kind own = kindOf.apply(name).orElse(kind);
    if (figure.isEmpty()) {
      add(name, own, new Term(sign, name));
      return;
    }
    hasFactor = true;
    Optional<Factor> factor = factor(figure);
    if (factor.isPresent()) {
      Kind given = factor.get().unit().map(Unit::kind).orElse(Kind.SHARE);
      if (given != Kind.SHARE && own != Kind.SHARE) {
        refuse(
            KeyFindings.shown(figure + " " + name) + " multiplies two units",
            "write a plain factor before it, as in 0.5 " + name);
        return;
      }
      Kind result = given == Kind.SHARE ? own : given;
      add(figure + " " + name, result, new Term(sign * factor.get().base(), name));
    }
  }

  private void add(String shown, Kind result, Term term) {
    if (result != kind) {
      remarks.add(NutrientFindings.formulaKind(formula, shown, result, kind));
      whole = false;
      return;
    }
    terms.add(term);
  }

  private void constant(String figure, Factor factor, int sign) {
    Optional<Kind> given = factor.unit().map(Unit::kind);
    if (given.isEmpty() || given.get() != kind) {
      refuse(
          KeyFindings.shown(figure) + " stands alone and is not " + kind.phrase(),
          "write the name of a nutrient behind it, or a figure such as 100 %");
      return;
    }
    constant += sign * factor.base();
  }

  private boolean name(String name) {
    boolean known = nutrients.has(name);
    if (!known) {
      nutrients.check(new Scalar(name, false, formula.span()), remarks);
      whole = false;
    }
    return known;
  }

  /** A figure with or without a unit. */
  private record Factor(BigDecimal number, Optional<Unit> unit) {
    double base() {
      return unit.map(it -> it.toBase(number)).orElseGet(number::doubleValue);
    }
  }

  private Optional<Factor> factor(String figure) {
    int gap = figure.indexOf(' ');
    String number = gap < 0 ? figure : figure.substring(0, gap);
    String symbol = gap < 0 ? "" : figure.substring(gap + 1);
    if (!number.matches(Vocabulary.FIGURE)) {
      refuse(
          KeyFindings.shown(figure) + " is neither a figure nor a name",
          "write terms such as methionine, 0.5 starch or 23.6 MJ/kg crude-fat, with + or - between");
      return Optional.empty();
    }
    Optional<Unit> unit = Unit.of(symbol);
    if (new FigureReader(remarks).number(formula, number).isEmpty()) {
      whole = false;
      return Optional.empty();
    }
    if (!symbol.isEmpty() && unit.isEmpty()) {
      remarks.add(
          FigureFindings.unitUnknown(formula, symbol)
              .helping("write figure, unit and name, as in 23.6 MJ/kg crude-fat"));
      whole = false;
      return Optional.empty();
    }
    return Optional.of(new Factor(new BigDecimal(number), unit));
  }

  private void refuse(String sentence, String help) {
    remarks.add(NutrientFindings.formula(formula, sentence, help));
    whole = false;
  }
}
