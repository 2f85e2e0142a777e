package dev.pellucid.engine.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/**
 * A JSON Schema as rows: one for each object, with the path to it as head and its keys as words.
 * What stands behind a key is marked: {@code []} a list, <code>{}</code> an object, {@code =} words
 * one of which it is, {@code :} a kind of figure, {@code ?} where it may be null.
 */
final class SchemaRows {
  /** In place of a key that is the name of a thing. */
  private static final String NAME = "NAME";

  private final JsonNode root;
  private final boolean ofFigures;
  private final List<Row> rows = new ArrayList<>();

  private SchemaRows(JsonNode root, boolean ofFigures) {
    this.root = root;
    this.ofFigures = ofFigures;
  }

  /** Of what people write: keys that must be there are marked. */
  static List<Row> written(String head, JsonNode schema) {
    SchemaRows made = new SchemaRows(schema, false);
    made.object(head, schema);
    return made.rows;
  }

  /** Of what programs read, where every key is always there; kinds of figures are marked. */
  static List<Row> read(String head, JsonNode schema) {
    SchemaRows made = new SchemaRows(schema, true);
    made.object(head, schema);
    return made.rows;
  }

  private void object(String head, JsonNode schema) {
    Set<String> required =
        schema.path("required").valueStream().map(JsonNode::asString).collect(Collectors.toSet());
    List<String> words = new ArrayList<>();
    List<Runnable> below = new ArrayList<>();
    for (Map.Entry<String, JsonNode> key : schema.path("properties").properties()) {
      String must = mark(required.contains(key.getKey()), key.getKey());
      words.add(key.getKey() + must + marks(key.getValue()));
      below.add(() -> below(head + "." + key.getKey(), key.getValue()));
    }
    others(schema)
        .ifPresent(
            other -> {
              words.add(NAME + marks(other));
              below.add(() -> below(head + "." + NAME, other));
            });
    rows.add(new Row(head, words));
    below.forEach(Runnable::run);
  }

  private String mark(boolean must, String key) {
    if (ofFigures && !must) {
      throw new IllegalStateException(key + " may be missing; write null or an empty list");
    }
    return must && !ofFigures ? "!" : "";
  }

  private static Optional<JsonNode> others(JsonNode schema) {
    return Optional.of(schema.path("additionalProperties")).filter(JsonNode::isObject);
  }

  private void below(String head, JsonNode schema) {
    JsonNode one = meant(schema);
    if (one.has("items")) {
      below(head + "[]", one.path("items"));
    } else if (isObject(one)) {
      object(head, one);
    }
  }

  private static boolean isObject(JsonNode schema) {
    return schema.has("properties") || others(schema).isPresent();
  }

  /** What is referred to, and of several what is not null. */
  private JsonNode meant(JsonNode schema) {
    if (schema.has("$ref")) {
      return root.at(schema.path("$ref").asString().substring(1));
    }
    return schema
        .path("anyOf")
        .valueStream()
        .filter(one -> !one.path("type").asString("").equals("null"))
        .findFirst()
        .orElse(schema);
  }

  private String marks(JsonNode schema) {
    JsonNode one = meant(schema);
    String mark;
    if (one.has("items")) {
      mark = "[]" + marks(one.path("items"));
    } else if (isObject(one)) {
      mark = "{}";
    } else {
      mark = word(one);
    }
    return mark + (ofFigures && mayBeNull(schema) ? "?" : "");
  }

  private String word(JsonNode schema) {
    if (schema.has("const")) {
      return "=" + schema.path("const").asString();
    }
    if (schema.has("enum")) {
      return "=" + words(schema.path("enum")).distinct().collect(Collectors.joining("|"));
    }
    String kinds =
        words(types(schema))
            .filter(kind -> !kind.equals("null") && !kind.equals("string"))
            .collect(Collectors.joining("|"));
    return ofFigures && !kinds.isEmpty() ? ":" + kinds : "";
  }

  private static boolean mayBeNull(JsonNode schema) {
    return schema.has("anyOf") || words(types(schema)).anyMatch("null"::equals);
  }

  private static JsonNode types(JsonNode schema) {
    return schema.path("type");
  }

  private static Stream<String> words(JsonNode one) {
    return one.isArray() ? one.valueStream().map(JsonNode::asString) : Stream.of(one.asString(""));
  }
}
