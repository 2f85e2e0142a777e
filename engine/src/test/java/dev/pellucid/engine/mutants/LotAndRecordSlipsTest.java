package dev.pellucid.engine.mutants;

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
import org.junit.jupiter.api.Test;

/** Of ten slips in lots and batch records nine are told first, and with few words. */
class LotAndRecordSlipsTest {
  private static final long SEED = 20_261_128L;
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Path EXAMPLE = Example.whole();
  private static final int COUNT = 40;
  private static final int MOST_FINDINGS = 3;
  private static final int HELD = 90;

  @Test
  void slipsInLotsAreToldWhereTheyStand() throws IOException {
    hold(SlipKind.LOT_OFF, "lots/2026-11.yaml");
  }

  @Test
  void slipsInBatchRecordsAreToldWhereTheyStand() throws IOException {
    hold(
        SlipKind.RECORD_TEN_TIMES,
        "batches/CF-31-2026-11-18-1.yaml",
        "batches/MIN-WW-2026-11-12-1.yaml",
        "batches/TG-44-2026-12-01-1.yaml");
  }

  private static void hold(SlipKind kind, String... paths) throws IOException {
    Texts example = Texts.at(EXAMPLE);
    List<Slip> slips = slips(kind, paths);
    int told = 0;
    int few = 0;
    StringBuilder missed = new StringBuilder();
    for (Slip slip : slips) {
      List<Finding> findings =
          CheckGoal.check(example.over(Map.of(slip.path(), slip.after())), DAY).findings();
      boolean first = !findings.isEmpty() && slip.isToldBy(findings.get(0));
      told += first ? 1 : 0;
      few += findings.size() <= MOST_FINDINGS ? 1 : 0;
      if (!first) {
        missed.append(slip.path()).append(':').append(slip.line()).append(slip.before());
        missed.append('\n');
      }
    }
    assertTrue(told * 100 >= HELD * slips.size(), told + " of " + slips.size() + "\n" + missed);
    assertTrue(few * 100 >= HELD * slips.size(), few + " of " + slips.size());
  }

  private static List<Slip> slips(SlipKind kind, String... paths) throws IOException {
    Random random = new Random(SEED + kind.name().hashCode());
    List<Slip> all = new ArrayList<>();
    for (int round = 0; round < 4; round++) {
      for (String path : paths) {
        List<String> lines = Files.readAllLines(EXAMPLE.resolve(path));
        for (int at = 0; at < lines.size(); at++) {
          kind.at(path, lines, at, random).filter(slip -> !all.contains(slip)).ifPresent(all::add);
        }
      }
    }
    Collections.shuffle(all, random);
    return all.subList(0, Math.min(COUNT, all.size()));
  }
}
