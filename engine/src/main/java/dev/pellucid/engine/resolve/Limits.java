package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Source;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Kind;
import dev.pellucid.syntax.Amount;
import dev.pellucid.syntax.Bound;
import dev.pellucid.syntax.Left;
import dev.pellucid.syntax.LimitLine;
import dev.pellucid.syntax.Numeral;
import dev.pellucid.syntax.Word;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;

/**
 * Lines of limits to limits: names to nutrients and ingredients, figures to bases of their kind.
 */
final class Limits {
  static final Code UNKNOWN_NUTRIENT = new Code("unknown-nutrient");
  static final Code NOT_A_NUTRIENT = new Code("not-a-nutrient");
  static final Code OTHER_KIND = new Code("unit-of-another-kind");
  static final Code IN_BATCHES = new Code("part-of-batches");
  static final Code ASKS_NOTHING = new Code("limit-asks-nothing");
  static final Code UNKNOWN_SOURCE = new Code("unknown-source");

  private static final Basis AS_FED = new Basis.AsFed();
  private static final Basis DRY_MATTER = new Basis.DryMatter();

  private final Lookup lookup;
  private final FeedTables tables;
  private final List<Finding> findings;

  Limits(Lookup lookup, List<Finding> findings) {
    this.lookup = lookup;
    this.tables = lookup.frame();
    this.findings = findings;
  }

  /**
   * One limit for each bound of the line.
   *
   * @param found takes them
   */
  void add(
      LimitLine line,
      Limit.Kind kind,
      String owner,
      Optional<Source> ownSource,
      List<Limit> found) {
    Optional<Subject> subject = subject(line.left());
    if (subject.isEmpty()) {
      return;
    }
    Optional<Source> source = line.source().isPresent() ? source(line.source().get()) : ownSource;
    OptionalDouble inBatches = inBatches(line);
    Basis basis = basis(line.basis());
    for (Bound bound : line.bounds()) {
      OptionalDouble base = base(subject.get(), bound);
      if (base.isPresent() && bound.side() == Bound.Side.MIN && base.getAsDouble() == 0) {
        findings.add(asksNothing(bound));
      } else if (base.isPresent()) {
        found.add(
            new Limit(
                subject.get(),
                bound.side(),
                base.getAsDouble(),
                bound.limit(),
                basis,
                inBatches,
                new Limit.Origin(kind, owner, source, line.left().span().through(bound.span())),
                Optional.empty()));
      }
    }
  }

  private static Finding asksNothing(Bound bound) {
    return Finding.error(
            ASKS_NOTHING, bound.span(), "a minimum of 0 is kept by every feed, whatever is in it")
        .helping("write what the feed is to hold, or take the minimum out");
  }

  /** Below half the batches a limit would be loosened, and in all of them none can be kept. */
  private OptionalDouble inBatches(LimitLine line) {
    if (line.confidence().isEmpty()) {
      return OptionalDouble.empty();
    }
    Amount told = line.confidence().get();
    double part = told.base();
    if (part >= 0.5 && part < 1) {
      return OptionalDouble.of(part);
    }
    findings.add(
        Finding.error(
                IN_BATCHES,
                told.span(),
                part < 0.5
                    ? "in "
                        + told.asWritten()
                        + " of batches would let most batches break the limit"
                    : "no limit can be promised in " + told.asWritten() + " of batches")
            .helping("say in how many it must hold, from 50 % to 99.9 %: in 95 % of batches")
            .helping("or leave the words out: then the average must hold"));
    return OptionalDouble.empty();
  }

  Optional<Source> source(Word id) {
    Source source = tables.sources().get(id.text());
    if (source == null && lookup.isFrameWhole()) {
      findings.add(
          near(
              Finding.error(UNKNOWN_SOURCE, id.span(), id + " is not in sources.yaml"),
              id,
              tables.sources().keySet(),
              "add it to sources.yaml"));
    }
    return Optional.ofNullable(source);
  }

  static Basis basis(Optional<dev.pellucid.syntax.Basis> written) {
    return written.isEmpty() ? AS_FED : basis(written.get());
  }

