package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.LabelRules;
import dev.pellucid.engine.data.LabelRules.Asked;
import dev.pellucid.engine.data.LabelRules.Must;
import dev.pellucid.engine.data.Maker;
import dev.pellucid.engine.data.Settings;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the settings do not say of the maker, and every bag must. Asked once for a folder, and only
 * where an approved recipe has a label.
 */
final class MakerNotTold {
  static final Code CODE = new Code("maker-not-told");

  private MakerNotTold() {}

  static void look(Shared shared, List<Summary> recipes, List<Finding> findings) {
    Optional<LabelRules> rules = shared.tables().label();
    if (rules.isEmpty() || !isPrinted(recipes)) {
      return;
    }
    Map<Must, Asked> must = rules.get().mustTell();
    Settings settings = shared.tables().settings();
    Optional<Maker> maker = settings.maker();
    if (maker.isEmpty() && must.containsKey(Must.MAKER)) {
      findings.add(noMaker(settings, must.get(Must.MAKER), must.containsKey(Must.APPROVAL_NUMBER)));
    } else if (maker.isPresent()
        && !maker.get().numberTold()
        && must.containsKey(Must.APPROVAL_NUMBER)) {
      findings.add(noNumber(maker.get(), must.get(Must.APPROVAL_NUMBER)));
    }
  }

  private static boolean isPrinted(List<Summary> recipes) {
    for (Summary one : recipes) {
      if (one.asked().isPresent()
          && one.asked().get().approved()
          && one.asked().get().sections().contains("label")) {
        return true;
      }
    }
    return false;
  }

  private static Finding noMaker(Settings settings, Asked asked, boolean number) {
    return Finding.warning(
            CODE,
            settings.place().file().beginning(),
            "nothing says who makes the feed and where, and every bag must tell it")
        .seeing("asked for by " + asked.article() + ", written", asked.place())
        .helping(
            "add to it a block maker: with name: and address:"
                + (number ? ", and approval-number: the one of the mill, or none" : ""))
        .about(new About("maker", About.Side.NONE, List.of()));
  }

  private static Finding noNumber(Maker maker, Asked asked) {
    return Finding.warning(
            CODE, maker.place(), "the maker has no approval-number, and every bag must tell it")
        .seeing("asked for by " + asked.article() + ", written", asked.place())
        .helping("add approval-number: and the one that the authority gave the mill, or none")
        .about(new About("approval-number", About.Side.NONE, List.of()));
  }
}
