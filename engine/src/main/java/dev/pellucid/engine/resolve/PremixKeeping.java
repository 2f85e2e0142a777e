package dev.pellucid.engine.resolve;

import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Step;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * What a premix does not tell of how it is made and kept. One that is packed and says no shelf life
 * leaves it open what its vitamins are still worth in any feed: that is an error.
 */
final class PremixKeeping {
  private static final Code CODE = PremixResolver.INCOMPLETE;

  private final String code;
  private final Span declared;
  private final List<Finding> findings;

  PremixKeeping(String code, Span declared, List<Finding> findings) {
    this.code = code;
    this.declared = declared;
    this.findings = findings;
  }

  /**
   * @param parts how many things are blended
   * @param supplies whether it was made to bring nutrients
   */
  void look(Passes passes, int parts, boolean supplies) {
    if (!passes.isTold()) {
      if (supplies) {
        say(
            Finding.warning(
                    CODE, declared, code + " does not say how it is made and how long it keeps")
                .noting("what it brings counts as on the day on which it is made")
                .helping(
                    "add a section process: blend time, pack, store shelf-life and temperature"),
            "process");
      }
      return;
    }
    life(passes);
    if (parts > 1 && passes.setting(Step.BLEND, Property.TIME).isEmpty()) {
      say(
          Finding.warning(CODE, first(passes), code + " does not say how long it is blended")
              .noting("what is not even in the premix is not even in any feed")
              .helping("add a line like: blend time 15 min, with the time your mixer needs"),
          "blend time");
    }
  }

  private void life(Passes passes) {
    Optional<Pass> store = passes.first(Step.STORE);
    Optional<Pass> waits = store.isPresent() ? store : passes.first(Step.PACK);
    if (waits.isEmpty()) {
      return;
    }
    if (passes.setting(Step.STORE, Property.SHELF_LIFE).isEmpty()) {
      say(
          Finding.error(
                  CODE,
                  waits.get().span(),
                  code
                      + " is "
                      + (store.isPresent() ? "stored" : "packed")
                      + ", and nothing says how long it keeps")
              .noting("what is left of its vitamins is unknown in every feed that takes it")
              .helping(
                  "add a line like: store shelf-life 90 d, with the days that you can guarantee"),
          "shelf-life");
    } else if (passes.setting(Step.STORE, Property.TEMPERATURE).isEmpty()) {
      say(
          Finding.warning(CODE, waits.get().span(), code + " does not say how warm its store is")
              .noting("what is lost in the store is computed at 25 °C")
              .helping("add a line like: store temperature 15 °C, with your own"),
          "store temperature");
    }
  }

  private void say(Finding finding, String what) {
    findings.add(finding.about(new About(what, About.Side.NONE, List.of())));
  }

  private static Span first(Passes passes) {
    return passes.inOrder().get(0).span();
  }
}
