package dev.pellucid.engine.benchmark;

import dev.pellucid.engine.Example;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * How long a user waits: whole processes from start to end. An empty Maven build, a plain script
 * over the same recipes ({@code table.py}), and Maven builds that check a folder with all reports,
 * as they are and with the settings that the page of the goals gives for short builds. All run in
 * turn, each round beginning with another.
 *
 * <p>Each build must report every recipe and every limit. With a build before at hand it runs in
 * turn too, and both must report the same to the last byte, also of a folder in which one recipe in
 * ten breaks a limit.
 *
 * <p>Arguments: the script, how Maven is called, the version of the plugin, the rounds, the numbers
 * of recipes with commas, and a local repository of Maven in which a build before is installed
 * under the same version, or nothing.
 */
public final class ProcessBenchmark {
  /** The page that gives {@code .mvn/jvm.config}. */
  private static final Path GOALS = Path.of("docs", "goals", "README.md");

  /** Where it gives that file. */
  private static final String SETTINGS_BEGIN = "```jvm.config\n";

  private static final int BROKEN_EACH = 10;
  private static final int HELD_TO_BEFORE = 1000;

  private final Path root;
  private final String maven;
  private final String version;
  private final Map<String, List<Command.Run>> runs = new LinkedHashMap<>();
  private final List<Checking> commands = new ArrayList<>();

  /** A command and what must be found in what it leaves behind. */
  private record Checking(Command command, Path report, int recipes, int broken) {}

  private ProcessBenchmark(Path root, String maven, String version) {
    this.root = root;
    this.maven = maven;
    this.version = version;
  }

  public static void main(String[] arguments) throws Exception {
    Path root = Files.createTempDirectory("pellucid-processes");
    String settings = settings(GOALS);
    ProcessBenchmark benchmark = new ProcessBenchmark(root, arguments[1], arguments[2]);
    String before = arguments.length > 5 ? arguments[5] : "";
    benchmark.add("empty build", benchmark.project("empty", "", ""), "", 0, 0);
    for (String count : arguments[4].split(",", -1)) {
      int recipes = Integer.parseInt(count.trim());
      BenchmarkFolder folder =
          BenchmarkFolder.write(root.resolve("f" + count), Example.whole(), recipes, 0);
      benchmark.addScript(Path.of(arguments[0]), folder);
      benchmark.addCheck("check of " + count, folder, "", "");
      benchmark.addCheck("check of " + count + ", settings", folder, settings, "");
      if (!before.isBlank()) {
        benchmark.addCheck("before: check of " + count, folder, "", before);
      }
    }
    try {
      if (!before.isBlank()) {
        benchmark.hold(Example.whole(), before);
      }
      benchmark.run(Integer.parseInt(arguments[3]));
    } finally {
      new BenchmarkFolder(root, List.of(), 0).delete();
    }
  }

  private static String settings(Path readme) throws IOException {
    String text = Files.readString(readme);
    int begin = text.indexOf(SETTINGS_BEGIN) + SETTINGS_BEGIN.length();
    return text.substring(begin, text.indexOf("\n```", begin));
  }

  private void addScript(Path script, BenchmarkFolder folder) {
    int recipes = folder.recipes().size();
    Command command =
        new Command(
            "script over " + recipes,
            root,
            List.of("python3", script.toAbsolutePath().toString(), folder.root().toString()),
            Map.of());
    commands.add(new Checking(command, Path.of(""), recipes, 0));
  }

  private void addCheck(String name, BenchmarkFolder folder, String settings, String repository)
      throws IOException {
    Path project = project(name.replaceAll("[^a-z0-9]+", "-"), settings, folder.root().toString());
    add(name, project, repository, folder.recipes().size(), folder.broken());
  }

  private void add(String name, Path project, String repository, int recipes, int broken) {
    List<String> words = new ArrayList<>(List.of(maven, "-o", "-B", "-q", "verify"));
    if (!repository.isBlank()) {
      words.add("-Dmaven.repo.local=" + repository);
    }
    Path report = project.resolve("target/check-reports/findings.json");
    Command command = new Command(name, project, words, Map.of("MAVEN_OPTS", ""));
    commands.add(new Checking(command, report, recipes, broken));
  }

  /** Both builds once over a folder with broken limits: what they report must be the same. */
  private void hold(Path example, String before) throws IOException, InterruptedException {
    List<Checking> timed = List.copyOf(commands);
    commands.clear();
    BenchmarkFolder broken =
        BenchmarkFolder.write(root.resolve("broken"), example, HELD_TO_BEFORE, BROKEN_EACH);
    addCheck("now", broken, "", "");
    addCheck("then", broken, "", before);
    Map<Path, String> reported = new HashMap<>();
    for (Checking one : commands) {
      look(one, one.command().run(), reported, broken.root());
    }
    commands.clear();
    commands.addAll(timed);
  }

