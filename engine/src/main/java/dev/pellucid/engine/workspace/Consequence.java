package dev.pellucid.engine.workspace;

import dev.pellucid.engine.check.Remark;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.check.Rules;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Nutrients;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.syntax.Bound;
import dev.pellucid.text.Span;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A finding of a recipe that shows in the feed and may have its cause elsewhere.
 *
 * @param contents names of the nutrients that it is about, and of those from which these follow
 * @param law whether law is broken; that is told whatever its cause
 * @param bound where the limit is written, if it is one
 * @param tooLittle whether it is a minimum that the feed does not reach
 * @param cost whether it is about what the feed costs
 */
record Consequence(
    Finding finding,
    Set<String> contents,
    boolean law,
    Optional<Span> bound,
    boolean tooLittle,
    boolean cost) {
  Consequence {
    contents = Set.copyOf(contents);
  }

  /** Those among what the rules say of a recipe. */
  static List<Consequence> of(RuleContext recipe, List<Remark> said) {
    List<Consequence> all = new ArrayList<>();
    for (Remark remark : said) {
      boolean counts = remark.finding().severity() != Severity.NOTE;
      if (counts && Rules.isConsequence(remark.finding())) {
        all.add(of(remark, recipe.tables().nutrients()));
      }
    }
    return List.copyOf(all);
  }

  private static Consequence of(Remark remark, Nutrients nutrients) {
    Set<String> words = Set.of(remark.finding().about().subject().split(" [+:] ", -1));
    Optional<Limit> limit = remark.about().map(LimitStatus::limit);
    return new Consequence(
        remark.finding(),
        withInputs(words, nutrients),
        limit.filter(one -> one.origin().kind() == Limit.Kind.LAW).isPresent(),
        limit.map(one -> one.origin().span()),
        limit.filter(one -> one.side() == Bound.Side.MIN).isPresent(),
        limit.filter(one -> one.subject().text().equals("cost")).isPresent());
  }

  /** What the figures of some nutrients are made of. */
  private static Set<String> withInputs(Set<String> names, Nutrients nutrients) {
    Set<String> all = new TreeSet<>();
    Deque<String> left = new ArrayDeque<>(names);
    while (!left.isEmpty()) {
      Optional<Nutrient> nutrient = nutrients.named(left.pop());
      if (nutrient.isPresent() && all.add(nutrient.get().name())) {
        nutrient.get().digestibleOf().ifPresent(left::add);
        nutrient
            .get()
            .formula()
            .ifPresent(formula -> formula.terms().forEach(term -> left.add(term.nutrient())));
      }
    }
    return all;
  }
}