  private static Basis basis(dev.pellucid.syntax.Basis written) {
    return written.byKind(
        dry -> DRY_MATTER,
        at -> new Basis.AtMoisture(at.moisture().base(), at.moisture().asWritten()));
  }

  /** One nutrient by itself. */
  Subject.Nutrients alone(Nutrient nutrient) {
    return lookup.alone(nutrient);
  }

  Optional<Subject> subject(Left left) {
    return left.byKind(
        sum -> nutrients(sum).map(found -> found),
        this::ratio,
        this::inclusion,
        cost -> Optional.of(new Subject.Cost()));
  }

  private Optional<Subject> ratio(Left.Ratio ratio) {
    Optional<Subject.Nutrients> over = nutrients(ratio.over());
    Optional<Subject.Nutrients> under = nutrients(ratio.under());
    return over.isEmpty() || under.isEmpty()
        ? Optional.empty()
        : ratio(ratio.span(), over.get(), under.get());
  }

  private Optional<Subject.Nutrients> nutrients(Left.Nutrients sum) {
    if (sum.names().size() == 1) {
      Optional<Nutrient> one = nutrient(sum.names().get(0));
      return one.isEmpty() ? Optional.empty() : Optional.of(lookup.alone(one.get()));
    }
    List<Nutrient> found = new ArrayList<>();
    for (Word name : sum.names()) {
      Optional<Nutrient> one = nutrient(name);
      if (one.isPresent()) {
        found.add(one.get());
      }
    }
    if (found.size() < sum.names().size()) {
      return Optional.empty();
    }
    Kind first = found.get(0).unit().kind();
    for (int i = 1; i < found.size(); i++) {
      if (found.get(i).unit().kind() != first) {
        findings.add(
            Finding.error(
                    OTHER_KIND,
                    sum.span(),
                    found.get(i).name()
                        + " is given in "
                        + found.get(i).unit().symbol()
                        + " and "
                        + found.get(0).name()
                        + " in "
                        + found.get(0).unit().symbol()
                        + ", so they cannot be added")
                .helping("add nutrients that are given in units of one kind"));
        return Optional.empty();
      }
    }
    return Optional.of(Subject.Nutrients.sum(found));
  }

  private Optional<Subject> ratio(Span written, Subject.Nutrients over, Subject.Nutrients under) {
    Kind above = over.figure();
    Kind below = under.figure();
    if (above == below) {
      return Optional.of(Subject.Ratio.of(over, under, Subject.RatioKind.PLAIN));
    }
    if (above == Kind.SHARE && below == Kind.ENERGY) {
      return Optional.of(Subject.Ratio.of(over, under, Subject.RatioKind.PER_ENERGY));
    }
    findings.add(
        Finding.error(
                OTHER_KIND,
                written,
                over.text()
                    + " is "
                    + above.phrase()
                    + " and "
                    + under.text()
                    + " is "
                    + below.phrase()
                    + ", no limit is told as such a ratio")
            .helping("set a share over a share, or a share over an energy"));
    return Optional.empty();
  }

  private Optional<Subject> inclusion(Left.Inclusion inclusion) {
    boolean all = true;
    List<String> names = new ArrayList<>();
    for (Word name : inclusion.names()) {
      Optional<String> known = material(name);
      all &= known.isPresent();
      names.add(known.orElse(name.text()));
    }
    return all ? Optional.of(new Subject.Inclusion(names, inclusion.text())) : Optional.empty();
  }

  /** Whether it is an ingredient, a group or a code; a finding where it is none. */
  boolean isOfMaterials(Word name) {
    return material(name).isPresent();
  }

