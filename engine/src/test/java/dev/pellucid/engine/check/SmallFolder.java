package dev.pellucid.engine.check;

import dev.pellucid.engine.OwnFolder;
import dev.pellucid.engine.data.Pantry;
import dev.pellucid.finding.Finding;
import dev.pellucid.show.FindingText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/**
 * A folder with the nutrients and practice of the small pantry and nothing else: no ingredient, no
 * price, no law. A test lays in the few lines whose figures it can reckon by hand.
 */
public final class SmallFolder {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  private final Path root;

  public SmallFolder(Path root) throws IOException {
    this.root = root;
    Pantry pantry = Pantry.full();
    String settings = pantry.text("pellucid.yaml");
    pantry.with("pellucid.yaml", settings.replace("jurisdiction: EU", "jurisdiction: none"));
    for (String path : pantry.paths()) {
      if (!path.startsWith("ingredients/") && !path.startsWith("prices/")) {
        with(path, pantry.text(path));
      }
    }
  }

  public SmallFolder with(String path, String text) throws IOException {
    Path file = root.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
    return this;
  }

  /** {@code contents} is {@code moisture: 10 %, crude-protein: 44 %}. */
  public SmallFolder ingredient(String name, String contents) throws IOException {
    return with(
        "ingredients/" + name + ".yaml",
        "name: "
            + name
            + "\ngroups: []\nform: meal\ncontents:\n  - source: workshop\n    "
            + contents.replace(", ", "\n    ")
            + "\n");
  }

  /** The lines below the opening of the only recipe. */
  public SmallFolder recipe(String lines) throws IOException {
    return with("A-1.recipe", "recipe A-1\n" + lines);
  }

  public Path root() {
    return root;
  }

  public List<Finding> findings() throws IOException {
    return OwnFolder.check(root, DAY).findings();
  }

  /** Every finding as it is printed. */
  public String text() throws IOException {
    return FindingText.of(findings());
  }

  /** Codes in the order of printing. */
  public List<String> codes() throws IOException {
    return findings().stream().map(finding -> finding.code().text()).toList();
  }
}
