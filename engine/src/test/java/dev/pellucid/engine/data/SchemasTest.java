package dev.pellucid.engine.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.pellucid.engine.Example;
import dev.pellucid.engine.folder.Outputs;
import dev.pellucid.engine.folder.Texts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Schemas for editors against a validator from outside, and against what the reader says. */
class SchemasTest {
  private static final Path EXAMPLE = Example.whole();
  private static final Path COMMITTED = EXAMPLE.resolve(".schema");
  private static final Path MADE = Path.of("target", "schemas");

  private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";

  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

  static Stream<String> kinds() {
    return Schemas.byKind().keySet().stream();
  }

  static List<String> files() throws IOException {
    return Texts.at(EXAMPLE).data();
  }

  /** Compared whole; a change of the vocabulary is accepted by copying what was made. */
  @ParameterizedTest
  @MethodSource("kinds")
  void theExampleHoldsWhatIsGenerated(String kind) throws IOException {
    String made = schema(kind);
    Outputs.into(MADE).write(kind + ".json", made);
    Path committed = COMMITTED.resolve(kind + ".json");
    assertTrue(Files.exists(committed), () -> "copy engine/" + MADE + " to " + committed);
    assertEquals(Files.readString(committed), made, () -> "copy engine/" + MADE + " to it");
  }

  @Test
  void theExampleHoldsNoSchemaMore() throws IOException {
    try (Stream<Path> files = Files.list(COMMITTED)) {
      assertEquals(Schemas.byKind().size(), files.count());
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void eachIsASchemaByTheRulesOfSchemas(String kind) {
    Schema rules = REGISTRY.getSchema(SchemaLocation.of(DIALECT));
    assertEquals(List.of(), told(rules.validate(schema(kind), InputFormat.JSON)));
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyFileOfTheExampleFits(String path) throws IOException {
    assertEquals(List.of(), told(validated(path, Files.readString(EXAMPLE.resolve(path)))));
  }

  @Test
  void everyKindHasAFileInTheExample() throws IOException {
    List<String> kinds = new ArrayList<>(kinds().toList());
    files().forEach(path -> kinds.remove(kind(path)));
    assertEquals(List.of(), kinds);
  }

  /** What the schema refuses, the reader refuses too, and the other way round. */
  @ParameterizedTest(name = "{0}: {1} for {2}")
  @CsvSource({
    "pellucid.yaml, currency: EUR, currency: euro",
    "pellucid.yaml, currency: EUR, curency: EUR",
    "pellucid.yaml, format: 1, format: 2",
    "sources.yaml, standing: published, standing: rumour",
    "ingredients/maize.yaml, form: , fom: ",
    "ingredients/maize.yaml, moisture: , source: workshop,",
    "ingredients/maize.yaml, contents:, content:"
  })
  void aWrongKeyOrWordIsRefusedByBoth(String path, String from, String to) {
    Pantry pantry = Pantry.full();
    String right = pantry.text(path);
    assertTrue(right.contains(from), right);
    String wrong = right.replace(from, to);
    assertEquals(List.of(), told(validated(path, right)));
    assertFalse(validated(path, wrong).isEmpty(), wrong);
    assertFalse(pantry.with(path, wrong).stocked().findings().isEmpty(), wrong);
  }

  private static List<Error> validated(String path, String yaml) {
    return REGISTRY
        .getSchema(schema(kind(path)), InputFormat.JSON)
        .validate(yaml, InputFormat.YAML);
  }

  private static String schema(String kind) {
    return Optional.ofNullable(Schemas.byKind().get(kind)).orElseThrow();
  }

  private static List<String> told(List<Error> errors) {
    return errors.stream().map(Error::toString).toList();
  }

  /** The folder of a file where it has a kind, else its own name. */
  private static String kind(String path) {
    String folder = path.contains("/") ? path.substring(0, path.indexOf('/')) : "";
    String name = path.substring(path.lastIndexOf('/') + 1).replace(".yaml", "");
    return Schemas.byKind().containsKey(folder) ? folder : name;
  }
}
