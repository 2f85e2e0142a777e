package dev.pellucid.engine.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The machinery of the pages sees what is wrong with a page. */
class PageRunTest {
  private static final String SLIP =
      """
      <!-- folder: empty -->
      ```yaml file=pellucid.yaml
      format: 1
      name: Mill
      currency: EUR
      jurisdiction: none
      ```
      ```recipe file=A-1.recipe
      recipe A-1 "Trial"
        status    draft
        species   common-carp

      mix
        soybean-meal-48              45.00 %
        wheat                        rest

      limits
        crude-protein                min 20 %
      ```
      ```diff file=A-1.recipe
      -  soybean-meal-48              45.00 %
      +  soybean-meal-48              45,00 %
      ```
      ```finding
      A-1.recipe:6:32: error: 45,00 has a comma, the decimal sign is a point [decimal-comma]
          6 |   soybean-meal-48              45,00 %
            |                                ^^^^^
       help: write 45.00
      ```
      ```sh
      mvn pellucid:explain -Dpellucid.rule=decimal-comma   # what it means
      ```
      ```output
      A figure has a comma where its decimal point belongs. In one country 14,50 is fourteen and a half,
      ```
      ```recipe of=A-1.recipe
      mix
        wheat                        rest
      ```
      ```folder
      pellucid.yaml   the settings
      ```
      ```text not-run: it shows how a command would look
      anything
      ```
      """;

  @TempDir Path place;

  @Test
  void aTruePageIsSilent() throws IOException {
    assertEquals(List.of(), slips(SLIP));
  }

  @ParameterizedTest(name = "{0} -> {1}")
  @CsvSource({
    "has a comma, had a comma, the check does not say",
    "help: write 45.00, help: write 45, the check does not say",
    "'  soybean-meal-48              45,00 %', '  soybean-meal-48              44,00 %', "
        + "the check does not say",
    "'-  soybean-meal-48              45.00 %', '-  soybean-meal-48', no such lines",
    "Dpellucid.rule, Dpellucid.ruler, has a parameter pellucid.ruler",
    "pellucid:explain, pellucid:explains, the plugin has no goal explains",
    "mvn pellucid, mvm pellucid, pages call no program mvm",
    "a comma where, a point where, the output does not have",
    "'  wheat                        rest\n```\n```folder', '  maize rest\n```\n```folder', "
        + "A-1.recipe does not have",
    "'pellucid.yaml   the', 'pelucid.yaml   the', there is no pelucid.yaml",
    "'text not-run: it shows how a command would look', text, nobody knows how to run a block text",
    "'not-run: it shows how a command would look', not-run:, why it is not run",
    "'```finding', '```text not-run: it is not looked at', the page does not tell that it gives",
    "'<!-- folder: empty -->', '', stands before it",
    "diff file=A-1.recipe, diff file=A-1.recipe gives=tab, it does not give tab",
    "yaml file=pellucid.yaml, recipe file=pellucid.yaml, is no recipe"
  })
  void whatIsNotSoIsTold(String from, String to, String told) throws IOException {
    assertTrue(SLIP.contains(from), from);
    List<String> slips = slips(SLIP.replaceFirst(Pattern.quote(from), to));
    assertTrue(slips.stream().anyMatch(slip -> slip.contains(told)), slips::toString);
  }

  @Test
  void aTestOfItsOwnMayHoldAPage() throws IOException {
    String list = "<!-- held by: %s -->\n```codes\nbelow-minimum\n```\n";
    assertEquals(List.of(), slips(list.formatted("PageRunTest")));
    assertTrue(slips(list.formatted("NoSuchTest")).get(0).contains("there is no test NoSuchTest"));
  }

  @Test
  void aSlipIsToldAtItsLine() throws IOException {
    String slip = slips(SLIP.replace("45.00\n```", "45\n```")).get(0);
    assertTrue(slip.startsWith("page.md:"), slip);
  }

  private List<String> slips(String page) throws IOException {
    return PageRun.of(place, DocPage.of(Path.of("page.md"), page));
  }
}
