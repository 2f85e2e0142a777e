package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The version stands in one place, and every page that names it names that one. */
class PublishedVersionTest {
  private static final Path ROOT = Path.of("..");
  private static final List<String> BELOW =
      List.of("recipes", "engine/docs", "maven-plugin/docs", "maven-plugin/src");
  private static final Pattern SAID = Pattern.compile("<revision>(.+)</revision>");
  private static final Pattern OF_PLUGIN =
      Pattern.compile("pellucid-maven-plugin(?::|</artifactId>\\s*<version>)([^:<\\s`]+)");
  private static final Set<String> TAKEN_FROM_THERE =
      Set.of("${project.version}", "@project.version@", "VERSION");

  /** What the next release will be called. */
  static String version() throws IOException {
    Matcher said = SAID.matcher(Files.readString(ROOT.resolve("pom.xml")));
    assertTrue(said.find(), "no revision in pom.xml");
    return said.group(1);
  }

  @Test
  void modulesTakeTheirVersionFromTheParent() throws IOException {
    for (String module : List.of("grammar", "engine", "maven-plugin", "recipes")) {
      String pom = Files.readString(ROOT.resolve(module).resolve("pom.xml"));
      assertTrue(pom.contains("<version>${revision}</version>"), module);
      assertEquals(-1, pom.indexOf(version()), module);
    }
  }

  @Test
  void wherePagesAndBuildsNameThePluginTheyNameThisVersion() throws IOException {
    List<String> others = new ArrayList<>();
    int named = 0;
    for (Path file : files()) {
      Matcher found = OF_PLUGIN.matcher(Files.readString(file));
      while (found.find()) {
        named++;
        if (!found.group(1).equals(version()) && !TAKEN_FROM_THERE.contains(found.group(1))) {
          others.add(file + " names " + found.group(1));
        }
      }
    }
    assertEquals(List.of(), others);
    assertTrue(named > 4, "only " + named);
  }

  private static List<Path> files() throws IOException {
    List<Path> all = new ArrayList<>();
    try (Stream<Path> top = Files.list(ROOT)) {
      top.filter(file -> file.toString().endsWith(".md")).forEach(all::add);
    }
    for (String below : BELOW) {
      try (Stream<Path> files = Files.walk(ROOT.resolve(below))) {
        files
            .filter(file -> file.toString().matches(".*(\\.md|\\.xml|\\.properties)"))
            .forEach(all::add);
      }
    }
    return all.stream().filter(file -> !file.toString().contains("target")).sorted().toList();
  }
}
