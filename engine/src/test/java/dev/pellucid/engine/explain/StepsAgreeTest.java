package dev.pellucid.engine.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.compute.Losses;
import dev.pellucid.engine.compute.Row;
import dev.pellucid.engine.compute.Scenario;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.explain.Explanation.Sum;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.engine.resolve.Days;
import dev.pellucid.engine.resolve.Subject;
import dev.pellucid.engine.workspace.Checked;
import dev.pellucid.engine.workspace.ReadFolder;
import dev.pellucid.engine.workspace.Shared;
import dev.pellucid.engine.workspace.Streamed;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Whoever computes with the figures that are printed comes to the figures that are printed. */
class StepsAgreeTest {
  private static final Pattern DEVIATIONS =
      Pattern.compile("([0-9.]+) × ([0-9.]+), the standard.*");
  private static final Pattern DIVIDED =
      Pattern.compile("([0-9.]+)[^/]* / ([0-9.]+)( kg of feed)?.*");

  private static final Shared SHARED = shared();
  private static final List<Checked> FEEDS = new ArrayList<>();

  @BeforeAll
  static void allFeeds() {
    for (String code : SHARED.trees().recipes()) {
      FEEDS.add(Streamed.judged(SHARED, SHARED.trees().path(code).orElseThrow()));
    }
    assertTrue(FEEDS.size() > 10);
  }

  private static Shared shared() {
    try {
      Path example = Example.whole();
      return Shared.of(ReadFolder.of(Texts.at(example)), Days.on(LocalDate.of(2026, 11, 25)));
    } catch (IOException broken) {
      throw new IllegalStateException(broken);
    }
  }

  @Test
  void fromTheTargetToTheRoom() {
    int batches = 0;
    for (Checked one : FEEDS) {
      List<LimitStatus> limits = one.recipe().orElseThrow().limits();
      for (LimitStatus limit : limits) {
        List<Worked> judged =
            HowJudged.of(one.feed().orElseThrow(), List.of(limit), limit.limit().subject());
        assertEquals(1, judged.size());
        batches += agree(judged.get(0)) ? 1 : 0;
      }
    }
    assertTrue(batches > 10, batches + " in a part of batches");
  }

  /** Whether it is one of so many batches. */
  private static boolean agree(Worked table) {
    List<List<String>> rows = table.rows();
    String said = table.title() + "\n" + rows;
    int last = rows.size() - 1;
    BigDecimal bound = figure(rows, last - 1);
    BigDecimal judged = figure(rows, last - 2);
    assertEquals(0, judged.subtract(bound).abs().compareTo(figure(rows, last)), said);
    rows.forEach(row -> divided(row, said));
    if (!rows.get(last - 2).get(0).equals("Judged")) {
      return false;
    }
    BigDecimal margin = figure(rows, last - 3);
    assertEquals(0, figure(rows, last - 4).add(margin).compareTo(judged), said);
    Matcher product = DEVIATIONS.matcher(rows.get(last - 3).get(2));
    if (product.matches()) {
      BigDecimal off = new BigDecimal(product.group(1)).multiply(new BigDecimal(product.group(2)));
      assertEquals(
          0, off.setScale(margin.scale(), RoundingMode.HALF_UP).compareTo(margin.abs()), said);
    }
    return true;
  }

  private static BigDecimal figure(List<List<String>> rows, int row) {
    return new BigDecimal(rows.get(row).get(1));
  }

  /** 100 times for percent, and 1,000 times for g/MJ, where both sides stand in their own unit. */
  private static void divided(List<String> row, String said) {
    Matcher division = DIVIDED.matcher(row.get(2));
    BigDecimal result = new BigDecimal(row.get(1));
    if (!division.matches() || result.signum() == 0) {
      return;
    }
    double quotient = Double.parseDouble(division.group(1)) / Double.parseDouble(division.group(2));
    double times = result.doubleValue() / quotient;
    double factor =
        row.get(2).contains(" × 0.88") ? 0.88 : Math.pow(10, Math.rint(Math.log10(times)));
    double half = 0.5 * Math.pow(10, -result.scale());
    boolean rounded = row.get(2).contains("(rounded)");
    assertTrue(
        rounded || Math.abs(quotient * factor - result.doubleValue()) <= half * 1.0001, said);
  }

  @Test
  void whatEachStepKeepsIsWhatIsKept() {
    int found = 0;
    for (Checked one : FEEDS) {
      ComputedFeed feed = one.feed().orElseThrow();
      for (Row row : feed.rows()) {
        for (Nutrient nutrient : feed.nutrients().inOrder()) {
          Optional<Losses.Way> way = Losses.of(feed, row, nutrient, SHARED.tables().practice());
          double full = row.composition().expected().at(nutrient.index());
          if (way.isPresent() && full > 0) {
            found++;
            for (Scenario end : Scenario.values()) {
              double left = row.amount(end, nutrient.index()) / row.kg(end);
              assertEquals(full * way.get().kept(end), left, full * 1e-12);
            }
          }
        }
      }
    }
    assertTrue(found > 300, found + " ways");
  }

  /** No content stands without a source, and each coefficient and formula is shown. */
  @Test
  void everyContentHasASource() {
    for (Checked one : FEEDS) {
      for (String name : List.of("gross-energy", "digestible-energy", "digestible-protein")) {
        Nutrient nutrient = SHARED.tables().nutrients().named(name).orElseThrow();
        Explanation told =
            Explainer.of(
                one.feed().orElseThrow(),
                List.of(),
                new Subject.Nutrients(List.of(nutrient), name),
                SHARED.tables());
        for (Sum sum : told.sums()) {
          sum.parts().forEach(part -> assertTrue(!part.source().isEmpty(), name + part));
          assertTrue(!sum.worked().isEmpty(), name);
          for (Worked table : sum.worked()) {
            if (table.title().endsWith("by the coefficient of each ingredient")) {
              table.rows().forEach(StepsAgreeTest::times);
            }
          }
        }
      }
    }
  }

  private static void times(List<String> row) {
    double coefficient = Double.parseDouble(row.get(2).replace(" %", "")) / 100;
    double whole = Double.parseDouble(row.get(1));
    double part = Double.parseDouble(row.get(3));
    assertEquals(whole * coefficient, part, part * 1e-3, row.toString());
  }
}
