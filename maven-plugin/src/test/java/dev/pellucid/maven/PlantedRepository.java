package dev.pellucid.maven;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A repository with twelve mashes in a subfolder and a state after each of nine commits, and what
 * each mash comes to in each, worked out here from shares, contents and prices alone.
 */
final class PlantedRepository {
  private static final List<String> STOCK = List.of("maize", "wheat", "soybean", "fish-meal");

  /**
   * What a state holds.
   *
   * @param shares percent of maize, wheat, soybean, fish meal and of the outer premix, by code
   * @param lysine percent of lysine in the inner premix, the rest is wheat; the outer one holds
   *     half of it, the rest is maize
   */
  record State(
      SortedMap<String, int[]> shares,
      double wheatPrice,
      double maizeProtein,
      double houseMinimum,
      int lysine,
      boolean spaced) {

    int[] share(String code) {
      return Optional.ofNullable(shares.get(code)).orElseThrow();
    }

    /** Parts of 1 of what is in the store, and of lysine last. */
    private double[] parts(String code) {
      int[] share = share(code);
      double premix = share[4] / 100.0;
      double inner = premix / 2;
      return new double[] {
        share[0] / 100.0 + premix / 2,
        share[1] / 100.0 + inner * (100 - lysine) / 100,
        share[2] / 100.0,
        share[3] / 100.0,
        inner * lysine / 100
      };
    }

    private double weighted(String code, double... each) {
      double[] parts = parts(code);
      double sum = 0;
      for (int i = 0; i < parts.length; i++) {
        sum += parts[i] * each[i];
      }
      return sum;
    }

    /** Percent. */
    double protein(String code) {
      return weighted(code, maizeProtein, 12, 46, 64, 90);
    }

    /** EUR/kg. */
    double cost(String code) {
      return weighted(code, 0.25, wheatPrice, 0.5, 1.6, 2);
    }

    boolean holdsMaize(String code) {
      return parts(code)[0] > 0;
    }

    boolean holdsWheat(String code) {
      return parts(code)[1] > 0;
    }

    boolean holdsPremix(String code) {
      return share(code)[4] > 0;
    }

    /** The two that keep to the house. */
    boolean isOfHouse(String code) {
      return code.equals("R-03") || code.equals("R-04");
    }
  }

  private final Path root;
  private final List<State> states = new ArrayList<>();

  private PlantedRepository(Path root) {
    this.root = root;
  }

  static PlantedRepository in(Path root) throws IOException {
    PlantedRepository planted = new PlantedRepository(root);
    planted.git("init", "-q");
    State first = new State(shares(), 0.2, 8, 15, 40, false);
    planted.commit(first);
    SortedMap<String, int[]> edited = shares();
    edited.put("R-01", new int[] {36, 20, 34, 10, 0});
    planted.commit(new State(edited, 0.2, 8, 15, 40, false));
    planted.git("revert", "--no-edit", "HEAD");
    planted.states.add(first);
    planted.git("tag", "s2");
    planted.commit(new State(shares(), 0.22, 8, 15, 40, false));
    planted.commit(new State(shares(), 0.22, 8.5, 15, 40, false));
    planted.commit(new State(shares(), 0.22, 8.5, 28, 40, false));
    planted.commit(new State(shares(), 0.22, 8.5, 28, 50, false));
    SortedMap<String, int[]> renamed = shares();
    renamed.put("R-90", new int[] {0, 30, 50, 20, 0});
    renamed.remove("R-09");
    planted.commit(new State(renamed, 0.22, 8.5, 28, 50, false));
    planted.commit(new State(renamed, 0.22, 8.5, 28, 50, true));
    return planted;
  }

  private static SortedMap<String, int[]> shares() {
    SortedMap<String, int[]> shares = new TreeMap<>();
    shares.put("R-01", new int[] {40, 20, 30, 10, 0});
    shares.put("R-02", new int[] {0, 50, 40, 10, 0});
    shares.put("R-03", new int[] {30, 20, 40, 10, 0});
    shares.put("R-04", new int[] {45, 15, 30, 10, 0});
    shares.put("R-05", new int[] {60, 0, 30, 10, 0});
    shares.put("R-06", new int[] {0, 0, 60, 40, 0});
    shares.put("R-07", new int[] {48, 0, 40, 10, 2});
    shares.put("R-08", new int[] {0, 0, 70, 29, 1});
    shares.put("R-09", new int[] {0, 30, 50, 20, 0});
    shares.put("R-10", new int[] {0, 0, 80, 20, 0});
    shares.put("R-11", new int[] {10, 10, 60, 20, 0});
    shares.put("R-12", new int[] {0, 0, 0, 100, 0});
    return shares;
  }

