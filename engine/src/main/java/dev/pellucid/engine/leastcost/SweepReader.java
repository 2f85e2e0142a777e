package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.data.FeedTables;
import dev.pellucid.measure.Kind;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is to go from here to there: {@code fish-meal-65 1.2 to 2.4 EUR/kg}, {@code crude-protein 33
 * to 36 %}, {@code crude-fibre max 4 to 6 %}. A ratio has no unit.
 */
final class SweepReader {
  private static final String NUMBER = "([-+]?[0-9]+(?:\\.[0-9]+)?)";
  private static final Pattern SWEEP =
      Pattern.compile(
          "(\\S.*?) +(?:(min|max) +)?" + NUMBER + " *(\\S+)? +to +" + NUMBER + " *(\\S+)?");
  private static final String PRICE = "\"-Dpellucid.sweep=fish-meal-65 1.2 to 2.4 ";
  private static final String LIMIT = "\"-Dpellucid.sweep=crude-protein 33 to 36 %\"";

  private final FeedTables tables;
  private final String told;
  private Optional<String> slip = Optional.empty();

  SweepReader(FeedTables tables, String told) {
    this.tables = tables;
    this.told = told;
  }

  /** Why there is nothing; empty where there is. */
  Optional<String> slip() {
    return slip;
  }

  /** Empty where there is a slip. */
  Optional<SweepAsked> swept() {
    Matcher sweep = SWEEP.matcher(told);
    if (!sweep.matches()) {
      return slip(told + " does not name something, two figures and a unit; write " + both());
    }
    String of = sweep.group(1);
    boolean isPrice = tables.ingredients().containsKey(of);
    boolean isRatio = of.contains(" : ");
    if (!isPrice && !isFigure(of)) {
      return slip(unknown(of));
    }
    double from = Double.parseDouble(sweep.group(3));
    double to = Double.parseDouble(sweep.group(5));
    String symbol = sweep.group(6) == null ? "" : sweep.group(6);
    if (from < 0 || to < 0) {
      return slip(told + " has a figure below zero; write both from 0 on");
    }
    if (from >= to) {
      return slip(told + " goes down; write the smaller figure first: " + turned(sweep));
    }
    if (symbol.isEmpty() && !isRatio) {
      return slip(
          told
              + " has no unit; write it behind the second figure, as in "
              + (isPrice ? price() : LIMIT));
    }
    Optional<Unit> unit = isRatio && symbol.isEmpty() ? Optional.of(Unit.PERCENT) : Unit.of(symbol);
    if (unit.isEmpty()) {
      return slip(
          symbol + " is no unit that is known here; write as in " + (isPrice ? price() : LIMIT));
    }
    if (sweep.group(4) != null && !sweep.group(4).equals(symbol)) {
      return slip(told + " has two units; write one behind the second figure alone");
    }
    Optional<String> other = otherKind(of, isPrice, isRatio, unit.get(), symbol);
    if (other.isPresent()) {
      return slip(other.get());
    }
    Optional<Bound.Side> side =
        Optional.ofNullable(sweep.group(2))
            .map(word -> word.equals("min") ? Bound.Side.MIN : Bound.Side.MAX);
    return Optional.of(new SweepAsked(of, isPrice, side, unit.get(), symbol, from, to));
  }

  private Optional<String> otherKind(
      String of, boolean isPrice, boolean isRatio, Unit unit, String symbol) {
    if (isPrice) {
      boolean money = unit.kind() == Kind.PRICE && symbol.startsWith(tables.settings().currency());
      return money
          ? Optional.empty()
          : Optional.of(
              symbol
                  + " is no price in "
                  + tables.settings().currency()
                  + "; write as in "
                  + price());
    }
    if (isRatio) {
      return symbol.isEmpty()
          ? Optional.empty()
          : Optional.of("a ratio such as " + of + " has no unit; leave " + symbol + " out");
    }
    Kind kind = of.equals("cost") ? Kind.PRICE : kindOf(of);
    return unit.kind() == kind
        ? Optional.empty()
        : Optional.of(
            symbol + " measures " + unit.kind().phrase() + ", and " + of + " is " + kind.phrase());
  }

  private Kind kindOf(String of) {
    String first = of.split(" \\+ ", -1)[0];
    return tables.nutrients().named(first).map(one -> one.unit().kind()).orElse(Kind.SHARE);
  }

  /** Whether limits can be about it; whether a recipe has such a limit is asked of each. */
  private boolean isFigure(String of) {
    if (of.startsWith("inclusion ") || of.equals("cost")) {
      return true;
    }
    for (String one : of.split(" [+:] ", -1)) {
      if (tables.nutrients().named(one).isEmpty()) {
        return false;
      }
    }
    return true;
  }

  private String unknown(String of) {
    List<String> names = new ArrayList<>(tables.nutrients().names());
    names.addAll(tables.ingredients().keySet());
    List<String> near = NearNames.of(of, names);
    return of
        + " is neither an ingredient nor a nutrient of this folder"
        + Meant.question(near.isEmpty() ? NearNames.holding(of, names) : near)
            .map(asked -> "; " + asked)
            .orElse("");
  }

  private static String turned(Matcher sweep) {
    String unit = sweep.group(6) == null ? "" : " " + sweep.group(6);
    return sweep.group(1) + " " + sweep.group(5) + " to " + sweep.group(3) + unit;
  }

  private String price() {
    return PRICE + tables.settings().currency() + "/kg\"";
  }

  private String both() {
    return price() + " or " + LIMIT;
  }

  private Optional<SweepAsked> slip(String words) {
    slip = Optional.of("pellucid.sweep: " + words);
    return Optional.empty();
  }
}
