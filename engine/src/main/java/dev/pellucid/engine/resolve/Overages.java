package dev.pellucid.engine.resolve;

import dev.pellucid.engine.quantity.Share;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.OverageLine;
import dev.pellucid.syntax.OverageLine.Extra.OfLine;
import dev.pellucid.syntax.OverageLine.Extra.PerWeighing;
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
  static final Code STABILITY_BY_MASS = new Code("stability-per-weighing");
  private static final int NO_MATCH = 4;
  private static final String HANDLING = "handling";
  private static final String STABILITY = "stability";

  private final List<OverageLine> rules;
  private final Batch batch;
  private final List<Finding> findings;
  private final Set<OverageLine> used = new HashSet<>();
  private final Set<OverageLine> doubtful = new HashSet<>();
  private final Set<OverageLine> ofRest = new HashSet<>();
  private final Set<OverageLine.Extra> refused = new HashSet<>();

  /** What a file tells of the size of a batch, for overage per weighing. */
  enum Batch {
    /** The batch is told. */
    TOLD,
    /** The batch could not be read, and a finding says so. */
    UNREADABLE,
    /** A recipe that tells none. */
    UNTOLD,
    /** A premix never tells one. */
    NOT_IN_PREMIX
  }

  Overages(List<OverageLine> rules, Batch batch, List<Finding> findings) {
    this.rules = rules;
    this.batch = batch;
    this.findings = findings;
  }

  /** What a line needs more of to last, as a share of everything weighed. */
  Share stability(Material material, Share share) {
    return narrowest(material, share, STABILITY)
        .map(rule -> rule.extra())
        .map(extra -> extra.byKind(ofLine -> of(ofLine, share), this::decaysByTheGram))
        .orElse(Share.ZERO);
  }

  /** The rest has no overage for stability, whatever fits it: it gives way to that of others. */
  void restGivesWay(Material material, Share designed) {
    rules.stream()
        .filter(rule -> rule.purpose().text().equals(STABILITY))
        .filter(rule -> width(rule.target(), material, designed) < NO_MATCH)
        .forEach(ofRest::add);
  }

  /** What a line loses on the way that grows with it, as a share of everything weighed. */
  Share handling(Material material, Share inFeed, Share designed) {
    return narrowest(material, designed, HANDLING)
        .map(rule -> rule.extra().byKind(ofLine -> of(ofLine, inFeed), perWeighing -> Share.ZERO))
        .orElse(Share.ZERO);
  }

  /** What a line loses each time it is weighed out, in kg. */
  double kgPerWeighing(Material material, Share designed) {
    Optional<PerWeighing> mass =
        narrowest(material, designed, HANDLING)
            .flatMap(rule -> rule.extra().byKind(ofLine -> Optional.empty(), Optional::of));
    if (mass.isPresent() && batch != Batch.TOLD) {
      reportNoBatch(mass.get());
      return 0;
    }
    return mass.map(told -> told.mass().base()).orElse(0.0);
  }

  private static Share of(OfLine extra, Share share) {
    return Lines.exact(extra.share()).of(share);
  }

  private Share decaysByTheGram(PerWeighing extra) {
    if (refused.add(extra)) {
      findings.add(
          Finding.error(
                  STABILITY_BY_MASS,
                  extra.span(),
                  "what decays grows with the batch, so it cannot be told per weighing")
              .helping("write a share of the line: 5 % for stability"));
    }
    return Share.ZERO;
  }

  private void reportNoBatch(PerWeighing mass) {
    if (batch == Batch.UNREADABLE || !refused.add(mass)) {
      return;
    }
    findings.add(
        batch == Batch.NOT_IN_PREMIX
            ? Finding.error(
                    NO_BATCH,
                    mass.span(),
                    "a premix tells no batch, so an extra per weighing cannot be reckoned")
                .helping("write a share of the line: 5 % for handling")
            : Finding.error(
                    NO_BATCH, mass.span(), "an extra per weighing needs the size of a batch")
                .helping("add the line: batch 60 kg weighed"));
  }

  private Optional<OverageLine> narrowest(Material material, Share share, String purpose) {
    List<OverageLine> best = new ArrayList<>();
    int width = NO_MATCH;
    for (OverageLine rule : rules) {
      int fits =
          rule.purpose().text().equals(purpose) ? width(rule.target(), material, share) : NO_MATCH;
      if (fits == NO_MATCH) {
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
    return below(one.target()).compareTo(below(other.target())) < 0;
  }

  /** The share that the lines are below; the whole where the lines are named. */
  private static Share below(OverageLine.Target target) {
    return target.byKind(named -> Share.WHOLE, lines -> Lines.exact(lines.share()));
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

  /** 1 for the name itself, 2 for a group, 3 for lines below a share. */
  private static int width(OverageLine.Target target, Material material, Share share) {
    return target.byKind(
        named -> width(named.name().text(), material),
        lines -> share.compareTo(Lines.exact(lines.share())) < 0 ? 3 : NO_MATCH);
  }

  private static int width(String name, Material material) {
    return material.isCalled(name) ? 1 : material.isIn(name) ? 2 : NO_MATCH;
  }

  private static Finding fitsNothing(OverageLine rule) {
    return Finding.error(
            NOTHING,
            rule.target().span(),
            "overage for " + rule.target().span().text() + " fits no line of this file")
        .helping("mend the name, or take the line out");
  }

  private static Finding changesNothing(OverageLine rule) {
    return Finding.error(
            NOTHING,
            rule.target().span(),
            "overage for stability changes nothing on the rest: it gives way to that of others")
        .helping("write a share in place of rest, or take the line out");
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
        findings.add(ofRest.contains(rule) ? changesNothing(rule) : fitsNothing(rule));
      }
    }
  }
}
