package dev.pellucid.engine.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Caps of the example with a point that slipped, or with no most: told at their own line. */
class SlippedCapsTest {
  private static final SortedMap<String, SourceFile> EXAMPLE = Pantry.of(Example.whole()).files();
  private static final TablesState SOUND = TablesState.empty().next(EXAMPLE, new TreeMap<>());
  private static final Pattern CAP = Pattern.compile("    max: ([0-9.]+) %");

  private record Place(String path, int line, BigDecimal number) {}

  private static List<Place> places() {
    List<Place> places = new ArrayList<>();
    for (SourceFile file : EXAMPLE.values()) {
      String[] lines = file.text().split("\n", -1);
      for (int at = 0; file.path().startsWith("ingredients/") && at < lines.length; at++) {
        Matcher cap = CAP.matcher(lines[at]);
        if (cap.matches()) {
          places.add(new Place(file.path(), at, new BigDecimal(cap.group(1))));
        }
      }
    }
    return places;
  }

  private static List<Finding> with(Place place, String max) {
    SortedMap<String, SourceFile> texts = new TreeMap<>(EXAMPLE);
    SourceFile file = Objects.requireNonNull(texts.get(place.path()));
    List<String> lines = new ArrayList<>(List.of(file.text().split("\n", -1)));
    lines.set(place.line(), "    max: " + max);
    texts.put(place.path(), new SourceFile(place.path(), String.join("\n", lines)));
    return SOUND.next(texts, new TreeMap<>()).stocked().findings();
  }

  private static boolean isToldAt(Place place, List<Finding> findings) {
    String start = place.path() + ":" + (place.line() + 1) + ":";
    return findings.size() == 1 && findings.get(0).span().place().startsWith(start);
  }

  @Test
  void asTheyStandNothingIsSaid() {
    assertTrue(places().size() > 70, "caps " + places().size());
    assertEquals(List.of(), SOUND.stocked().findings());
  }

  @Test
  void tenTimesOffIsToldAtItsOwnLineAndOnce() {
    List<String> missed = new ArrayList<>();
    int slips = 0;
    for (Place place : places()) {
      for (int shift : new int[] {1, -1}) {
        BigDecimal slipped = place.number().scaleByPowerOfTen(shift);
        slips++;
        List<Finding> findings = with(place, slipped.toPlainString() + " %");
        if (!isToldAt(place, findings)) {
          missed.add(place.path() + " " + slipped + " " + findings);
        }
      }
    }
    assertTrue(100 * missed.size() <= 5 * slips, slips + ", missed " + missed);
  }

  @Test
  void noneWhereTheOthersHaveAFigureIsTold() {
    List<String> missed = new ArrayList<>();
    for (Place place : places()) {
      if (!isToldAt(place, with(place, "none"))) {
        missed.add(place.path() + " " + place.number());
      }
    }
    assertTrue(missed.size() <= 4, missed.toString());
  }
}
