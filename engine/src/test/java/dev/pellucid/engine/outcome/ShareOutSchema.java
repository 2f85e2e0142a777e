package dev.pellucid.engine.outcome;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The shape of share-out.json, by a validator from outside. */
public final class ShareOutSchema {
  private static final String SCHEMA = "/dev/pellucid/outcome/share-out.schema.json";

  private ShareOutSchema() {}

  /** What does not fit. */
  public static List<String> told(String json) throws IOException {
    try (InputStream text = ShareOutSchema.class.getResourceAsStream(SCHEMA)) {
      Schema schema =
          SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
              .getSchema(new String(text.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON);
      return schema.validate(json, InputFormat.JSON).stream().map(Error::toString).toList();
    }
  }
}
