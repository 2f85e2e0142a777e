package dev.pellucid.engine.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.finding.Finding;
import dev.pellucid.show.FindingText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Wrong data files and all that is said of them. A case is a text with files in it, laid over the
 * pantry; its findings stand beside it.
 */
class DataCasesTest {
  static List<String> cases() throws IOException {
    try (Stream<Path> files = Files.list(Cases.ROOT)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".md"))
          .map(name -> name.substring(0, name.length() - 3))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void saysWhatWasAccepted(String name) throws IOException {
    Cases.verify("", name, FindingText.of(findings(name, false)));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void windowsLineEndsChangeNothing(String name) throws IOException {
    assertEquals(FindingText.of(findings(name, false)), FindingText.of(findings(name, true)), name);
  }

  private static List<Finding> findings(String name, boolean windows) throws IOException {
    Page page = Page.of(Files.readString(Cases.ROOT.resolve(name + ".md")));
    assertTrue(!page.wrong().isEmpty(), name);
    Pantry pantry = Pantry.full();
    page.wrong()
        .forEach(
            block ->
                pantry.with(
                    block.path(), windows ? block.text().replace("\n", "\r\n") : block.text()));
    return pantry.stocked().findings();
  }
}
