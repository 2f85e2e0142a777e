package dev.pellucid.engine.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import dev.pellucid.engine.leastcost.Advice;
import dev.pellucid.engine.report.Advices;
import dev.pellucid.text.PrintedPaths;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.approvaltests.Approvals;
import org.approvaltests.core.Options;
import org.junit.jupiter.api.Test;

/** What is written as least-cost.json has the shape that its schema describes, and no other key. */
class LeastCostJsonTest {
  private final Advices advices = new Advices();

  @Test
  void allOfItFits() throws IOException {
    List<Advice> all = new ArrayList<>();
    advices.all().forEach(one -> all.add(one.advice()));
    String json = json(all);
    assertEquals(List.of(), LeastCostSchema.told(json));
    assertNotEquals(List.of(), LeastCostSchema.told(json.replace("\"standing\"", "\"stands\"")));
    assertNotEquals(List.of(), LeastCostSchema.told(json.replace("\"begins\"", "\"starts\"")));
  }

  @Test
  void oneReadsAsAccepted() {
    Approvals.verify(
        json(List.of(advices.cheaper().advice())), new Options().forFile().withExtension(".json"));
  }

  private String json(List<Advice> all) {
    return LeastCostJson.of(
        all,
        Map.of("CG-36", advices.cheaper().bought()),
        advices.week(),
        "EUR",
        PrintedPaths.BELOW_FOLDER);
  }
}
