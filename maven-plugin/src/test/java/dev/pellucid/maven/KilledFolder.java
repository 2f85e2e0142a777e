package dev.pellucid.maven;

import dev.pellucid.engine.folder.Outputs;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A folder of feeds under git, in two states that differ in each thing that a goal writes. */
final class KilledFolder {
  static final int RECIPES = 12;
  static final String BATCH = "R-1-2026-12-03-1";
  private static final String MAIZE = "ingredients/maize.yaml";

  private KilledFolder() {}

  static Path plant(Path feeds) throws IOException {
    Files.createDirectories(feeds);
    Outputs files = Outputs.into(feeds);
    files.write("pellucid.yaml", "format: 1\nname: A farm\ncurrency: EUR\njurisdiction: none\n");
    files.write("groups.yaml", "grains: Grains\n");
    files.write("sources.yaml", "test: {standing: invented, cite: for tests}\n");
    files.write(
        "nutrients/all.yaml",
        """
        moisture: {title: Moisture, unit: "%", of-the-whole: yes, stability: stable}
        crude-protein: {title: Protein, unit: "%", of-the-whole: yes, stability: stable}
        """);
    files.write(
        "prices/2026.yaml",
        "from: 2026-01-01\nsource: test\nprices:\n  maize: 0.20 EUR/kg\n  wheat: 0.3 EUR/kg\n");
    files.write("ingredients/wheat.yaml", ingredient("Wheat", "12 %"));
    maize(feeds, 0);
    spaced(feeds, 1);
    PlantedRepository.git(feeds, "init", "-q");
    PlantedRepository.git(feeds, "add", "-A");
    PlantedRepository.git(feeds, "commit", "-q", "-m", "First");
    return feeds;
  }

  private static String ingredient(String name, String protein) {
    return "name: "
        + name
        + "\ngroups: [grains]\nform: meal\ncontents:\n  - source: test\n    moisture: 12 %\n"
        + "    crude-protein: "
        + protein
        + "\n";
  }

  /** What every feed holds changes, and in the first state no feed breaks its limit. */
  static void maize(Path feeds, int state) throws IOException {
    Outputs.over(feeds).write(MAIZE, ingredient("Maize", state == 0 ? "9.5 %" : "8.9 %"));
  }

  /** A lot of maize of which more or less came. */
  static void lot(Path feeds, int state) throws IOException {
    Outputs.over(feeds)
        .write(
            "lots/2026.yaml",
            "lots:\n  - {number: MZ-1, ingredient: maize, received: 2026-11-05, quantity: 300"
                + state
                + " kg, inspection: passed}\n");
  }

  /** Recipes of which more is wheat than need be, and both lines may move. */
  static void dear(Path feeds) throws IOException {
    Outputs files = Outputs.over(feeds);
    for (int i = 1; i <= RECIPES; i++) {
      String text = "# A remark that is long enough to fill a few blocks\n".repeat(200);
      files.write(
          "mash/R-" + i + ".recipe",
          ("recipe R-" + i + "\n  status  draft\n  batch  60 kg weighed\n\n")
              + "mix\n  maize  60.00 %  within 10 to 80 %\n  wheat  40.00 %  within 10 to 80 %\n\n"
              + "limits\n  crude-protein  min 8 %\n\n"
              + text);
    }
  }

  /**
   * A plan that wants all of them made, and wheat of which there is enough for none as it stands.
   */
  static void plan(Path feeds, int state) throws IOException {
    StringBuilder plan = new StringBuilder("feeds:\n");
    for (int i = 1; i <= RECIPES; i++) {
      plan.append("  - {recipe: R-" + i + ", quantity: 1 t, by: 2026-12-10}\n");
    }
    plan.append("available:\n  wheat: 2" + (6 + state) + "00 kg\n");
    Outputs.over(feeds).write("plans/december.yaml", plan.toString());
  }

  /** A batch that is planned with a lot of maize of so little protein that it breaks a limit. */
  static void batch(Path feeds) throws IOException {
    Outputs files = Outputs.over(feeds);
    files.write(
        "lots/2026.yaml",
        """
        lots:
          - number: MZ-1
            ingredient: maize
            received: 2026-11-05
            quantity: 3000 kg
            inspection: passed
            contents:
              - source: test
                crude-protein: 7.8 %
        """);
    files.write(
        "mash/R-1.recipe",
        """
        recipe R-1
          status  draft
          batch   60 kg weighed

        mix
          maize   60.00 %  within 10 to 80 %
          wheat   40.00 %  within 10 to 80 %

        limits
          crude-protein  min 9.6 %
        """);
    files.write(
        "batches/" + BATCH + ".yaml",
        "# A remark that is long enough to fill a few blocks\n".repeat(2000)
            + "size: 60 kg\nweighed:\n  - {line: maize, lot: MZ-1}\n");
  }

  /** Recipes as a hand wrote them, or as they are laid out. */
  static void spaced(Path feeds, int state) throws IOException {
    Outputs files = Outputs.over(feeds);
    for (int i = 1; i <= RECIPES; i++) {
      String gap = state == 0 ? "     " : "  ";
      String text = "# A remark that is long enough to fill a few blocks\n".repeat(200);
      files.write(
          "mash/R-" + i + ".recipe",
          ("recipe R-" + i + "\n  status" + gap + "draft\n  batch" + gap + "60 kg weighed\n\n")
              + ("mix\n  maize" + gap + (100 - i) + " %\n  wheat" + gap + i + " %\n\n")
              + ("limits\n  crude-protein" + gap + "min " + (i == 3 ? 9 : 8) + " %\n\n")
              + text);
    }
  }
}
