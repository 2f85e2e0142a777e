package dev.pellucid.engine.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.pellucid.engine.Example;
import dev.pellucid.engine.yaml.YamlReader;
import dev.pellucid.text.SourceFile;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The place of a file says its kind, and its kind says its keys. */
class DataFileKindTest {

  @ParameterizedTest
  @CsvSource({
    "pellucid.yaml, SETTINGS",
    "practice/steam.yaml, STEAM",
    "ingredients/maize.yaml, INGREDIENTS",
    "ingredients/meals/maize.yaml, INGREDIENTS",
    "ingredients/maize.yml,",
    "ingredients.yaml,",
    "practice/steam/a.yaml,",
    "steam.yaml,",
    "other/pellucid.yaml,"
  })
  void thePlaceSaysTheKind(String path, String kind) {
    assertEquals(Optional.ofNullable(kind), DataFileKind.of(path).map(Enum::name));
  }

  @Test
  void everyFileOfTheExampleHasAKindAndEveryKindAFile() {
    Set<DataFileKind> seen = new HashSet<>();
    for (String path : Pantry.of(Example.whole()).paths()) {
      seen.add(DataFileKind.of(path).orElseThrow(() -> new AssertionError(path)));
    }
    assertEquals(Set.of(DataFileKind.values()), seen);
  }

  @Test
  void askingForAKeyOfAnotherKindIsAMistake() {
    SourceFile file = new SourceFile("plant/shed.yaml", "name: Shed\n");
    Fields fields =
        Fields.of(
                YamlReader.read(file).root().orElseThrow(),
                PlantVocabulary.PLANT_KEYS,
                file.beginning(),
                new Remarks())
            .orElseThrow();
    assertEquals("Shed", fields.text(PlantVocabulary.NAME).orElseThrow().text());
    assertThrows(
        IllegalArgumentException.class, () -> fields.text(IngredientVocabulary.BULK_DENSITY));
  }
}
