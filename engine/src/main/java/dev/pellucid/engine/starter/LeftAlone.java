package dev.pellucid.engine.starter;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A file that stood there already and was left as it was.
 *
 * @param path below the folder
 * @param missing what feeds need of it and it does not say: lines for a person
 */
public record LeftAlone(String path, List<String> missing) {
  private static final String POM = "pom.xml";
  private static final String IGNORED = ".gitignore";
  private static final String PLUGIN = "pellucid-maven-plugin";
  private static final Set<String> TARGET = Set.of("target", "target/", "/target", "/target/");

  public LeftAlone {
    missing = List.copyOf(missing);
  }

  /**
   * What was left.
   *
   * @param ours what would have been written
   * @param there what stands in it
   */
  public static LeftAlone of(StarterFile ours, String there) {
    return new LeftAlone(ours.path(), missing(ours, there));
  }

  /** Whether a pom.xml stood there that does not know the plugin. */
  public boolean isPomWithoutPlugin() {
    return path.equals(POM) && !missing.isEmpty();
  }

  private static List<String> missing(StarterFile ours, String there) {
    if (ours.path().equals(POM) && !there.contains(PLUGIN)) {
      List<String> lines = new ArrayList<>();
      lines.add("pom.xml does not call pellucid; put this among the plugins of its build:");
      lines.addAll(plugin(ours.text()));
      return lines;
    }
    if (ours.path().equals(IGNORED)
        && there.lines().map(String::strip).noneMatch(TARGET::contains)) {
      return List.of(".gitignore has no line target/; add it, so that no sheet is committed");
    }
    return List.of();
  }

  /** The lines from the plugin's opening mark to its closing one, at the margin. */
  private static List<String> plugin(String pom) {
    int named = pom.indexOf(PLUGIN);
    int from = pom.lastIndexOf('\n', pom.lastIndexOf("<plugin>", named)) + 1;
    int to = pom.indexOf("</plugin>", named) + "</plugin>".length();
    return pom.substring(from, to).stripIndent().lines().map(line -> "  " + line).toList();
  }
}
