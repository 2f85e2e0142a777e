package dev.pellucid.engine.compute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.compute.Slopes.Slope;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.judge.Judge;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.optimise.Requirement;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What one point more does, against the feed with one point more, over the example. */
class SlopesTest {
  private static final Path EXAMPLE = Example.whole();

  private static Shared example() throws IOException {
    return Shared.of(ReadFolder.of(Texts.at(EXAMPLE)), Days.on(LocalDate.of(2026, 11, 28)));
  }

  /** Points by which lines move at random; empty where the rest has not as much to give. */
  private static Optional<double[]> moved(ComputedFeed feed, Random random, double by) {
    List<Line> lines = feed.recipe().lines();
    double[] points = new double[lines.size()];
    double sum = 0;
    for (Line line : lines) {
      if (!line.rest() && line.designed().kgPer100() > 3) {
        points[line.index()] = random.nextDouble() * 2 * by - by;
        sum += points[line.index()];
      }
    }
    Optional<Line> rest = feed.recipe().rest();
    if (rest.isEmpty() || Math.abs(sum) > rest.get().designed().kgPer100() - 1) {
      return Optional.empty();
    }
    points[rest.get().index()] = -sum;
    return Optional.of(points);
  }

  @Test
  @DisplayName(
      "what is left to each limit is a plain sum over lines: moved by points it is as told")
  void limitsAreSums() throws IOException {
    Shared shared = example();
    Random random = new Random(20);
    int held = 0;
    for (String path : shared.texts().ending(".recipe")) {
      Checked checked = Streamed.judged(shared, path);
      ComputedFeed feed = checked.feed().orElseThrow();
      Slopes here = new Slopes(feed);
      Optional<double[]> points = moved(feed, random, 2);
      if (points.isEmpty()) {
        continue;
      }
      Slopes there =
          new Slopes(
              feed.weighed(Weighing.moved(feed, points.get()).orElseThrow()).feed().orElseThrow());
      for (LimitStatus status : checked.recipe().orElseThrow().limits()) {
        Requirement.OfLimit limit = Requirement.OfLimit.judged(status.limit());
        List<Slope> before = limit.rooms(here);
        List<Slope> after = limit.rooms(there);
        for (int i = 0; i < before.size(); i++) {
          double told = told(before.get(i), points.get());
          double size = Math.abs(told) + size(before.get(i), feed);
          String what = path + " " + status.limit().name();
          if (limit.bends()) {
            // The plane that touches it lies above what is left everywhere.
            assertTrue(after.get(i).now() <= told + 1e-9 * size, what);
          } else {
            // The moisture of a feed that is dried is itself a quotient.
            boolean water = status.limit().subject().text().contains("moisture");
            assertEquals(told, after.get(i).now(), (water ? 1e-4 : 1e-9) * size, what);
          }
          held++;
        }
      }
    }
    assertTrue(held > 800, "only " + held + " limits were held");
  }

  @Test
  @DisplayName("a limit is kept where what is left to it is not below zero, and only there")
  void signs() throws IOException {
    Shared shared = example();
    Random random = new Random(21);
    int broken = 0;
    for (String path : shared.texts().ending(".recipe")) {
      ComputedFeed written = Streamed.judged(shared, path).feed().orElseThrow();
      Optional<double[]> points = moved(written, random, 4);
      if (points.isEmpty()) {
        continue;
      }
      ComputedFeed feed =
          written.weighed(Weighing.moved(written, points.get()).orElseThrow()).feed().orElseThrow();
      Slopes slopes = new Slopes(feed);
      for (LimitStatus status : Judge.limits(feed)) {
        double least = Double.POSITIVE_INFINITY;
        for (Slope room : Requirement.OfLimit.judged(status.limit()).rooms(slopes)) {
          least = Math.min(least, room.now());
        }
        boolean keeps = status.verdict().keeps();
        broken += keeps ? 0 : 1;
        assertEquals(keeps, least >= -1e-12, path + " " + status.limit().name() + " " + least);
      }
    }
    assertTrue(broken > 10, "only " + broken + " limits were broken");
  }

  @Test
  @DisplayName("money and bagged kg are sums over lines, and their quotient is the cost per kg")
  void money() throws IOException {
    Shared shared = example();
    Random random = new Random(22);
    for (String path : shared.texts().ending(".recipe")) {
      ComputedFeed feed = Streamed.judged(shared, path).feed().orElseThrow();
      Slopes here = new Slopes(feed);
      assertEquals(
          feed.costPerKg(), here.money().now() / here.bagged().now(), 1e-12 * feed.costPerKg());
      Optional<double[]> points = moved(feed, random, 2);
      if (points.isPresent()) {
        ComputedFeed there =
            feed.weighed(Weighing.moved(feed, points.get()).orElseThrow()).feed().orElseThrow();
        assertEquals(there.costPer100(), told(here.money(), points.get()), 1e-9, path);
        assertEquals(there.bagged(), told(here.bagged(), points.get()), 1e-8, path);
      }
    }
  }

  private static double told(Slope slope, double[] points) {
    double told = slope.now();
    for (int i = 0; i < points.length; i++) {
      told += slope.perPoint()[i] * points[i];
    }
    return told;
  }

  private static double size(Slope slope, ComputedFeed feed) {
    double size = 1e-15;
    for (Line line : feed.recipe().lines()) {
      size += Math.abs(slope.perPoint()[line.index()] * line.designed().kgPer100());
    }
    return size;
  }
}
