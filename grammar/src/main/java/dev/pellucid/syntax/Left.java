package dev.pellucid.syntax;

import dev.pellucid.text.Span;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What a limit is about: its left side. */
public sealed interface Left {
  /** Applies the one of these that is for its kind. */
  <R> R byKind(
      Function<Nutrients, R> sum,
      Function<Ratio, R> ratio,
      Function<Inclusion, R> inclusion,
      Function<Cost, R> cost);

  Span span();

  /** As one would write it, in one spacing: {@code methionine + cystine : crude-protein}. */
  String text();

  /** One nutrient, or a sum of them. */
  record Nutrients(List<Word> names, Span span) implements Left {
    public Nutrients {
      names = List.copyOf(names);
    }

    @Override
    public String text() {
      return plus(names);
    }

    @Override
    public <R> R byKind(
        Function<Nutrients, R> sum,
        Function<Ratio, R> ratio,
        Function<Inclusion, R> inclusion,
        Function<Cost, R> cost) {
      return sum.apply(this);
    }
  }

  /** {@code lysine : crude-protein}; a sum may stand on either side. */
  record Ratio(Nutrients over, Nutrients under, Span span) implements Left {
    @Override
    public String text() {
      return over.text() + " : " + under.text();
    }

    @Override
    public <R> R byKind(
        Function<Nutrients, R> sum,
        Function<Ratio, R> ratio,
        Function<Inclusion, R> inclusion,
        Function<Cost, R> cost) {
      return ratio.apply(this);
    }
  }

  /** {@code inclusion maize + wheat-middlings}: the share of ingredients or groups together. */
  record Inclusion(List<Word> names, Span span) implements Left {
    public Inclusion {
      names = List.copyOf(names);
    }

    @Override
    public String text() {
      return "inclusion " + plus(names);
    }

    @Override
    public <R> R byKind(
        Function<Nutrients, R> sum,
        Function<Ratio, R> ratio,
        Function<Inclusion, R> inclusion,
        Function<Cost, R> cost) {
      return inclusion.apply(this);
    }
  }

  /** {@code cost}, per finished kg. */
  record Cost(Span span) implements Left {
    @Override
    public String text() {
      return "cost";
    }

    @Override
    public <R> R byKind(
        Function<Nutrients, R> sum,
        Function<Ratio, R> ratio,
        Function<Inclusion, R> inclusion,
        Function<Cost, R> cost) {
      return cost.apply(this);
    }
  }

  private static String plus(List<Word> names) {
    return names.stream().map(Word::text).collect(Collectors.joining(" + "));
  }
}
