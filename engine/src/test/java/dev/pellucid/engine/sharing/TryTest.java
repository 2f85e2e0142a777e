package dev.pellucid.engine.sharing;

import java.util.*;
import org.junit.jupiter.api.Test;
import dev.pellucid.engine.goal.*;
import dev.pellucid.text.PrintedPaths;
import dev.pellucid.engine.folder.Texts;
import dev.pellucid.engine.Example;

class TryTest {
  @Test
  void tried() throws Exception {
    var t = Texts.at(Example.whole()).held();
    for (String plan : List.of("december", "", "decembr")) {
    var r = ShareOutGoal.of(t, Plans.DAY, plan, Map.of(), PrintedPaths.BELOW_FOLDER);
    System.out.println(r.problems()); System.out.println(r.shown()); System.out.println(r.json().length());
    System.out.println(r.next(false)); 
    }
  }
}