  /** What an ingredient, a group or a code is called now; a finding where it is none. */
  private Optional<String> material(Word name) {
    if (lookup.isMaterial(name.text()) || tables.groups().containsKey(name.text())) {
      return Optional.of(name.text());
    }
    Optional<String> now = lookup.formerly(name.text());
    if (now.isPresent()) {
      findings.add(Materials.renamed(name, now.get()));
      return now;
    }
    if (!lookup.isFrameWhole()) {
      return Optional.empty();
    }
    TreeSet<String> near = new TreeSet<>(lookup.materials());
    near.addAll(tables.groups().keySet());
    findings.add(
        near(
            Finding.error(Materials.UNKNOWN, name.span(), name + " is not known in this folder"),
            name,
            near,
            "name an ingredient, a group or a code"));
    return Optional.empty();
  }

  Optional<Nutrient> nutrient(Word name) {
    Optional<Nutrient> nutrient = tables.nutrients().named(name.text());
    if (nutrient.isEmpty() && lookup.isFrameWhole()) {
      findings.add(noSuch(name));
    }
    return nutrient;
  }

  private Finding noSuch(Word name) {
    boolean group = tables.groups().containsKey(name.text());
    if (group || lookup.isMaterial(name.text())) {
      String what = group ? " is a group of ingredients" : " is an ingredient";
      return Finding.error(NOT_A_NUTRIENT, name.span(), name + what + ", not a nutrient")
          .helping("to bound its share write: inclusion " + name + " max 20 %");
    }
    return near(
        Finding.error(UNKNOWN_NUTRIENT, name.span(), name + " is not a nutrient of this folder"),
        name,
        tables.nutrients().names(),
        "add it under nutrients/, or fix the name");
  }

  static Finding near(Finding finding, Word name, Collection<String> candidates, String otherwise) {
    List<String> near = NearNames.of(name.text(), candidates);
    Finding helped = finding.helping(Meant.question(near).orElse(otherwise));
    return near.size() == 1 ? helped.fixing(name.span(), near.get(0)) : helped;
  }

  OptionalDouble base(Subject subject, Bound bound) {
    return bound
        .limit()
        .byKind(amount -> withUnit(subject, amount), number -> withoutUnit(subject, number));
  }

  private OptionalDouble withUnit(Subject subject, Amount amount) {
    boolean fits =
        fits(subject, amount) && (subject.figure() != Kind.PRICE || currencyFits(amount));
    return fits ? OptionalDouble.of(amount.base()) : OptionalDouble.empty();
  }

  private OptionalDouble withoutUnit(Subject subject, Numeral number) {
    if (subject.figure() != Kind.SHARE_PER_ENERGY) {
      return OptionalDouble.of(number.value().doubleValue());
    }
    String meant = number.text() + " " + example(subject.figure());
    findings.add(
        Finding.error(
                OTHER_KIND,
                number.span(),
                subject.text()
                    + " is given in "
                    + example(subject.figure())
                    + ", and this has no unit")
            .helping("write " + meant)
            .fixing(number.span(), meant));
    return OptionalDouble.empty();
  }

  /** Whether a figure is in a unit of the subject's kind; a finding where not. */
  boolean fits(Subject subject, Amount amount) {
    Kind needed = subject.figure();
    boolean fits = amount.unit().kind() == needed;
    if (!fits) {
      findings.add(otherKind(subject, amount, needed));
    }
    return fits;
  }

  private boolean currencyFits(Amount amount) {
    String currency = tables.settings().currency();
    Span unit = amount.unitAsWritten().span();
    if (amount.unitAsWritten().text().startsWith(currency)) {
      return true;
    }
    findings.add(
        Finding.error(OTHER_KIND, unit, "prices of this folder are in " + currency)
            .helping("write the cost in " + currency + "/kg"));
    return false;
  }

  private static Finding otherKind(Subject subject, Amount written, Kind needed) {
    return Finding.error(
            OTHER_KIND,
            written.unitAsWritten().span(),
            subject.text()
                + " is given in "
                + example(needed)
                + ", not in "
                + written.unitAsWritten())
        .helping("use a unit like " + example(needed));
  }

  private static String example(Kind kind) {
    return switch (kind) {
      case SHARE -> "%, g/kg or mg/kg";
      case PRICE -> "EUR/kg, in the currency of the folder";
      default -> kind.base();
    };
  }
}
