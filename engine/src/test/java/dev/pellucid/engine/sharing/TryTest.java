package dev.pellucid.engine.sharing;

import java.util.List;
import org.junit.jupiter.api.Test;

class TryTest {
  @Test
  void tried() {
    Plans plans = Plans.example();
    long t = System.nanoTime();
    for (double kg : new double[] {5000, 1000, 950, 900, 850, 800, 780, 700, 300, 10}) {
      List<Wanted> wanted = List.of(plans.wanted("CG-36", 4000), plans.wanted("CF-31", 2000), plans.wanted("TG-44", 2000));
      SharedOut out = plans.shareOut().of(wanted, List.of(plans.supply("fish-meal-65", kg)));
      System.out.println(kg + " " + out.standing() + " " + out.why() + " " + out.money() + " " + out.lacks());
      for (var f : out.feeds()) System.out.println("  " + f.wanted().code() + " " + f.kg() + " " + f.costNow() + " " + f.costThen() + " " + f.takesThen().get("fish-meal-65"));
      for (var s : out.supplies()) System.out.println("  " + s.takenNow() + " " + s.taken() + " " + s.worth());
      System.out.println((System.nanoTime() - t) / 1e6); t = System.nanoTime();
    }
  }
}