  /** The subfolder with the feeds. */
  Path feeds() {
    return root.resolve("mill/feeds");
  }

  List<State> states() {
    return List.copyOf(states);
  }

  private void commit(State state) throws IOException {
    write(state);
    git("add", "-A");
    git("commit", "-q", "-m", "State " + states.size());
    git("tag", "s" + states.size());
    states.add(state);
  }

  private void write(State state) throws IOException {
    if (Files.exists(feeds())) {
      try (Stream<Path> recipes = Files.list(feeds().resolve("mash"))) {
        for (Path recipe : recipes.toList()) {
          Files.delete(recipe);
        }
      }
    }
    put("pellucid.yaml", "format: 1\nname: A farm of tests\ncurrency: EUR\njurisdiction: none\n");
    put("sources.yaml", "test: {standing: invented, cite: for tests}\n");
    put("groups.yaml", "stock: Stock\n");
    put(
        "nutrients/all.yaml",
        """
        moisture: {title: Moisture, unit: "%", of-the-whole: yes, stability: stable}
        crude-protein: {title: Protein, unit: "%", of-the-whole: yes, stability: stable}
        """);
    ingredient("maize", state.maizeProtein(), state.spaced() ? "# as analysed\n" : "");
    ingredient("wheat", 12, "");
    ingredient("soybean", 46, "");
    ingredient("fish-meal", 64, "");
    ingredient("lysine-hcl", 90, "");
    put(
        "prices/2026.yaml",
        "from: 2026-01-01\nsource: test\nprices:\n  maize: 0.25 EUR/kg\n  wheat: "
            + state.wheatPrice()
            + " EUR/kg\n  soybean: 0.5 EUR/kg\n  fish-meal: 1.6 EUR/kg\n  lysine-hcl: 2 EUR/kg\n");
    put(
        "limits/house.limits",
        "profile house \"The house\"\n  source test\n\nlimits\n  crude-protein  min "
            + state.houseMinimum()
            + " %\n");
    put(
        "premixes/P-IN.premix",
        "premix P-IN\n\nmix\n  lysine-hcl  " + state.lysine() + " %\n\ncarrier\n  wheat  rest\n");
    put("premixes/P-OUT.premix", "premix P-OUT\n\nmix\n  P-IN  50 %\n\ncarrier\n  maize  rest\n");
    for (String code : state.shares().keySet()) {
      put("mash/" + code + ".recipe", recipe(state, code));
    }
  }

  private void ingredient(String name, double protein, String comment) throws IOException {
    put(
        "ingredients/" + name + ".yaml",
        comment
            + "name: "
            + name
            + "\ngroups: [stock]\nform: meal\ncontents:\n  - source: test\n"
            + "    moisture: 10 %\n    crude-protein: "
            + protein
            + " %\n");
  }

  private static String recipe(State state, String code) {
    String gap = state.spaced() ? "      " : "  ";
    StringBuilder text = new StringBuilder("recipe " + code + "\n");
    text.append(state.isOfHouse(code) ? "  meets" + gap + "house\n" : "");
    text.append("\nmix\n");
    int[] share = state.share(code);
    for (int i = 0; i < share.length; i++) {
      String name = i < STOCK.size() ? STOCK.get(i) : "P-OUT";
      if (share[i] > 0) {
        text.append("  ").append(name).append(gap).append(share[i]).append(" %\n");
      }
    }
    return text.append("\nlimits\n  crude-protein").append(gap).append("min 10 %\n").toString();
  }

  private void put(String path, String text) throws IOException {
    Path file = feeds().resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private void git(String... words) throws IOException {
    git(root, words);
  }

  /** What git says, by a name that is nobody's. */
  static String git(Path folder, String... words) throws IOException {
    List<String> command = new ArrayList<>(List.of("git"));
    for (String set :
        List.of(
            "user.name=test",
            "user.email=test@example.invalid",
            "commit.gpgsign=false",
            "init.defaultBranch=trunk")) {
      command.add("-c");
      command.add(set);
    }
    command.addAll(List.of(words));
    Process git =
        new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true).start();
    git.getOutputStream().close();
    String said = new String(git.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    try {
      assertEquals(0, git.waitFor(), said);
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
    return said;
  }
}
