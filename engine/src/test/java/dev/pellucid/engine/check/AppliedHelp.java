package dev.pellucid.engine.check;

import dev.pellucid.engine.folder.Texts;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words of a help as a change of the texts, the only place that reads them. Whatever names an
 * amount must be known here, or its test fails.
 */
final class AppliedHelp {
  private static final Pattern AND = Pattern.compile(", | and ");
  private static final Pattern SHARES =
      Pattern.compile(
          "(.+? points .+?)(?: in place of (\\S+)|, made up by (\\S+),) would meet"
              + " (?:it|both broken limits|all \\d+ broken limits)(?:; then write (.+) on the"
              + " label)?(?:, and the label too)?");
  private static final Pattern MANY =
      Pattern.compile(
          "([0-9.]+ points (?:more|less) [^ ,]+(?:(?:, | and )[0-9.]+ (?:more|less) [^ ,]+)+) would"
              + " meet (?:it|both broken limits|all \\d+ broken limits)(?:; then write (.+) on the"
              + " label)?");
  private static final Pattern ONE_OF_MANY =
      Pattern.compile("([0-9.]+)(?: points)? (more|less) ([^ ,]+)");
  private static final Pattern SHARE = Pattern.compile("([0-9.]+) points (more|less) (\\S+)");
  private static final Pattern DOSE =
      Pattern.compile("(\\S+) at its dose of ([0-9.]+ %) would meet it");
  private static final Pattern OVERAGE =
      Pattern.compile("an overage of ([0-9.]+ %) for stability on (\\S+) would meet it");
  private static final Pattern HANDLING =
      Pattern.compile("a handling overage of (.+) on (\\S+) would meet it");
  private static final Pattern SHELF_LIFE =
      Pattern.compile("a shelf life of ([0-9]+ d) in place of .+ would meet it");
  private static final Pattern MOISTURE =
      Pattern.compile(
          "(.+ %) moisture in place of .+?(?:, accepting (.+ %),)? in the line (\\S+) would meet"
              + " (?:it|both broken limits|all \\d+ broken limits)(?:, and the label too)?");
  private static final Pattern SUPPLY =
      Pattern.compile(
          "(\\S+) ([0-9.]+) (\\S+) in place of \\S+ \\S+ in the supply of (\\S+) would meet it.*");
  private static final Pattern LABEL =
      Pattern.compile("write (.+) on the label, or change the recipe");

  private final Texts texts;
  private final String recipe;
  private final Map<String, String> changed = new HashMap<>();

  private AppliedHelp(Texts texts, String recipe) {
    this.texts = texts;
    this.recipe = recipe;
  }

  /** The kind of help that these words are; empty for one that names no amount. */
  static Optional<String> kind(String help) {
    List<String> names =
        List.of(
            "shares", "many", "dose", "overage", "handling", "shelf-life", "moisture", "supply");
    List<Pattern> patterns =
        List.of(SHARES, MANY, DOSE, OVERAGE, HANDLING, SHELF_LIFE, MOISTURE, SUPPLY);
    for (int i = 0; i < names.size(); i++) {
      if (patterns.get(i).matcher(help).matches()) {
        return Optional.of(names.get(i));
      }
    }
    return LABEL.matcher(help).matches() ? Optional.of("label") : Optional.empty();
  }

  /** The texts with the help applied to a recipe. */
  static Texts to(Texts texts, String recipe, String help, String subject) {
    AppliedHelp applied = new AppliedHelp(texts, recipe);
    applied.apply(help, subject);
    return texts.over(applied.changed);
  }

  private void apply(String help, String subject) {
    boolean applied =
        when(SHARES, help, it -> sharesAndClaims(it))
            || when(MANY, help, it -> many(it))
            || when(
                DOSE,
                help,
                it ->
                    replace(
                        recipe,
                        "(?m)^( +" + Pattern.quote(it.group(1)) + " +)[0-9.]+ %",
                        "$1" + it.group(2)))
            || when(OVERAGE, help, it -> overage(it.group(2), it.group(1), "stability"))
            || when(HANDLING, help, it -> overage(it.group(2), it.group(1), "handling"))
            || when(
                SHELF_LIFE,
                help,
                it -> replace(recipe, "(store +shelf-life +)[0-9]+ \\S+", "$1" + it.group(1)))
            || when(MOISTURE, help, it -> moisture(it))
            || when(
                SUPPLY,
                help,
                it ->
                    replace(
                        "premixes/" + it.group(4) + ".premix",
                        "(?m)^( +" + Pattern.quote(it.group(1)) + " +)[0-9.]+ \\S+( +from)",
                        "$1" + it.group(2) + " " + it.group(3) + "$2"))
            || when(LABEL, help, it -> label(subject, it.group(1)));
    if (!applied) {
      throw new IllegalArgumentException(help);
    }
  }

