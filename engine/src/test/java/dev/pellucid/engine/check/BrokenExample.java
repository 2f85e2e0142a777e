package dev.pellucid.engine.check;

import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.syntax.Bound;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** One recipe of the example in which something at random is no more as it was. */
final class BrokenExample {
  private static final Pattern SHARE = Pattern.compile("(?m)^ +\\S+ +([0-9.]+) %(?= |$)");
  private static final Pattern CONTENT = Pattern.compile("(?m)^ +[a-z0-9-]+: ([0-9.]+) (?:%|g|mg)");
  private static final Pattern SUPPLY = Pattern.compile("(?m)^ +\\S+ +([0-9.]+) \\S+ +from ");
  private static final Pattern PRICE = Pattern.compile("(?m)^ *[a-z0-9-]+: ([0-9.]+) EUR");

  private final Random random;
  private final Texts texts;
  private final String recipe;
  private final List<LimitStatus> limits;
  private final Map<String, String> changed = new HashMap<>();

  /**
   * @param texts with this recipe alone
   * @param limits how it stands with them before
   */
  BrokenExample(Random random, Texts texts, String recipe, List<LimitStatus> limits) {
    this.random = random;
    this.texts = texts;
    this.recipe = recipe;
    this.limits = limits;
  }

  /** The texts with one change, sometimes two. */
  Texts broken() {
    int changes = random.nextInt(4) == 0 ? 2 : 1;
    for (int i = 0; i < changes; i++) {
      change();
    }
    return texts.over(changed);
  }

  private void change() {
    switch (random.nextInt(12)) {
      case 0, 1, 2 -> figure(recipe, SHARE, 0.5, 1.4);
      case 3 -> figure(premix(), SUPPLY, 0.4, 1.7);
      case 4 -> figure(one(texts.ending(".yaml"), "ingredients/"), CONTENT, 0.7, 1.4);
      case 5 -> figure("prices/2026-11.yaml", PRICE, 1.1, 1.9);
      case 6 -> own(moisture());
      case 7 -> handling();
      default -> tightened();
    }
  }

  private String premix() {
    return one(texts.ending(".premix"), "premixes/");
  }

  private String one(List<String> paths, String under) {
    List<String> found = new ArrayList<>(paths);
    found.removeIf(path -> !path.startsWith(under));
    found.removeIf(path -> !text(recipe).contains(stem(path)) && !path.startsWith("ingr"));
    return found.get(random.nextInt(found.size()));
  }

  private static String stem(String path) {
    return path.substring(path.lastIndexOf('/') + 1, path.lastIndexOf('.'));
  }

  private void figure(String path, Pattern pattern, double low, double high) {
    List<MatchResult> found = pattern.matcher(text(path)).results().toList();
    if (!found.isEmpty()) {
      MatchResult one = found.get(random.nextInt(found.size()));
      double times = low + (high - low) * random.nextDouble();
      String figure = Figures.plain(Double.parseDouble(one.group(1)) * times);
      put(path, one.start(1), one.end(1), figure);
    }
  }

  /** A limit that is kept, drawn past what the feed has. */
  private void tightened() {
    LimitStatus status = limits.get(random.nextInt(limits.size()));
    tighten(status, 0.005 + 0.12 * random.nextDouble() * random.nextDouble());
  }

  private void tighten(LimitStatus status, double by) {
    Limit limit = status.limit();
    Span figure = LimitWritten.figure(limit);
    double judged = status.verdict().judged();
    if (judged <= 0 || !status.state().isKept() || changed.containsKey(figure.file().path())) {
      return;
    }
    boolean min = limit.side() == Bound.Side.MIN;
    String bound = Figures.plain(limit.written().fromBase(judged * (min ? 1 + by : 1 - by)));
    String text = figure.text();
    put(figure.file().path(), figure.start(), figure.end(), text.replaceFirst("^[0-9.]+", bound));
  }

  private String moisture() {
    boolean min = random.nextBoolean();
    return "moisture  " + (min ? "min " : "max ") + Figures.fixed(7 + 4 * random.nextDouble(), 1);
  }

  private void own(String limit) {
    String text = text(recipe);
    changed.put(recipe, text.replace("\nlimits\n", "\nlimits\n  " + limit + " %\n"));
  }

  /** More on top of a line, and a maximum that it may pass. */
  private void handling() {
    List<LimitStatus> maxima = new ArrayList<>(limits);
    maxima.removeIf(one -> one.limit().side() == Bound.Side.MIN || !one.state().isKept());
    maxima.removeIf(one -> one.limit().subject().addends().size() != 1);
    maxima.removeIf(one -> !(one.verdict().judged() > 0));
    if (maxima.isEmpty()) {
      return;
    }
    LimitStatus status = maxima.get(random.nextInt(maxima.size()));
    tighten(status, -0.02);
    List<MatchResult> lines = SHARE.matcher(text(recipe)).results().toList();
    String line = lines.get(random.nextInt(lines.size())).group().strip();
    String overage = "  " + line.split(" +", -1)[0] + "  " + (10 + random.nextInt(30));
    overage += " %  for handling\n";
    String text = text(recipe);
    changed.put(
        recipe,
        text.contains("\noverage\n")
            ? text.replace("\noverage\n", "\noverage\n" + overage)
            : text + "\noverage\n" + overage);
  }

  private void put(String path, int start, int end, String figure) {
    String text = text(path);
    changed.put(path, text.substring(0, start) + figure + text.substring(end));
  }

  private String text(String path) {
    return Optional.ofNullable(changed.get(path))
        .orElseGet(() -> texts.read(path, new ArrayList<>()).orElseThrow().text());
  }
}
