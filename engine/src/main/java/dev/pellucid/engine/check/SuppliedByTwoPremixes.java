package dev.pellucid.engine.check;

import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Two premixes of a recipe supply the same nutrient: what they bring adds up. */
final class SuppliedByTwoPremixes implements Rule {
  private static final Code CODE = new Code("supplied-by-two-premixes");
  private static final int NAMED = 5;

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    Map<String, Supplied> first = new LinkedHashMap<>();
    Map<List<String>, List<Pair>> twice = new LinkedHashMap<>();
    for (Supplied one : Supplied.to(recipe.recipe())) {
      Supplied before =
          one.times() > 0 ? first.putIfAbsent(one.supply().nutrient().name(), one) : null;
      if (before != null && !before.premix().code().equals(one.premix().code())) {
        List<String> codes = List.of(before.premix().code(), one.premix().code());
        twice.computeIfAbsent(codes, key -> new ArrayList<>()).add(new Pair(before, one));
      }
    }
    for (List<Pair> pairs : twice.values()) {
      out.accept(finding(pairs));
    }
  }

  /** One nutrient, supplied by both. */
  private record Pair(Supplied first, Supplied second) {
    String name() {
      return first.supply().nutrient().name();
    }

    String sum() {
      return first.told(first.amount())
          + " and "
          + first.told(second.amount())
          + ", together "
          + first.told(first.amount() + second.amount());
    }
  }

  private static Finding finding(List<Pair> pairs) {
    Pair one = pairs.get(0);
    String first = one.first().premix().code();
    String second = one.second().premix().code();
    int more = pairs.size() - 1;
    Finding finding =
        Finding.warning(
                CODE,
                one.second().line().name(),
                first
                    + " and "
                    + second
                    + " both supply "
                    + one.name()
                    + (more > 0 ? " and " + more + " more" : "")
                    + ": "
                    + one.sum())
            .seeing("supplied first", one.first().supply().written().span())
            .seeing("supplied again", one.second().supply().written().span());
    for (Pair pair : pairs.subList(1, Math.min(pairs.size(), NAMED))) {
      finding = finding.noting(pair.name() + " " + pair.sum());
    }
    if (pairs.size() > NAMED) {
      finding = finding.noting("and " + (pairs.size() - NAMED) + " more nutrients");
    }
    return finding
        .helping(
            "take one of the two premixes out, or one of the two supply lines if they must go"
                + " together")
        .about(new About(one.name(), About.Side.NONE, List.of(first, second)));
  }
}
