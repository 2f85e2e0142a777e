package dev.pellucid.engine.resolve;

import dev.pellucid.engine.quantity.Share;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.OverageLine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The overage rules of a file. A rule for a name is narrower than one for a group, and that than
 * one for all lines below a share, of which the lower share is narrower; for each purpose the
 * narrowest that fits a line wins, and two as narrow are a finding. An overage is a share of its
 * line: 10 % on 1.00 % is 0.10 %.
 */
final class Overages {
  static final Code NOTHING = new Code("overage-matches-nothing");
  static final Code TWO_GROUPS = new Code("overage-from-two-groups");
  static final Code NO_BATCH = new Code("overage-needs-batch");
  private static final String HANDLING = "handling";
  private static final String STABILITY = "stability";

  private final List<OverageLine> rules;
  private final Optional<BigDecimal> batchKg;
  private final List<Finding> findings;
  private final Set<OverageLine> used = new HashSet<>();
  private final Set<OverageLine> doubtful = new HashSet<>();
  private final Set<OverageLine.Extra.PerWeighing> withoutBatch = new HashSet<>();

  /**
   * @param batchKg what one batch weighs, for overage per weighing
   */
  Overages(List<OverageLine> rules, Optional<BigDecimal> batchKg, List<Finding> findings) {
    this.rules = rules;
    this.batchKg = batchKg;
    this.findings = findings;
  }

  /** What a line needs more of to last, as a share of everything weighed. */
  Share stability(Material material, Share share) {
    return extra(material, share, STABILITY);
  }

  /** What a line loses on the way, as a share of everything weighed. */
  Share handling(Material material, Share inFeed, Share designed) {
    return extra(material, inFeed, designed, HANDLING);
  }

  private Share extra(Material material, Share share, String purpose) {
    return extra(material, share, share, purpose);
  }

  private Share extra(Material material, Share of, Share designed, String purpose) {
    Optional<OverageLine> rule = narrowest(material, designed, purpose);
    if (rule.isEmpty()) {
      return Share.ZERO;
    }
    used.add(rule.get());
    if (rule.get().extra() instanceof OverageLine.Extra.OfLine share) {
      return Lines.exact(share.share()).of(of);
    }
    OverageLine.Extra.PerWeighing mass = (OverageLine.Extra.PerWeighing) rule.get().extra();
    if (batchKg.isEmpty()) {
      reportNoBatch(mass);
      return Share.ZERO;
    }
    return Share.ratio(kg(mass), batchKg.get());
  }

  private void reportNoBatch(OverageLine.Extra.PerWeighing mass) {
    if (withoutBatch.add(mass)) {
      findings.add(
          Finding.error(NO_BATCH, mass.span(), "an extra per weighing needs the size of a batch")
              .helping("add the line: batch 60 kg weighed"));
    }
  }

  private static BigDecimal kg(OverageLine.Extra.PerWeighing mass) {
    return BigDecimal.valueOf(mass.mass().base());
  }

  private Optional<OverageLine> narrowest(Material material, Share share, String purpose) {
    List<OverageLine> best = new ArrayList<>();
    int width = 4;
    for (OverageLine rule : rules) {
      int fits = rule.purpose().text().equals(purpose) ? width(rule.target(), material, share) : 4;
      if (fits == 4) {
        continue;
      }
      used.add(rule);
      if (fits < width || (fits == 3 && width == 3 && isLower(rule, best.get(0)))) {
        best.clear();
      }
      if (fits <= width) {
        best.add(rule);
        width = fits;
      }
    }
    if (width == 2 && best.size() > 1) {
      reportTwoGroups(material, best.get(0), best.get(1));
    }
    return best.stream().findFirst();
  }

  private static boolean isLower(OverageLine one, OverageLine other) {
    return one.target() instanceof OverageLine.Target.LinesBelow lower
        && other.target() instanceof OverageLine.Target.LinesBelow higher
        && Lines.exact(lower.share()).compareTo(Lines.exact(higher.share())) < 0;
  }

  private void reportTwoGroups(Material material, OverageLine first, OverageLine second) {
    boolean sameGroup = first.target().span().text().equals(second.target().span().text());
    if (!sameGroup && doubtful.add(second)) {
      findings.add(
          Finding.error(
                  TWO_GROUPS,
                  second.target().span(),
                  material.name()
                      + " is in "
                      + first.target().span().text()
                      + " and in "
                      + second.target().span().text()
                      + ", and both have overage for "
                      + second.purpose().text())
              .seeing("the other rule", first.target().span())
              .helping("write a line of its own for " + material.name() + ", it goes before both"));
    }
  }

  /** 1 for the name itself, 2 for a group, 3 for lines below a share, 4 for no match. */
  private static int width(OverageLine.Target target, Material material, Share share) {
    if (target instanceof OverageLine.Target.LinesBelow below) {
      return share.compareTo(Lines.exact(below.share())) < 0 ? 3 : 4;
    }
    String name = ((OverageLine.Target.Named) target).name().text();
    if (name.equals(material.name())) {
      return 1;
    }
    if (material instanceof Material.Single single) {
      boolean before = single.ingredient().formerly().contains(name);
      return before ? 1 : single.ingredient().groups().contains(name) ? 2 : 4;
    }
    return 4;
  }

  /** Says which rules fit no line, and which are written twice. */
  void report() {
    Map<String, OverageLine> first = new HashMap<>();
    for (OverageLine rule : rules) {
      String target = rule.target().span().text() + " for " + rule.purpose().text();
      OverageLine before = first.putIfAbsent(target, rule);
      if (before != null) {
        findings.add(
            Finding.error(
                    Lines.TWICE,
                    rule.target().span(),
                    "overage for " + target + " stands here twice")
                .seeing("first written", before.target().span())
                .helping("keep one of the two lines"));
      }
    }
    for (OverageLine rule : rules) {
      if (!used.contains(rule)) {
        findings.add(
            Finding.error(
                    NOTHING,
                    rule.target().span(),
                    "overage for " + rule.target().span().text() + " fits no line of this file")
                .helping("mend the name, or take the line out"));
      }
    }
  }
}
