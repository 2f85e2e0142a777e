package dev.pellucid.engine.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.ReportTexts;
import dev.pellucid.engine.ReportedFolder;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written as findings.json has the shape that its schema describes, and no other key. */
class FindingsSchemaTest {
  private static final String SCHEMA = "/dev/pellucid/outcome/findings.schema.json";
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  @TempDir Path folder;

  @Test
  void whatIsWrittenFits() throws IOException {
    ReportedFolder.copyTo(folder);
    String json = json();
    assertEquals(List.of(), told(json));
    for (String key : List.of("tally", "mendFirst", "related", "edits", "waiver", "endColumn")) {
      String renamed = json.replace("\"" + key + "\": ", "\"" + key + "s\": ");
      assertNotEquals(List.of(), told(renamed), key);
    }
    for (String list : List.of("recipes", "findings", "waived", "edits", "related")) {
      assertTrue(json.contains("\"" + list + "\": [\n"), "nothing in " + list);
    }
  }

  @Test
  void whatIsWrittenOfAnEmptyFolderFits() throws IOException {
    String json = json();
    assertTrue(json.contains("\"recipes\": []"), json);
    assertFalse(json.contains("\"waiver\""), json);
    assertEquals(List.of(), told(json));
  }

  private String json() throws IOException {
    return ReportTexts.of(
        Objects.requireNonNull(
            Pellucid.checkWithReports(FolderState.at(folder), PrintedPaths.BELOW_FOLDER, DAY)
                .files()
                .get(ReportFiles.JSON)));
  }

  private static List<String> told(String json) throws IOException {
    try (InputStream text = FindingsSchemaTest.class.getResourceAsStream(SCHEMA)) {
      Schema schema =
          SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
              .getSchema(new String(text.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON);
      return schema.validate(json, InputFormat.JSON).stream().map(Error::toString).toList();
    }
  }
}
