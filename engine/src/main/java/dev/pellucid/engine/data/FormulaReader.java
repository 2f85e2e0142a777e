package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Nutrient.Formula.Term;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.measure.Kind;
import dev.pellucid.measure.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A formula of a nutrient: terms with {@code +} or {@code -} between them, each a name, a figure
 * and a name, or a figure alone.
 *
 * <p>A figure before a name is its factor; its unit, if it has one, makes the term what the
 * nutrient is: {@code 23.6 MJ/kg crude-protein} is an energy. All figures come out in the base of
 * their kind.
 */
final class FormulaReader {
  private static final Pattern BLANKS = Pattern.compile("\\s+");
  private static final Pattern FIGURE = Pattern.compile(Vocabulary.FIGURE);

  private final Scalar formula;
  private final Kind kind;
  private final Map<String, Kind> kinds;
  private final Known nutrients;
  private final Remarks remarks;
  private final List<Term> terms = new ArrayList<>();
  private double constant;
  private boolean hasFactor;
  private boolean whole = true;

  /**
   * @param kinds what the nutrient of each name is told in
   */
  FormulaReader(
      Scalar formula, Kind kind, Map<String, Kind> kinds, Known nutrients, Remarks remarks) {
    this.formula = formula;
    this.kind = kind;
    this.kinds = kinds;
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
    String[] words = BLANKS.split(FigureReader.spaced(formula).replace("−", "-"), -1);
    List<String> term = new ArrayList<>();
    int sign = 1;
    boolean first = true;
    for (String word : words) {
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
    boolean named = Vocabulary.isName(last) && Unit.of(last).isEmpty();
    String figure = String.join(" ", named ? words.subList(0, words.size() - 1) : words);
    if (words.isEmpty()) {
      refuse("a sign of the formula has nothing behind it", "write a term behind each + and -");
    } else if (!named) {
      Optional<Factor> factor = factor(figure);
      if (factor.isPresent()) {
        constant(figure, factor.get(), sign);
      }
    } else if (name(last)) {
      nutrient(last, figure, sign);
    }
  }

  private void nutrient(String name, String figure, int sign) {
    Kind own = kinds.getOrDefault(name, kind);
    if (figure.isEmpty()) {
      add(name, own, new Term(sign, name));
      return;
    }
    hasFactor = true;
    Optional<Factor> factor = factor(figure);
    if (factor.isPresent()) {
      Optional<Unit> unit = factor.get().unit();
      Kind given = unit.isPresent() ? unit.get().kind() : Kind.SHARE;
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
    if (factor.unit().isEmpty() || factor.unit().get().kind() != kind) {
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
      return unit.isPresent() ? unit.get().toBase(number) : number.doubleValue();
    }
  }

  private Optional<Factor> factor(String figure) {
    int gap = figure.indexOf(' ');
    String number = gap < 0 ? figure : figure.substring(0, gap);
    String symbol = gap < 0 ? "" : figure.substring(gap + 1);
    if (!FIGURE.matcher(number).matches()) {
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
