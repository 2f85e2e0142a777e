package dev.pellucid.syntax;

import dev.pellucid.text.Span;
import java.util.List;
import java.util.stream.Collectors;

/** What a limit is about: its left side. */
public sealed interface Left {
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
  }

  /** {@code lysine : crude-protein}; a sum may stand on either side. */
  record Ratio(Nutrients over, Nutrients under, Span span) implements Left {
    @Override
    public String text() {
      return over.text() + " : " + under.text();
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
  }

  /** {@code cost}, per finished kg. */
  record Cost(Span span) implements Left {
    @Override
    public String text() {
      return "cost";
    }
  }

  private static String plus(List<Word> names) {
    return names.stream().map(Word::text).collect(Collectors.joining(" + "));
  }
}
