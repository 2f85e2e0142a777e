package dev.pellucid.engine.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.measure.Calendar;
import dev.pellucid.measure.Extent;
import dev.pellucid.measure.Kind;
import dev.pellucid.syntax.Property;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The tables of bounds on the pages say what the code holds figures to, and leave nothing out. */
class BoundsOnPagesTest {
  private static final Pattern ROW =
      Pattern.compile("(?m)^\\| ([^|:]+)(?::[^|]+)? \\| ([^|]+) \\| ([^|,]+)(?:,[^|]+)? \\|$");

  private static final SortedSet<String> OF_RECIPES = rows("figure-out-of-bounds");
  private static final SortedSet<String> OF_DATA = rows("data-out-of-bounds");

  @Test
  void togetherTheyTellEveryBoundAndNoOther() {
    SortedSet<String> all =
        Stream.concat(
                Arrays.stream(Extent.values()).map(Extent::cannotBe),
                Stream.of(Calendar.cannotBe()))
            .collect(Collectors.toCollection(TreeSet::new));
    SortedSet<String> told = new TreeSet<>(OF_RECIPES);
    told.addAll(OF_DATA);
    assertEquals(String.join("\n", all), String.join("\n", told));
  }

  @Test
  void thePageOfRecipesTellsWhatALineOfARecipeIsHeldTo() {
    Stream<Extent> ofProperties = Arrays.stream(Property.values()).map(Property::extent);
    Stream<Extent> ofLines =
        Stream.of(
            Extent.SHARE,
            Extent.EXTRA,
            Extent.RATIO,
            Extent.ACTIVITY,
            Extent.ENERGY,
            Extent.PER_ENERGY,
            Extent.BATCH,
            Extent.FISH,
            Extent.LOSS);
    Stream.concat(ofProperties, ofLines)
        .forEach(one -> assertTrue(OF_RECIPES.contains(one.cannotBe()), one.cannotBe()));
    assertTrue(OF_RECIPES.contains(Calendar.cannotBe()));
  }

  @Test
  void thePageOfDataTellsWhatAnyFigureOfAKindIsHeldTo() {
    Stream<Extent> ofKinds = Arrays.stream(Kind.values()).flatMap(kind -> Extent.of(kind).stream());
    Stream<Extent> ofPlaces = Stream.of(Extent.SHARE, Extent.WEIGHT, Extent.PARTICLE, Extent.HOLE);
    Stream.concat(ofKinds, ofPlaces)
        .forEach(one -> assertTrue(OF_DATA.contains(one.cannotBe()), one.cannotBe()));
    assertTrue(OF_DATA.contains(Calendar.cannotBe()));
  }

  private static SortedSet<String> rows(String code) {
    return ROW.matcher(page(code))
        .results()
        .filter(row -> !row.group(1).equals("what") && !row.group(1).startsWith("-"))
        .map(BoundsOnPagesTest::sentence)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** As the finding words it: the unit stands once where both ends have the same. */
  private static String sentence(MatchResult row) {
    String from = row.group(2);
    String to = row.group(3);
    Matcher unit = Pattern.compile(" \\S+$").matcher(to);
    boolean same = unit.find() && from.endsWith(unit.group());
    return "cannot be, "
        + row.group(1)
        + " is from "
        + (same ? from.substring(0, from.length() - unit.group().length()) : from)
        + " to "
        + to;
  }

  private static String page(String code) {
    String path = "/dev/pellucid/rules/" + code + ".md";
    try (InputStream in = BoundsOnPagesTest.class.getResourceAsStream(path)) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new AssertionError(broken);
    }
  }
}
