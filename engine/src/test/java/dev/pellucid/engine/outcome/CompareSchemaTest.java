package dev.pellucid.engine.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.pellucid.engine.Example;
import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.check.SlippedFolder;
import dev.pellucid.engine.goal.FolderState;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written as compare.json has the shape that its schema describes, and no other key. */
class CompareSchemaTest {
  private static final String SCHEMA = "/dev/pellucid/outcome/compare.schema.json";
  private static final Path EXAMPLE = Example.whole();
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  @TempDir Path copy;

  @Test
  void whatIsWrittenFits() throws IOException {
    SlippedFolder folder = SlippedFolder.withRecords(copy);
    assertFits(false);
    folder.with("ingredients/ascorbyl-phosphate-35.yaml", "vitamin-c: 35", "vitamin-c: 30");
    folder.with("premixes/VIT-WW.premix", "160 mg/kg", "150 mg/kg");
    folder.with(
        "catfish/CG-36.recipe", "soybean-meal-48              44.00", "soybean-meal-48  36.00");
    folder.with("trout/TG-44.recipe", "temperature       115 °C", "temperature       140 °C");
    folder.with("shrimp/SS-41.recipe", "  squid-meal ", "  squid-meel ");
    folder.with("prices/2026-11.yaml", "  fish-meal-65: ", "  fish-meal-99: ");
    Files.delete(copy.resolve("trout/TS-48.recipe"));
    Files.writeString(
        copy.resolve("ZZ-1.recipe"),
        "recipe ZZ-1\nmix\n  maize  100 %\nlimits\n  calcium : astaxanthin  max 100\n");
    Files.writeString(copy.resolve("premixes/ZZ-P.premix"), "premix ZZ-P\nmix\n  maize  100 %\n");
    assertFits(true);
  }

  private void assertFits(boolean full) throws IOException {
    FolderState was = FolderState.at(EXAMPLE);
    FolderState is = FolderState.at(copy);
    for (boolean back : List.of(false, true)) {
      String json = Pellucid.compare(back ? is : was, back ? was : is, DAY, "compare.html").json();
      assertEquals(List.of(), told(json));
      assertNotEquals(List.of(), told(json.replace("\"currency\"", "\"money\"")));
      for (String key : List.of("\"premixes\": []", "\"files\": []", "\"supplies\": [\n")) {
        assertTrue(!full || json.contains(key) == key.endsWith("\n"), key);
      }
    }
  }

  private static List<String> told(String json) throws IOException {
    try (InputStream text = CompareSchemaTest.class.getResourceAsStream(SCHEMA)) {
      Schema schema =
          SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
              .getSchema(new String(text.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON);
      return schema.validate(json, InputFormat.JSON).stream().map(Error::toString).toList();
    }
  }
}
