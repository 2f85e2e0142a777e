package dev.pellucid.engine.report;

import dev.pellucid.engine.report.Flow.Arrow;
import dev.pellucid.engine.report.Flow.Box;
import dev.pellucid.engine.report.Flow.Place;
import dev.pellucid.engine.trace.Kilograms;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;

/** Flows drawn at random: premixes in premixes, rework, circles, parties that get many batches. */
final class Flows {
  private static final List<String> KINDS = List.of("weighed in", "rework", "flush", "part bag");
  private static final LocalDate DAY = LocalDate.of(2026, 11, 1);

  private Flows() {}

  static Flow random(Random random, int batches) {
    List<Box> boxes = new ArrayList<>();
    boxes.add(new Box("L", Place.LOT, "selenite-1", "SE1-9042", "", none(), true, true));
    List<Arrow> arrows = new ArrayList<>();
    for (int i = 0; i < batches; i++) {
      Place place = random.nextInt(6) == 0 ? Place.PREMIX : Place.FEED;
      boolean certain = random.nextInt(4) > 0;
      String of = (place == Place.PREMIX ? "MIN-" : "CG-") + random.nextInt(5);
      LocalDate day = DAY.plusDays(i);
      String key = "B" + i;
      String name = of + "-" + day + "-1";
      boxes.add(
          new Box(
              key,
              place,
              of,
              name,
              certain ? "released" : "may hold",
              Optional.of(day),
              certain,
              false));
      for (int way = 0; way <= random.nextInt(2); way++) {
        String from = i == 0 || random.nextInt(3) > 0 ? "L" : "B" + random.nextInt(i);
        arrows.add(
            arrow(
                from,
                key,
                KINDS.get(random.nextInt(random.nextBoolean() ? 1 : 4)),
                random,
                certain));
      }
    }
    if (random.nextInt(4) == 0 && batches > 2) {
      arrows.add(arrow("B" + (batches - 1), "B0", "rework", random, true));
    }
    for (int i = 0; i <= random.nextInt(1 + batches / 3); i++) {
      String key = "P" + i;
      boxes.add(new Box(key, Place.PARTY, "", "Fish farm number " + i, "", none(), true, false));
      for (int way = 0; way <= random.nextInt(4); way++) {
        arrows.add(arrow("B" + random.nextInt(batches), key, "delivered", random, true));
      }
    }
    return new Flow(boxes, arrows);
  }

  private static Optional<LocalDate> none() {
    return Optional.empty();
  }

  private static Arrow arrow(String from, String to, String kind, Random random, boolean certain) {
    return new Arrow(
        from,
        to,
        kind,
        Optional.of(new Kilograms(random.nextInt(1000) / 10.0, random.nextInt(5) > 0)),
        !certain,
        kind.equals("delivered") ? OptionalInt.of(random.nextInt(9)) : OptionalInt.empty(),
        certain);
  }
}
