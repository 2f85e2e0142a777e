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
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Slips of one line in the example, of forty kinds that people make: the first finding of the run
 * stands at the slip, and there are few.
 *
 * <p>{@code -Dpellucid.slips=50} makes so many of each kind; {@code -Dpellucid.slipsTold=FILE}
 * writes those that are not told at their place.
 */
class SlipsTest {
  private static final long SEED = 20_261_128L;
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Path EXAMPLE = Example.whole();
  private static final int USUAL = 2;
  private static final int MOST_FINDINGS = 3;
  private static final double TOLD = 0.9;
  private static final double CHANCE = 0.05;
  private static final int MANY = 400;
  private static final double FEW = 0.93;

  private record Outcome(SlipKind kind, Slip slip, boolean told, List<Finding> findings) {
    boolean isFew() {
      return findings.size() <= MOST_FINDINGS;
    }

    String words() {
      String first =
          findings.isEmpty()
              ? "nothing"
              : findings.get(0).span().place() + " " + findings.get(0).headline();
      String now =
          slip.lost() ? "lost or moved" : slip.after().split("\n", -1)[slip.line() - 1].strip();
      return kind
          + " "
          + slip.path()
          + ":"
          + slip.line()
          + "\n  was  "
          + slip.before().strip()
          + "\n  is   "
          + now
          + "\n  "
          + findings.size()
          + " findings, first "
          + first;
    }
  }

  @Test
  void theFirstFindingStandsAtTheSlip() throws IOException {
    int each = Integer.getInteger("pellucid.slips", USUAL);
    Texts example = Texts.at(EXAMPLE);
    List<Outcome> all = new ArrayList<>();
    for (SlipKind kind : SlipKind.values()) {
      List<Outcome> of = new ArrayList<>();
      for (Slip slip : slips(kind, each)) {
        of.add(outcome(kind, example, slip));
      }
      assertEquals(each, of.size(), kind + " has too few lines");
      all.addAll(of);
      System.out.println(row(kind.name(), of));
    }
    System.out.println(row("ALL", all));
    String file = System.getProperty("pellucid.slipsTold", "");
    if (!file.isEmpty()) {
      Files.write(
          Path.of(file),
          all.stream().filter(one -> !one.told() || !one.isFew()).map(Outcome::words).toList());
    }
    long told = all.stream().filter(Outcome::told).count();
    long few = all.stream().filter(Outcome::isFew).count();
    // Of few slips chance takes some; in the long run nine of ten are told.
    double least = all.size() < MANY ? TOLD - CHANCE : TOLD;
    assertTrue(told >= least * all.size(), told + " of " + all.size() + " are told at the slip");
    assertTrue(few >= FEW * all.size(), few + " of " + all.size() + " have few findings");
  }

  private static String row(String name, List<Outcome> of) {
    long told = of.stream().filter(Outcome::told).count();
    long silent = of.stream().filter(one -> one.findings().isEmpty()).count();
    long few = of.stream().filter(Outcome::isFew).count();
    return "%-22s %4d  given first %3.0f %%  silent %3.0f %%  at most three %3.0f %%"
        .formatted(
            name,
            of.size(),
            100.0 * told / of.size(),
            100.0 * silent / of.size(),
            100.0 * few / of.size());
  }

  private static Outcome outcome(SlipKind kind, Texts example, Slip slip) {
    List<Finding> findings =
        CheckGoal.check(example.over(Map.of(slip.path(), slip.after())), DAY).findings();
    boolean told = !findings.isEmpty() && slip.isToldBy(findings.get(0));
    return new Outcome(kind, slip, told, findings);
  }

  /** So many of a kind, no two at one place with one outcome. */
  private static List<Slip> slips(SlipKind kind, int count) throws IOException {
    Random random = new Random(SEED + kind.name().hashCode());
    List<Slip> all = new ArrayList<>();
    for (int round = 0; round < 4; round++) {
      for (String path : paths(kind)) {
        List<String> lines = Files.readAllLines(EXAMPLE.resolve(path));
        for (int at = 0; at < lines.size(); at++) {
          kind.at(path, lines, at, random).filter(slip -> !all.contains(slip)).ifPresent(all::add);
        }
      }
    }
    Collections.shuffle(all, random);
    return all.subList(0, Math.min(count, all.size()));
  }

  private static List<String> paths(SlipKind kind) throws IOException {
    try (Stream<Path> files = Files.walk(EXAMPLE)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> EXAMPLE.relativize(file).toString().replace('\\', '/'))
          .filter(
              path ->
                  path.endsWith(".yaml")
                      || path.endsWith(".recipe")
                      || path.endsWith(".premix")
                      || path.endsWith(".limits"))
          .filter(path -> !path.startsWith("target/"))
          .filter(kind::isOf)
          .sorted()
          .toList();
    }
  }
}
