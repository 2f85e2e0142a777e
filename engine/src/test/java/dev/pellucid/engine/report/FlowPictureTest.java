package dev.pellucid.engine.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.engine.report.Flow.Arrow;
import dev.pellucid.engine.report.Flow.Box;
import dev.pellucid.engine.report.Flow.Place;
import dev.pellucid.engine.report.FlowLayout.Placed;
import dev.pellucid.engine.report.FlowLayout.Routed;
import dev.pellucid.engine.trace.Kilograms;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Pictures of flows drawn at random can be read: nothing lies over anything else. */
class FlowPictureTest {
  private static final int DRAWN = 300;

  @Test
  void boxesAndWordsLieBesideEachOther() {
    Random random = new Random(20261129);
    for (int i = 0; i < DRAWN; i++) {
      Flow flow = FlowFolding.of(Flows.random(random, 1 + random.nextInt(60)));
      FlowLayout layout = new FlowLayout(flow);
      List<Placed> boxes = layout.boxes();
      for (Placed one : boxes) {
        assertTrue(one.x() + FlowLayout.WIDE <= layout.wide(), () -> one + " is cut off");
        assertTrue(one.y() + one.high() <= layout.high(), () -> one + " is cut off");
        assertTrue(one.high() >= one.words().size() * FlowLayout.LINE, () -> one + " is too low");
        for (Placed other : boxes) {
          assertTrue(one.equals(other) || apart(one, other), () -> one + " on " + other);
        }
      }
      wordsApart(layout.arrows());
      assertEquals(flow.arrows().size(), layout.arrows().size());
    }
  }

  private static boolean apart(Placed one, Placed other) {
    return one.x() != other.x()
        || one.y() + one.high() < other.y()
        || other.y() + other.high() < one.y();
  }

  /** Of an arrow they stand above and below its end, so two ends must be two lines apart. */
  @SuppressWarnings("ReferenceEquality")
  private static void wordsApart(List<Routed> arrows) {
    for (Routed one : arrows) {
      for (Routed other : arrows) {
        boolean apart =
            one == other
                || one.to().x() != other.to().x()
                || Math.abs(one.to().y() - other.to().y()) >= 2 * (FlowLayout.LINE - 1);
        assertTrue(apart, () -> one + " on " + other);
      }
    }
  }

  @Test
  void whatIsFoldedIsCountedAndSummedUp() {
    Random random = new Random(7);
    for (int i = 0; i < DRAWN; i++) {
      Flow flow = Flows.random(random, 40 + random.nextInt(200));
      Flow folded = FlowFolding.of(flow);
      assertTrue(kg(flow) + 1e-6 > kg(folded));
      assertEquals(bags(flow), bags(folded));
      assertEquals(delivered(flow), delivered(folded), 1e-6);
      for (Place place : Place.values()) {
        long boxes = folded.boxes().stream().filter(box -> box.place() == place).count();
        assertTrue(boxes <= FlowFolding.MOST, place + " has " + boxes + " boxes");
      }
      assertEquals(
          flow.boxes().size(),
          folded.boxes().stream().mapToInt(FlowPictureTest::many).sum(),
          folded.boxes().toString());
    }
  }

  private static int many(Box box) {
    return box.key().startsWith("folded ") ? Integer.parseInt(box.name().split(" ", 2)[0]) : 1;
  }

  private static double delivered(Flow flow) {
    return kg(
        new Flow(
            flow.boxes(),
            flow.arrows().stream().filter(arrow -> arrow.bags().isPresent()).toList()));
  }

  private static double kg(Flow flow) {
    return flow.arrows().stream()
        .map(Arrow::kg)
        .flatMap(Optional::stream)
        .mapToDouble(Kilograms::told)
        .sum();
  }

  private static int bags(Flow flow) {
    return flow.arrows().stream().mapToInt(arrow -> arrow.bags().orElse(0)).sum();
  }

  @Test
  void whatIsCertainAndWhatIsPossibleLookUnlike() {
    String svg = picture(true);
    assertTrue(!svg.contains("stroke-dasharray"), svg);
    assertTrue(svg.contains(">2 bags<") && svg.contains(">over 12.5 kg<"), svg);
    assertEquals(4, picture(false).split("stroke-dasharray", -1).length);
  }

  private static String picture(boolean certain) {
    List<Box> boxes = new ArrayList<>();
    for (String key : List.of("A", "B")) {
      boxes.add(
          new Box(
              key,
              Place.FEED,
              "CG-36",
              "CG-36-" + key,
              "",
              Optional.empty(),
              certain || key.equals("A"),
              key.equals("A")));
    }
    Arrow arrow =
        new Arrow(
            "A",
            "B",
            "rework",
            Optional.of(new Kilograms(12.5, false)),
            !certain,
            OptionalInt.of(2),
            certain);
    return FlowPicture.of("Where it went", new Flow(boxes, List.of(arrow))).render();
  }

  @Test
  void nothingIsDrawnOfNothing() {
    String svg = FlowPicture.of("Nothing", new Flow(List.of(), List.of())).render();
    assertTrue(svg.contains("<title>Nothing</title>"), svg);
  }
}
