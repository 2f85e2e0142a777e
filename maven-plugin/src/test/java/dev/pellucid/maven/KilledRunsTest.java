package dev.pellucid.maven;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Each goal that writes is killed in its own process while it writes one state over another, and
 * the other over the one, half of the times at any moment and half just after it began to write:
 * every file must be whole, of one state or the other. {@code -Dpellucid.kills=200} kills each goal
 * so often; else a few times.
 */
class KilledRunsTest {
  private static final int KILLS = Integer.getInteger("pellucid.kills", 3);
  private static final String HALF = "\\.pellucid-\\d+\\.half";

  @TempDir Path root = Path.of("");

  @ParameterizedTest
  @EnumSource(WritingGoal.class)
  void leaveWholeFiles(WritingGoal goal) throws Exception {
    Path feeds = KilledFolder.plant(root.resolve("mill/feeds"));
    Map<String, Set<String>> whole = new TreeMap<>();
    Set<String> always = new TreeSet<>();
    for (int state = 0; state < 2; state++) {
      goal.run(feeds, state);
      Map<String, String> texts = texts(feeds, goal);
      texts.forEach((path, text) -> add(whole, path, text));
      if (state == 0) {
        always.addAll(texts.keySet());
      } else {
        always.retainAll(texts.keySet());
      }
    }
    assertTrue(whole.size() >= goal.files(), whole.keySet().toString());
    assertTrue(whole.values().stream().anyMatch(texts -> texts.size() == 2), "nothing changes");
    Random random = new Random(20261128);
    int halves = 0;
    for (int kill = 0; kill < KILLS; kill++) {
      killOnce(goal, feeds, kill % 2 == 0, random);
      Map<String, String> left = texts(feeds, goal);
      for (Map.Entry<String, String> file : left.entrySet()) {
        boolean isWhole = whole.getOrDefault(file.getKey(), Set.of()).contains(file.getValue());
        assertTrue(isWhole, () -> goal + ": " + file.getKey() + " is not whole");
      }
      assertTrue(left.keySet().containsAll(always), () -> goal + ": " + left.keySet());
      halves += clear(feeds);
    }
    System.out.println(goal + ": " + KILLS + " kills, " + halves + " hidden files were left");
  }

  private static void add(Map<String, Set<String>> whole, String path, String text) {
    whole.computeIfAbsent(path, none -> new TreeSet<>()).add(text);
  }

  private static void killOnce(WritingGoal goal, Path feeds, boolean amidWriting, Random random)
      throws Exception {
    Process child =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xshare:auto",
                "-cp",
                System.getProperty("java.class.path"),
                WritingGoal.class.getName(),
                goal.name(),
                feeds.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    try (BufferedReader said =
        new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
      assertEquals(WritingGoal.READY, said.readLine());
      if (amidWriting) {
        awaitHalf(goal.into(feeds));
      }
      TimeUnit.MICROSECONDS.sleep(random.nextInt(amidWriting ? 20_000 : 250_000));
    } finally {
      child.destroyForcibly();
      assertTrue(child.waitFor(30, TimeUnit.SECONDS));
    }
  }

  /** Until a file is being written; some seconds at most, for one may have been missed. */
  private static void awaitHalf(Path into) throws InterruptedException {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(3);
    while (System.nanoTime() < end && !holdsHalf(into.toFile())) {
      TimeUnit.MICROSECONDS.sleep(100);
    }
  }

  private static boolean holdsHalf(File folder) {
    for (String name : Objects.requireNonNullElse(folder.list(), new String[0])) {
      if (name.matches(HALF) || (name.indexOf('.') < 0 && holdsHalf(new File(folder, name)))) {
        return true;
      }
    }
    return false;
  }

  /** Texts of what the goal writes; a name that is not one of a whole file is nobody's. */
  private static Map<String, String> texts(Path feeds, WritingGoal goal) throws IOException {
    Map<String, String> texts = new TreeMap<>();
    try (Stream<Path> all = Files.walk(goal.into(feeds))) {
      for (Path file : all.filter(KilledRunsTest::isFile).toList()) {
        String path = feeds.relativize(file).toString().replace(File.separatorChar, '/');
        if (!file.getFileName().toString().matches(HALF) && goal.writes(path)) {
          texts.put(path, Files.readString(file));
        }
      }
    }
    return texts;
  }

  private static boolean isFile(Path file) {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
  }

  private static int clear(Path feeds) throws IOException {
    try (Stream<Path> all = Files.walk(feeds)) {
      List<Path> halves = all.filter(file -> file.getFileName().toString().matches(HALF)).toList();
      for (Path half : halves) {
        Files.delete(half);
      }
      return halves.size();
    }
  }
}