  /** A project of its own, so that settings of one are none of another's. */
  private Path project(String name, String settings, String folder) throws IOException {
    Path project = root.resolve(name);
    Files.createDirectories(project.resolve(".mvn"));
    if (!settings.isEmpty()) {
      Files.writeString(project.resolve(".mvn/jvm.config"), settings + "\n");
    }
    String plugin =
        folder.isEmpty()
            ? ""
            : """
              <build><plugins><plugin>
                <groupId>dev.pellucid</groupId>
                <artifactId>pellucid-maven-plugin</artifactId>
                <version>%s</version>
                <executions><execution><phase>verify</phase><goals><goal>check</goal></goals></execution></executions>
                <configuration><folder>%s</folder><day>2026-11-25</day><fixedDay>true</fixedDay><failOn>never</failOn></configuration>
              </plugin></plugins></build>
              """
                .formatted(version, folder);
    Files.writeString(
        project.resolve("pom.xml"),
        """
        <project xmlns="http://maven.apache.org/POM/4.0.0">
          <modelVersion>4.0.0</modelVersion>
          <groupId>a.benchmark</groupId><artifactId>measured</artifactId><version>1</version>
          <packaging>pom</packaging>
          %s</project>
        """
            .formatted(plugin));
    return project;
  }

  private void run(int rounds) throws IOException, InterruptedException {
    Map<Path, String> reported = new HashMap<>();
    for (int round = 0; round < rounds; round++) {
      for (int turn = 0; turn < commands.size(); turn++) {
        Checking one = commands.get(Math.floorMod(turn + round, commands.size()));
        Command.Run run = one.command().run();
        look(one, run, reported, Path.of(String.valueOf(one.recipes())));
        runs.computeIfAbsent(one.command().name(), none -> new ArrayList<>()).add(run);
      }
    }
    System.out.print(table(rounds));
  }

  private static void look(Checking one, Command.Run run, Map<Path, String> reported, Path folder)
      throws IOException {
    if (one.recipes() == 0) {
      return;
    }
    int limits = one.recipes() * RecipeWriter.LIMITS;
    if (one.report().toString().isEmpty()) {
      require(run.said().contains(one.recipes() + " recipes, " + limits + " limits"), run.said());
      return;
    }
    String report = Files.readString(one.report());
    require(report.contains("\"limits\": " + limits), "not all limits were judged");
    int told = report.split("\"code\": \"below-minimum\"", -1).length - 1;
    require(told == one.broken(), "told " + told + " broken limits of " + one.broken());
    String other = reported.putIfAbsent(folder, report);
    require(other == null || other.equals(report), one.command().name() + " reports otherwise");
  }

  private static void require(boolean holds, String otherwise) {
    if (!holds) {
      throw new IllegalStateException(otherwise);
    }
  }

  private String table(int rounds) {
    StringBuilder table = new StringBuilder();
    table.append(
        String.format(
            Locale.ROOT,
            "%nWhole processes, %d rounds: median (least to most)%n%-34s %-22s %-22s %-14s %s%n",
            rounds,
            "",
            "seconds by the clock",
            "seconds of processors",
            "/ empty build",
            "/ script"));
    List<Command.Run> empty = List.of();
    List<Command.Run> script = List.of();
    for (Map.Entry<String, List<Command.Run>> entry : runs.entrySet()) {
      empty = entry.getKey().startsWith("empty") ? entry.getValue() : empty;
      script = entry.getKey().startsWith("script") ? entry.getValue() : script;
      table.append(
          String.format(
              Locale.ROOT,
              "%-34s %-22s %-22s %-14s %s%n",
              entry.getKey(),
              spread(clocks(entry.getValue())),
              spread(entry.getValue().stream().mapToDouble(Command.Run::processor).toArray()),
              ratio(entry.getValue(), empty),
              ratio(entry.getValue(), script)));
    }
    return table.toString();
  }

  private static double[] clocks(List<Command.Run> runs) {
    return runs.stream().mapToDouble(Command.Run::clock).toArray();
  }

  private static String spread(double[] seconds) {
    Arrays.sort(seconds);
    return String.format(
        Locale.ROOT,
        "%.2f (%.2f to %.2f)",
        median(seconds),
        seconds[0],
        seconds[seconds.length - 1]);
  }

  /** The median of the ratios of single rounds. */
  private static String ratio(List<Command.Run> runs, List<Command.Run> measure) {
    if (measure.isEmpty()) {
      return "";
    }
    double[] ratios = clocks(runs);
    for (int i = 0; i < ratios.length; i++) {
      ratios[i] /= measure.get(i).clock();
    }
    Arrays.sort(ratios);
    return String.format(Locale.ROOT, "%.2f", median(ratios));
  }

  private static double median(double[] sorted) {
    return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
  }
}
