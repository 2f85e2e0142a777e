package dev.pellucid.engine.data;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** What a validator from outside says of a data file by the schema of its kind. */
public final class SchemaCheck {
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

  private static final SortedMap<String, Schema> SCHEMAS = schemas();

  private SchemaCheck() {}

  private static SortedMap<String, Schema> schemas() {
    SortedMap<String, Schema> schemas = new TreeMap<>();
    Schemas.byKind()
        .forEach((kind, text) -> schemas.put(kind, REGISTRY.getSchema(text, InputFormat.JSON)));
    return schemas;
  }

  /** What is wrong with a file; nothing where it fits. */
  public static List<String> of(String path, String yaml) {
    Schema schema = Optional.ofNullable(SCHEMAS.get(kind(path))).orElseThrow();
    return schema.validate(yaml, InputFormat.YAML).stream().map(Error::toString).toList();
  }

  /** Whether a path below a folder is one of a data file. */
  public static boolean isData(String path) {
    return DataFileKind.of(path).isPresent();
  }

  /** The kind of a file by its path, as its schema is called; empty where it is none. */
  public static String kind(String path) {
    return DataFileKind.of(path).map(DataFileKind::word).orElse("");
  }
}
