package dev.pellucid.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.goal.ExplainReport;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.approvaltests.Approvals;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A figure of a recipe, down to its sources. */
class ExplainTest {
  private static final Path EXAMPLE = Example.whole();
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  @Test
  void aNutrient() throws IOException {
    Approvals.verify(explained("CG-36", "phosphorus"));
  }

  @Test
  void aRatio() throws IOException {
    Approvals.verify(explained("CG-36", "lysine : crude-protein"));
  }

  @Test
  void aDigestiblePart() throws IOException {
    Approvals.verify(explained("TG-44", "digestible-energy"));
  }

  @Test
  void whatIsLostOnTheWay() throws IOException {
    Approvals.verify(explained("CG-36", "vitamin-c"));
  }

  @Test
  void theYield() throws IOException {
    Approvals.verify(explained("KG-33", "yield"));
  }

  @Test
  void theCost() throws IOException {
    Approvals.verify(explained("CF-31", "cost"));
  }

  /** Each last column adds up to the figure above it, digit for digit. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "crude-protein",
        "gross-energy",
        "vitamin-c",
        "selenium",
        "methionine + cystine",
        "lysine : crude-protein",
        "digestible-protein",
        "inclusion maize + wheat-middlings",
        "cost"
      })
  void addsUp(String figure) throws IOException {
    for (String code : List.of("CG-36", "TG-44", "SF-34", "KF-29")) {
      List<String> lines = explained(code, figure).lines().toList();
      int tables = 0;
      BigDecimal sum = BigDecimal.ZERO;
      boolean within = false;
      for (String line : lines) {
        String last = line.substring(line.lastIndexOf(' ') + 1);
        if (line.startsWith("Line ")) {
          sum = BigDecimal.ZERO;
          within = true;
        } else if (line.startsWith("Together")) {
          assertEquals(new BigDecimal(last), sum, code + " " + figure);
          tables++;
          within = false;
        } else if (within && last.matches("-?[0-9.]+")) {
          sum = sum.add(new BigDecimal(last));
        }
      }
      assertEquals(figure.contains(":") ? 2 : 1, tables, code + " " + figure);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "CG-63|crude-protein|CG-63 is not the code of a recipe of this folder; did you mean CG-36"
            + " or CG-36I?",
        "CG-36|crude-protien|crude-protien is no figure of CG-36; did you mean crude-protein?",
        "CG-36|protein|did you mean crude-protein or digestible-protein?",
        "CG-36|prtein|did you mean crude-protein or digestible-protein?",
        "CG-36|yeild|did you mean yield?",
        "CG-36|lysine + protien|protien is no figure of CG-36",
        "CG-36|maize|maize is no nutrient; ask for its share: inclusion maize",
        "CG-36|%%|%% is no figure of CG-36",
        "CG-36|%%|Limits of CG-36 are on: crude-protein, crude-fibre,",
        "CG-36|%%|Ask also for: cost, yield,",
      })
  void saysWhatIsWrongWithTheQuestion(String recipe, String figure, String words)
      throws IOException {
    ExplainReport report = OwnFolder.explain(EXAMPLE, DAY, recipe, figure);
    assertTrue(report.problem().orElseThrow().contains(words), report.problem().get());
  }

  @Test
  void aRuleIsItsPage() throws IOException {
    String page = Pellucid.explainRule("below-minimum").text();
    assertTrue(page.startsWith("below-minimum\n=============\n\nThe feed holds less"), page);
    assertTrue(page.contains("\n  recipes/CG-36.recipe, this part of it:\n"), page);
    assertFalse(page.contains("`") || page.contains("#"), page);
    assertTrue(Pellucid.explainRule("../secrets").problem().orElseThrow().contains("../secrets"));
    assertTrue(Pellucid.explainRule("no-such-code").problem().isPresent());
    assertEquals(
        "no finding has the code below-minimun; did you mean below-minimum?",
        Pellucid.explainRule("below-minimun").problem().orElseThrow());
    assertEquals(
        "no finding has the code dose; did you mean dose-missing, premix-off-dose or dose-ten-times-off?",
        Pellucid.explainRule("dose").problem().orElseThrow());
  }

  /**
   * 44 kg of 48.5 ± 1.2 %, 15 of 65 ± 1.6, 21.523 of 16 ± 0.8 and 14 of 8.75 ± 0.5 in 98.736 kg.
   */
  @Test
  void theDeviationIsTheRootOfTheSquares() throws IOException {
    double squares =
        Math.pow(44 * 1.2, 2)
            + Math.pow(15 * 1.6, 2)
            + Math.pow(21.523 * 0.8, 2)
            + Math.pow(14 * 0.5, 2);
    String words = String.format(Locale.ROOT, "± %.2f %%", Math.sqrt(squares) / 98.736);
    assertTrue(explained("CG-36", "crude-protein").contains(words), words);
  }

  private static String explained(String recipe, String figure) throws IOException {
    ExplainReport report = OwnFolder.explain(EXAMPLE, DAY, recipe, figure);
    assertTrue(report.problem().isEmpty(), () -> report.problem().orElse(""));
    return report.text();
  }
}
