package dev.pellucid.slip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.pellucid.parse.FeedParser;
import dev.pellucid.text.SourceFile;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A help is made of the line at hand: its own figure with the units that it can have. */
class HelpOfTheLineTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "mix|maize  44|write 44 %",
        "process|dry  temperature  55|write 55 °C",
        "process|dry  time  6|'write 6 min, 6 h or 6 d'",
        "process|extrude  die  4|write 4 mm",
        "limits|crude-protein  min 34|'write 34 %, or another unit; only a ratio may stand without"
            + " one'",
        "overage|salt  10  for handling|write 10 %",
        "label|crude-protein  35 parts|'write 35 %, 35 g/kg or 35 mg/kg'",
        "|batch  60 weighed|write 60 kg or 60 t",
        "|fish  50 to 250|write 250 g or 250 kg",
        "|species  african catfish|write african-catfish",
        "|species  Nile tilapia|write nile-tilapia",
        "|plant  farm shed|write farm-shed",
        "|meets  catfish grower|write catfish-grower",
      })
  void namesWhatIsMeant(String section, String line, String help) {
    String text = "recipe A-1\n" + (section == null ? "" : section + "\n") + "  " + line + "\n";
    List<String> helps =
        FeedParser.parse(new SourceFile("A-1.recipe", text)).findings().stream()
            .filter(finding -> finding.span().text().length() > 0)
            .flatMap(finding -> finding.helps().stream())
            .toList();
    assertEquals(help, helps.stream().filter(help::equals).findFirst().orElse(helps.toString()));
  }
}
