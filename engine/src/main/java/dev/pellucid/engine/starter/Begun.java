package dev.pellucid.engine.starter;

import dev.pellucid.text.Plural;
import java.util.ArrayList;
import java.util.List;

/**
 * A folder of feeds that has begun, in words.
 *
 * @param written paths of what was written, in order
 * @param left what stood there already
 */
public record Begun(Plan plan, List<String> written, List<LeftAlone> left) {
  private static final String SCHEMAS = ".schema/";

  public Begun {
    written = List.copyOf(written);
    left = List.copyOf(left);
  }

  /** What was done, a line each. */
  public List<String> done() {
    List<String> lines = new ArrayList<>();
    lines.add(head());
    lines.addAll(tree());
    if (!written.isEmpty() && !left.isEmpty()) {
      lines.add(
          "left as "
              + (left.size() == 1 ? "it was: " : "they were: ")
              + String.join(", ", folded(left.stream().map(LeftAlone::path).toList())));
    }
    left.forEach(one -> lines.addAll(one.missing()));
    lines.addAll(plan.notes());
    return lines;
  }

  private String head() {
    if (written.isEmpty()) {
      return "nothing was written, every file of a folder of feeds is there already";
    }
    String files = Plural.of(written.size(), "file") + " written";
    Wishes wishes = plan.wishes();
    return plan.begins()
        ? "a folder of feeds for "
            + wishes.species()
            + ", prices in "
            + wishes.currency()
            + ", "
            + (wishes.jurisdiction().equals("none")
                ? "no law judged"
                : "law of the " + wishes.jurisdiction())
            + "; "
            + files
        : "there are feeds here already, and none was added; " + files;
  }

  private List<String> tree() {
    return folded(written).stream().map(path -> "  " + path).toList();
  }

  /** The schemas as one, since nobody opens them. */
  private static List<String> folded(List<String> paths) {
    List<String> folded = new ArrayList<>();
    long schemas = paths.stream().filter(path -> path.startsWith(SCHEMAS)).count();
    for (String path : paths) {
      boolean schema = path.startsWith(SCHEMAS);
      String shown = schema ? SCHEMAS + " (" + Plural.of(schemas, "file") + " for editors)" : path;
      if (!folded.contains(shown)) {
        folded.add(shown);
      }
    }
    return folded;
  }

  /**
   * The next commands, a line each.
   *
   * @param at how Maven is called for this folder: {@code mvn}, or {@code mvn -f "my feeds"}
   * @param inRepository whether a version control looks after the folder
   */
  public List<String> next(String at, boolean inRepository) {
    List<String> lines = new ArrayList<>();
    String check = at + " " + (isTied() ? "verify" : "pellucid:check, once pom.xml calls pellucid");
    lines.add("next:");
    lines.add("  " + check);
    if (isTied()) {
      lines.add("    checks the feeds and writes their sheets to target/batch-sheets");
    }
    if (!inRepository) {
      lines.add("  git init");
      lines.add("    keeps every change; what is not committed makes drafts only");
    }
    if (plan.begins()) {
      lines.add("README.md says how to go on");
    }
    return lines;
  }

  private boolean isTied() {
    return left.stream().noneMatch(LeftAlone::isPomWithoutPlugin);
  }
}
