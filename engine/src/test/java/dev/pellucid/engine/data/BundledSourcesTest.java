package dev.pellucid.engine.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.data.Source.Reliability;
import dev.pellucid.engine.folder.Bundled;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What every figure that comes with the program rests on is told, and nothing of it is made up. */
class BundledSourcesTest {
  private static final Bundled DATA = Bundled.ofThisVersion();
  private static final Pattern NAMED = Pattern.compile("\\bsource:? +([a-z0-9]+(?:-[a-z0-9]+)*)");

  @TempDir static Path empty = Path.of("");

  private static SortedMap<String, Source> sources = new TreeMap<>();

  @BeforeAll
  static void read() throws IOException {
    sources = BundledTables.read(empty).sources();
  }

  /** By the name of the source, the places that rest on it. */
  private static Map<String, Set<String>> named() throws IOException {
    Map<String, Set<String>> named = new TreeMap<>();
    for (String place : DATA.places()) {
      if (!place.equals("sources.yaml")) {
        Matcher found = NAMED.matcher(DATA.text(place).orElseThrow());
        while (found.find()) {
          named.computeIfAbsent(found.group(1), name -> new TreeSet<>()).add(place);
        }
      }
    }
    return named;
  }

  @Test
  void whatIsNamedIsThereAndWhatIsThereIsNamed() throws IOException {
    assertEquals(new TreeSet<>(sources.keySet()), new TreeSet<>(named().keySet()));
    assertTrue(sources.size() > 50);
  }

  @Test
  void nothingIsMadeUpAndNothingIsOfOneMillAlone() throws IOException {
    named()
        .forEach(
            (name, places) -> {
              Reliability standing = Objects.requireNonNull(sources.get(name), name).reliability();
              assertFalse(standing == Reliability.INVENTED, name + " in " + places);
              assertFalse(standing == Reliability.OWN_ANALYSIS, name + " in " + places);
            });
  }

  @Test
  void whatWasPublishedSaysWhere() {
    int published = 0;
    for (Source one : sources.values()) {
      if (one.reliability() == Reliability.PUBLISHED) {
        assertTrue(one.address().isPresent(), one.id() + " has no address");
        published++;
      }
    }
    assertTrue(published > 20, "only " + published);
  }

  @Test
  void everyFileOfFiguresNamesASource() throws IOException {
    for (String place : DATA.places()) {
      boolean ofWords = place.equals("groups.yaml") || place.equals("practice/cautions.yaml");
      if (!ofWords && !place.equals("sources.yaml")) {
        assertTrue(NAMED.matcher(DATA.text(place).orElseThrow()).find(), place);
      }
    }
  }
}
