package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.check.LabelWords;
import dev.pellucid.engine.check.RuleContext;
import dev.pellucid.engine.judge.LabelVerdict;
import dev.pellucid.engine.label.BagLabel;
import dev.pellucid.engine.label.BagLabel.Fact;
import dev.pellucid.engine.label.BagLabel.Group;
import dev.pellucid.engine.label.BagLabel.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Why the label of a changed recipe has to be printed anew, a sentence for each reason. */
public final class LabelAnew {
  /** The first figure of some words, that stands by itself. */
  private static final Pattern NUMBER = Pattern.compile("(?<![^ ])[0-9]+(\\.[0-9]+)?(?![^ ])");

  /**
   * Amounts of additives move with the mass of the feed; a hundredth, or one in the last digit, is
   * no more than what a dose may be off when it is weighed.
   */
  private static final double WEIGHED = 0.01;

  private LabelAnew() {}

  /** Nothing where the label stays true as it is printed. */
  static List<String> of(RuleContext before, RuleContext after) {
    return of(before, before, after);
  }

  /**
   * The same of one batch.
   *
   * @param printed the feed that the label was made for, by which its claims are judged
   * @param before the batch without the change, by which the rest is
   */
  public static List<String> of(RuleContext printed, RuleContext before, RuleContext after) {
    List<String> why = new ArrayList<>();
    claims(printed, after, why);
    if (before.feed().isEmpty() || after.feed().isEmpty()) {
      return why;
    }
    List<Statement> were = BagLabel.statements(before.feed().get(), before.tables());
    List<Statement> are = BagLabel.statements(after.feed().get(), after.tables());
    for (Statement was : were) {
      List<String> now = List.of();
      for (Statement is : are) {
        now = is.heading().equals(was.heading()) ? words(is) : now;
      }
      differing(words(was), now, why);
    }
    return why;
  }

  private static void claims(RuleContext before, RuleContext after, List<String> why) {
    List<LabelVerdict> were = before.judgement().claims();
    List<LabelVerdict> are = after.judgement().claims();
    for (int i = 0; i < are.size() && i < were.size(); i++) {
      if (are.get(i).outcome().compareTo(were.get(i).outcome()) > 0) {
        LabelWords words = new LabelWords(are.get(i));
        why.add(
            words.headline()
                + switch (are.get(i).outcome()) {
                  case BEYOND -> ": that is beyond what the rules allow";
                  case SPENDS -> ": that takes up what is allowed for differences of analysis";
                  case CANNOT_TELL -> ", and it cannot be told whether that is so";
                  case KEPT, NO_TOLERANCE -> "";
                });
      }
    }
  }

  /** What comes in, what goes out, and what changes its place. */
  private static void differing(List<String> were, List<String> are, List<String> why) {
    Map<String, String> before = byName(were);
    Map<String, String> after = byName(are);
    for (Map.Entry<String, String> one : after.entrySet()) {
      String was = before.get(one.getKey());
      if (was == null) {
        why.add(one.getKey() + " comes in");
      } else if (!isSame(was, one.getValue())) {
        why.add(one.getKey() + " is" + one.getValue() + ", the label says" + was);
      }
    }
    List<String> stay = new ArrayList<>();
    for (String one : before.keySet()) {
      if (after.containsKey(one)) {
        stay.add(one);
      } else {
        why.add(one + " goes out");
      }
    }
    List<String> now = new ArrayList<>(after.keySet());
    now.retainAll(stay);
    for (int i = 0; i < stay.size(); i++) {
      if (!stay.get(i).equals(now.get(i))) {
        why.add("the order of ingredients changes: " + now.get(i) + " comes before " + stay.get(i));
        return;
      }
    }
  }

  /** {@code Riboflavin (3a825i): 14.1 mg/kg}: what it is, and how much of it. */
  private static Map<String, String> byName(List<String> words) {
    Map<String, String> named = new LinkedHashMap<>();
    for (String one : words) {
      int amount = one.indexOf(": ");
      named.put(
          amount < 0 ? one : one.substring(0, amount), amount < 0 ? "" : one.substring(amount + 1));
    }
    return named;
  }

  /** Whether two amounts differ by less than doses are weighed to. */
  private static boolean isSame(String was, String is) {
    double before = figure(was);
    double after = figure(is);
    double off = Math.abs(after - before);
    return was.equals(is) || before > 0 && off <= Math.max(WEIGHED * before, digit(was));
  }

  /** What its last digit counts for, and a little. */
  private static double digit(String was) {
    Matcher number = NUMBER.matcher(was);
    if (!number.find()) {
      return 0;
    }
    String word = number.group();
    int point = word.indexOf('.');
    return 1.01 * Math.pow(10, point < 0 ? 0 : point + 1 - word.length());
  }

  private static double figure(String words) {
    Matcher number = NUMBER.matcher(words);
    return number.find() ? Double.parseDouble(number.group()) : 0;
  }

  private static List<String> words(Statement statement) {
    return statement.accept(
        new Statement.Visitor<List<String>>() {
          @Override
          public List<String> figures(Statement.Figures figures) {
            List<String> words = new ArrayList<>();
            for (Fact one : figures.figures()) {
              words.add(one.name() + " " + one.value());
            }
            return words;
          }

          @Override
          public List<String> names(Statement.Names names) {
            return names.names();
          }

          @Override
          public List<String> groups(Statement.Groups groups) {
            List<String> words = new ArrayList<>();
            for (Group one : groups.groups()) {
              words.addAll(one.names());
            }
            return words;
          }

          @Override
          public List<String> sentences(Statement.Sentences sentences) {
            return sentences.sentences();
          }
        });
  }
}