  private static boolean when(Pattern words, String help, Consumer<Matcher> then) {
    Matcher it = words.matcher(help);
    boolean fits = it.matches();
    if (fits) {
      then.accept(it);
    }
    return fits;
  }

  private void moisture(Matcher it) {
    String accept = it.group(2) == null ? "" : "  accept " + it.group(2);
    replace(recipe, "(?m)^( +" + it.group(3) + " +moisture +).*$", "$1" + it.group(1) + accept);
  }

  private void sharesAndClaims(Matcher it) {
    shares(it.group(1), it.group(2));
    if (it.group(4) != null) {
      claims(it.group(4));
    }
  }

  private void many(Matcher it) {
    Matcher one = ONE_OF_MANY.matcher(it.group(1));
    while (one.find()) {
      BigDecimal points = new BigDecimal(one.group(1));
      share(one.group(3), one.group(2).equals("more") ? points : points.negate());
    }
    if (it.group(2) != null) {
      claims(it.group(2));
    }
  }

  private void claims(String all) {
    for (String claim : AND.split(all, -1)) {
      label(claim.substring(0, claim.indexOf(' ')), claim.substring(claim.indexOf(' ') + 1));
    }
  }

  private void shares(String amounts, String inPlaceOf) {
    Matcher one = SHARE.matcher(amounts);
    BigDecimal sum = BigDecimal.ZERO;
    while (one.find()) {
      BigDecimal points = new BigDecimal(one.group(1));
      points = one.group(2).equals("more") ? points : points.negate();
      sum = sum.add(points);
      share(one.group(3), points);
    }
    if (inPlaceOf != null) {
      share(inPlaceOf, sum.negate());
    }
  }

  /** The rest has no figure, and takes what the others leave. */
  private void share(String name, BigDecimal points) {
    Matcher line =
        Pattern.compile("(?m)^( +" + Pattern.quote(name) + " +)(?:([0-9.]+) %|rest)(?=\\s)")
            .matcher(text(recipe));
    if (!line.find()) {
      throw new IllegalArgumentException("no line " + name);
    }
    if (line.group(2) != null) {
      BigDecimal share = new BigDecimal(line.group(2)).add(points);
      String text = text(recipe);
      changed.put(
          recipe,
          text.substring(0, line.start(2)) + share.toPlainString() + text.substring(line.end(2)));
    }
  }

  private void label(String nutrient, String figure) {
    String text = text(recipe);
    int label = text.indexOf("\nlabel\n");
    Matcher line = Pattern.compile("(?m)^( +" + Pattern.quote(nutrient) + " +).*$").matcher(text);
    if (label < 0 || !line.find(label)) {
      throw new IllegalArgumentException("no label of " + nutrient);
    }
    changed.put(recipe, text.substring(0, line.end(1)) + figure + text.substring(line.end()));
  }

  private void overage(String name, String extra, String purpose) {
    String line = "  " + name + "  " + extra + "  for " + purpose;
    String text = text(recipe);
    Matcher there =
        Pattern.compile("(?m)^ +" + Pattern.quote(name) + " .*for " + purpose + "$").matcher(text);
    if (there.find()) {
      changed.put(recipe, text.substring(0, there.start()) + line + text.substring(there.end()));
    } else if (text.contains("\noverage\n")) {
      changed.put(recipe, text.replace("\noverage\n", "\noverage\n" + line + "\n"));
    } else {
      changed.put(recipe, text + "\noverage\n" + line + "\n");
    }
  }

  private void replace(String path, String regex, String with) {
    String text = text(path);
    Matcher found = Pattern.compile(regex).matcher(text);
    if (!found.find()) {
      throw new IllegalArgumentException("no " + regex + " in " + path);
    }
    changed.put(path, found.replaceFirst(with));
  }

  private String text(String path) {
    return Optional.ofNullable(changed.get(path))
        .orElseGet(() -> texts.read(path, new ArrayList<>()).orElseThrow().text());
  }
}
