package dev.pellucid.engine.mutants;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.goal.CheckGoal;
import dev.pellucid.finding.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Figures of the plant, of species and of practice, ten times what they were or a tenth: nine of
 * ten are told first, at their own line.
 *
 * <p>{@code -Dpellucid.plantSlips=500} makes so many of each; {@code
 * -Dpellucid.plantSlipsTold=FILE} adds those to a file that are not told so.
 */
class PlantAndPracticeSlipsTest {
  private static final long SEED = 20_261_129L;
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Path EXAMPLE = Example.whole();
  private static final int USUAL = 40;

  @ParameterizedTest
  @EnumSource(names = {"PLANT_TEN_TIMES", "PRACTICE_OFF"})
  void nineOfTenAreToldFirst(SlipKind kind) throws IOException {
    int each = Integer.getInteger("pellucid.plantSlips", USUAL);
    Texts example = Texts.at(EXAMPLE);
    assertEquals(List.of(), CheckGoal.check(example, DAY).findings());
    List<String> untold = new ArrayList<>();
    List<Slip> slips = slips(kind);
    List<Slip> some = slips.subList(0, Math.min(each, slips.size()));
    int few = 0;
    for (Slip slip : some) {
      List<Finding> findings =
          CheckGoal.check(example.over(Map.of(slip.path(), slip.after())), DAY).findings();
      few += findings.size() <= 3 ? 1 : 0;
      if (findings.isEmpty() || !slip.isToldBy(findings.get(0))) {
        untold.add(words(slip, findings));
      }
    }
    System.out.println(
        "%s: %d of %d are not given first, %d with at most three findings"
            .formatted(kind, untold.size(), some.size(), few));
    String file = System.getProperty("pellucid.plantSlipsTold", "");
    if (!file.isEmpty()) {
      Files.write(Path.of(file + "." + kind), untold);
    }
    assertTrue(untold.size() * 10 <= some.size(), () -> String.join("\n", untold));
  }

  private static String words(Slip slip, List<Finding> findings) {
    String now = slip.after().split("\n", -1)[slip.line() - 1].strip();
    String first =
        findings.isEmpty()
            ? "nothing"
            : findings.get(0).span().place() + " " + findings.get(0).headline();
    return "%s:%d\n  was  %s\n  is   %s\n  %d findings, first %s"
        .formatted(slip.path(), slip.line(), slip.before().strip(), now, findings.size(), first);
  }

  private static List<Slip> slips(SlipKind kind) throws IOException {
    Random random = new Random(SEED);
    List<Slip> all = new ArrayList<>();
    for (String directory : List.of("plant", "species", "practice")) {
      try (var files = Files.list(EXAMPLE.resolve(directory))) {
        for (Path file : files.sorted().toList()) {
          String path = directory + "/" + file.getFileName();
          if (kind.isOf(path)) {
            of(kind, path, Files.readAllLines(file), random, all);
          }
        }
      }
    }
    Collections.shuffle(all, random);
    return all;
  }

  private static void of(
      SlipKind kind, String path, List<String> lines, Random random, List<Slip> all) {
    for (int round = 0; round < 8; round++) {
      for (int at = 0; at < lines.size(); at++) {
        kind.at(path, lines, at, random).filter(slip -> !all.contains(slip)).ifPresent(all::add);
      }
    }
  }
}
