package dev.pellucid.maven;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The version of this plugin that a POM asks for, however it says so. */
class PluginVersionTest {
  @Test
  void aVersionThatStandsThere() {
    assertEquals(
        Optional.of("1.2.3"), version("<build><plugins>" + plugin("1.2.3") + "</plugins></build>"));
  }

  @Test
  void aPropertyOfTheSamePom() {
    String build = "<build><plugins>" + plugin("${feeds.tool}") + "</plugins></build>";
    assertEquals(
        Optional.of("1.2.3"),
        version("<properties><feeds.tool>1.2.3</feeds.tool></properties>" + build));
    assertEquals(Optional.empty(), version(build));
    assertEquals(
        Optional.empty(),
        version("<properties><feeds.tool>${other}</feeds.tool></properties>" + build));
  }

  @Test
  void onePlaceForAllModules() {
    assertEquals(
        Optional.of("2.0"),
        version(
            "<build><pluginManagement><plugins>"
                + plugin("2.0")
                + "</plugins></pluginManagement></build>"));
  }

  @Test
  void nothingWhereItIsNotTold() {
    assertEquals(Optional.empty(), version(""));
    assertEquals(Optional.empty(), version("<build/>"));
    assertEquals(Optional.empty(), PluginVersion.of("<project>"));
    assertEquals(Optional.empty(), PluginVersion.of("no pom"));
  }

  private static String plugin(String version) {
    return "<plugin><groupId>dev.pellucid</groupId><artifactId>pellucid-maven-plugin</artifactId>"
        + "<version>"
        + version
        + "</version></plugin>";
  }

  private static Optional<String> version(String inside) {
    return PluginVersion.of(
        "<project><modelVersion>4.0.0</modelVersion><groupId>g</groupId><artifactId>a</artifactId>"
            + "<version>1</version>"
            + inside
            + "</project>");
  }
}
