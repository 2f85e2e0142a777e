package dev.pellucid.engine.leastcost;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.quantity.Figures;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Recipes of the example whose prices, freedom, limits and decimals are drawn, seeded. */
final class RandomProblems {
  private static final Pattern SHARE = Pattern.compile("(?m)^( +\\S+ +)([0-9.]+) %( .*within.*)$");
  private static final Pattern WITHIN = Pattern.compile("within ([0-9.]+) to ([0-9.]+) %");
  private static final Pattern PRICE = Pattern.compile("(?m)^ *[a-z0-9-]+: ([0-9.]+) EUR");
  private static final Pattern LIMIT =
      Pattern.compile("(?m)^  [a-z-]+(?: : [a-z-]+)? +(?:min|max) ([0-9.]+)");

  private final Random random;
  private final Texts texts;
  final String recipe;
  private final Map<String, String> changed = new HashMap<>();

  RandomProblems(Random random, Texts texts, String recipe) {
    this.random = random;
    this.texts = texts;
    this.recipe = recipe;
  }

  /** The texts of one of them. */
  Texts drawn() {
    prices();
    decimals(random.nextInt(4));
    if (random.nextInt(3) == 0) {
      within();
    }
    if (random.nextInt(4) == 0) {
      withoutRest();
    }
    if (random.nextInt(3) == 0) {
      limits();
    }
    return texts.over(changed);
  }

  private String text(String path) {
    return changed.containsKey(path)
        ? changed.get(path)
        : texts.read(path, new ArrayList<>()).orElseThrow().text();
  }

  private void prices() {
    replace("prices/2026-11.yaml", PRICE, 0.7, 1.4, 1);
  }

  private void limits() {
    for (String path : texts.ending(".limits")) {
      if (path.startsWith("limits/")) {
        replace(path, LIMIT, 0.985, 1.015, 4);
      }
    }
  }

  private void replace(String path, Pattern pattern, double low, double high, int oneIn) {
    String text = text(path);
    StringBuilder out = new StringBuilder();
    int end = 0;
    for (MatchResult one : pattern.matcher(text).results().toList()) {
      double times = random.nextInt(oneIn) == 0 ? low + (high - low) * random.nextDouble() : 1;
      out.append(text.substring(end, one.start(1)));
      out.append(Figures.plain(Double.parseDouble(one.group(1)) * times));
      end = one.end(1);
    }
    changed.put(path, out + text.substring(end));
  }

  /** Free lines rewritten with so many decimals; the rest takes what that leaves. */
  private void decimals(int decimals) {
    Matcher shares = SHARE.matcher(text(recipe));
    changed.put(
        recipe,
        shares.replaceAll(
            one ->
                Matcher.quoteReplacement(
                    one.group(1)
                        + Figures.fixed(Double.parseDouble(one.group(2)), decimals)
                        + " %"
                        + one.group(3))));
  }

  private void within() {
    Matcher within = WITHIN.matcher(text(recipe));
    changed.put(
        recipe,
        within.replaceAll(
            one -> {
              double low = Double.parseDouble(one.group(1)) * (0.7 + 0.3 * random.nextDouble());
              double high = Double.parseDouble(one.group(2)) * (1 + 0.3 * random.nextDouble());
              return "within " + Figures.fixed(low, 1) + " to " + Figures.fixed(high, 1) + " %";
            }));
  }

  /** The rest as a figure of its own. */
  private void withoutRest() {
    String text = text(recipe);
    double sum = 0;
    List<MatchResult> figures =
        Pattern.compile("(?m)^  [A-Za-z][^ ]* +([0-9.]+) %")
            .matcher(text.substring(text.indexOf("\nmix"), end(text)))
            .results()
            .toList();
    for (MatchResult one : figures) {
      sum += Double.parseDouble(one.group(1));
    }
    changed.put(recipe, text.replaceFirst(" rest  ", " " + Figures.fixed(100 - sum, 2) + " %  "));
  }

  private static int end(String text) {
    for (String section : List.of("\noverage", "\nlimits", "\nwaivers", "\nprocess")) {
      int at = text.indexOf(section);
      if (at > 0) {
        return at;
      }
    }
    return text.length();
  }
}
