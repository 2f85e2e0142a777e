package dev.pellucid.engine.mutants;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.OwnFolder;
import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.engine.goal.Version;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Related;
import dev.pellucid.text.Position;
import dev.pellucid.text.PrintedPaths;
import dev.pellucid.text.Span;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The example with one slip somewhere, again and again: no goal throws, every finding stands at a
 * place that exists, and nothing takes long.
 *
 * <p>{@code -Dpellucid.mutants=20000} makes so many. A mutant is known by its number, which a
 * failure tells; {@code -Dpellucid.mutant=4711} makes that one alone.
 */
class MutantsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Path EXAMPLE = Example.whole();
  private static final PrintedPaths PATHS = new PrintedPaths("recipes/");
  private static final int USUAL = 300;

  /** One mutant in so many goes through all goals, the others through the check. */
  private static final int ALL_GOALS = 20;

  /** A long run says how far it is. */
  private static final int TOLD_AFTER = 500;

  private static final long LONGEST_MILLIS = 5_000;

  /** A place of the folder each, so that small ones are hit as often as large ones. */
  private static final List<String> PLACES =
      List.of(
          "nutrients/",
          "sources.yaml",
          "groups.yaml",
          "species/",
          "practice/",
          "law/",
          "plant/",
          "label/",
          "prices/",
          "lots/",
          "batches/",
          "pellucid.yaml",
          "limits/",
          "ingredients/",
          "premixes/",
          "catfish/");

  private static final List<Mutation> MUTATIONS = List.of(Mutation.values());

  @TempDir Path folder;
  @TempDir Path pages;

  @Test
  void noSlipThrowsOrHangsOrIsToldAtNoPlace() throws IOException {
    copyExample();
    List<String> paths = paths();
    int alone = Integer.getInteger("pellucid.mutant", -1);
    int count = Integer.getInteger("pellucid.mutants", USUAL);
    List<String> failures = new ArrayList<>();
    int changed = 0;
    for (int i = alone < 0 ? 0 : alone; i < (alone < 0 ? count : alone + 1); i++) {
      changed += mutant(i, paths, alone >= 0, failures) ? 1 : 0;
      if ((i + 1) % TOLD_AFTER == 0) {
        System.out.println((i + 1) + " mutants, failures: " + failures);
      }
    }
    assertEquals(List.of(), failures);
    assertTrue(alone >= 0 || changed > count / 2, changed + " of " + count + " were changed");
  }

  /** Whether the slip changed anything. */
  private boolean mutant(int number, List<String> paths, boolean alone, List<String> failures)
      throws IOException {
    Random random = new Random(number * 7919L);
    String place = PLACES.get(random.nextInt(PLACES.size()));
    List<String> there = paths.stream().filter(path -> path.startsWith(place)).toList();
    String path = there.get(random.nextInt(there.size()));
    Path file = folder.resolve(path);
    byte[] before = Files.readAllBytes(file);
    String what = slip(file, before, random) + " in " + path;
    boolean changed = !Files.exists(file) || !Arrays.equals(before, Files.readAllBytes(file));
    boolean allGoals = alone || number % ALL_GOALS == 0;
    try {
      if (changed) {
        look(allGoals, problem -> failures.add("mutant " + number + ", " + what + ": " + problem));
      }
    } finally {
      Files.write(file, before);
    }
    return changed;
  }

  private static String slip(Path file, byte[] before, Random random) throws IOException {
    int kind = random.nextInt(MUTATIONS.size() + 2);
    if (kind == MUTATIONS.size()) {
      Files.delete(file);
      return "FILE_LOST";
    }
    if (kind > MUTATIONS.size()) {
      byte[] stray = before.clone();
      stray[random.nextInt(stray.length)] = (byte) (0x80 + random.nextInt(0x80));
      Files.write(file, stray);
      return "STRAY_BYTE";
    }
    Mutation mutation = MUTATIONS.get(kind);
    String text = new String(before, StandardCharsets.UTF_8);
    Files.writeString(file, mutation.of(text, random));
    return mutation.name();
  }

  private void look(boolean allGoals, Consumer<String> failures) throws IOException {
    try {
      long millis = check(failures);
      if (millis > LONGEST_MILLIS) {
        // On a busy machine the first of two may have had to wait.
        millis = Math.min(millis, check(failures));
      }
      if (millis > LONGEST_MILLIS) {
        failures.accept("the check took " + millis + " ms");
      }
      if (allGoals) {
        goals();
      }
    } catch (RuntimeException | StackOverflowError thrown) {
      StackTraceElement[] trace = thrown.getStackTrace();
      failures.accept(thrown + (trace.length > 0 ? " at " + trace[0] : ""));
    }
  }

  /** How long it took. */
  private long check(Consumer<String> failures) throws IOException {
    long start = System.nanoTime();
    OwnFolder.checkWithReports(folder, PATHS, DAY)
        .check()
        .findings()
        .forEach(finding -> places(finding, failures));
    return (System.nanoTime() - start) / 1_000_000;
  }

  private void goals() throws IOException {
    OwnFolder.batchSheets(folder, DAY, Version.committed("1a2b3c4"));
    OwnFolder.figures(folder, "", false);
    OwnFolder.report(folder, PATHS, DAY, List.of(), pages);
    Pellucid.compare(FolderState.at(EXAMPLE), FolderState.at(folder), DAY, "compare.html");
    OwnFolder.explain(folder, DAY, "CG-36", "crude-protein");
    OwnFolder.trace(folder, PATHS, "", "");
    OwnFolder.leastCost(folder, DAY, "CG-36", Map.of("prices", "any"), PATHS).shown();
  }

  private void places(Finding finding, Consumer<String> failures) {
    place(finding, finding.span(), failures);
    for (Related related : finding.related()) {
      place(finding, related.span(), failures);
    }
  }

  /** The settings may be what is missing; every other place is there to be looked at. */
  private void place(Finding finding, Span span, Consumer<String> failures) {
    String path = span.file().path();
    boolean there = path.equals("pellucid.yaml") || Files.isRegularFile(folder.resolve(path));
    if (!there) {
      failures.accept("no such file " + span.place() + " [" + finding.code() + "]");
      return;
    }
    Position from = span.from();
    if (from.line() > span.file().lineCount()
        || from.column() > span.file().line(from.line()).length() + 1) {
      failures.accept("no such place " + span.place() + " [" + finding.code() + "]");
    }
  }

  private List<String> paths() throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> folder.relativize(file).toString().replace('\\', '/'))
          .filter(path -> !path.endsWith(".md"))
          .sorted()
          .toList();
    }
  }

  private void copyExample() throws IOException {
    try (Stream<Path> files = Files.walk(EXAMPLE)) {
      for (Path file : files.filter(MutantsTest::isCopied).toList()) {
        Path to = folder.resolve(EXAMPLE.relativize(file).toString());
        Files.createDirectories(to.getParent());
        Files.copy(file, to);
      }
    }
  }

  /**
   * Records of figures are made by a goal of its own; where they are kept a check reads all twice.
   */
  private static boolean isCopied(Path file) {
    return Files.isRegularFile(file) && !file.toString().endsWith(".figures");
  }
}
