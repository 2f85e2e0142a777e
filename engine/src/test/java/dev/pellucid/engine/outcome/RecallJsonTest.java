package dev.pellucid.engine.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.report.Recalls;
import dev.pellucid.engine.trace.RecallList;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.approvaltests.Approvals;
import org.approvaltests.core.Options;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What is written as recall.json has the shape that its schema describes, and no other key. */
class RecallJsonTest {
  private static final JsonMapper JSON = new JsonMapper();

  static List<RecallList> all() {
    return List.of(Recalls.lot(), Recalls.batch(), Recalls.nothing(), Recalls.many(60));
  }

  @ParameterizedTest
  @MethodSource("all")
  void itFits(RecallList told) throws IOException {
    assertEquals(List.of(), RecallSchema.told(RecallJson.of(told)));
  }

  /** Of each key that is written, the schema asks for it, and refuses another in its place. */
  @Test
  void noKeyCanBeMissedOrMisspelt() throws IOException {
    TreeSet<String> seen = new TreeSet<>();
    for (RecallList told : all()) {
      String json = RecallJson.of(told);
      List<String> keys = new ArrayList<>();
      collect(JSON.readTree(json), keys);
      for (String key : new TreeSet<>(keys)) {
        seen.add(key);
        String misspelt = json.replace("\"" + key + "\":", "\"" + key + "x\":");
        assertNotEquals(List.of(), RecallSchema.told(misspelt), key);
      }
    }
    assertTrue(seen.size() > 70, seen.toString());
  }

  private static void collect(JsonNode node, List<String> keys) {
    for (Map.Entry<String, JsonNode> one : node.properties()) {
      keys.add(one.getKey());
      collect(one.getValue(), keys);
    }
    if (node.isArray()) {
      node.forEach(one -> collect(one, keys));
    }
  }

  @Test
  void oneReadsAsAccepted() {
    Approvals.verify(RecallJson.of(Recalls.lot()), new Options().forFile().withExtension(".json"));
  }
}
