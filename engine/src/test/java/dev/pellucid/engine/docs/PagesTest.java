package dev.pellucid.engine.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every page of the documentation: each example does what the page says, each message is the one
 * that is printed, and each link leads somewhere.
 */
class PagesTest {
  private static final Pattern ELSEWHERE = Pattern.compile("[a-z]+:.*");

  @TempDir Path place;

  static List<Path> pages() throws IOException {
    return DocPage.all();
  }

  @Test
  void thereArePages() throws IOException {
    assertFalse(pages().isEmpty());
  }

  @ParameterizedTest
  @MethodSource("pages")
  void doesWhatItSays(Path page) throws IOException {
    assertEquals("", String.join("\n\n", PageRun.of(place, DocPage.of(page))));
  }

  @ParameterizedTest
  @MethodSource("pages")
  void itsLinksLeadSomewhere(Path file) throws IOException {
    List<String> dead = new ArrayList<>();
    for (String link : DocPage.of(file).links()) {
      if (!ELSEWHERE.matcher(link).matches() && !leads(file, link)) {
        dead.add(link);
      }
    }
    assertEquals(List.of(), dead);
  }

  private static boolean leads(Path from, String link) throws IOException {
    int hash = link.indexOf('#');
    String path = hash < 0 ? link : link.substring(0, hash);
    Path folder = Objects.requireNonNull(from.toAbsolutePath().getParent());
    Path to = path.isEmpty() ? from : folder.resolve(path);
    return Files.exists(to)
        && (hash < 0 || DocPage.of(to).anchors().contains(link.substring(hash + 1)));
  }
}
