package dev.pellucid.engine.resolve;

import dev.pellucid.engine.quantity.Share;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.OverageLine;
import dev.pellucid.syntax.OverageLine.Extra.OfLine;
import dev.pellucid.syntax.OverageLine.Extra.PerWeighing;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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

  private final List<Rule> rules = new ArrayList<>();
  private final Batch batch;
  private final List<Finding> findings;

  /** A line of overage, and what has come of it so far. */
  private static final class Rule {
    final OverageLine written;
    final String purpose;
    final Optional<String> name;
    final Share below;
    boolean used;
    boolean doubtful;
    boolean ofRest;
    boolean refused;

    Rule(OverageLine written) {
      this.written = written;
      this.purpose = written.purpose().text();
      this.name =
          written.target().byKind(named -> Optional.of(named.name().text()), l -> Optional.empty());
      this.below = written.target().byKind(named -> Share.WHOLE, l -> Lines.exact(l.share()));
    }

    /** 1 for the name itself, 2 for a group, 3 for lines below a share. */
    int width(Material material, Share share) {
      if (name.isEmpty()) {
        return share.compareTo(below) < 0 ? 3 : NO_MATCH;
      }
      return material.isCalled(name.get()) ? 1 : material.isIn(name.get()) ? 2 : NO_MATCH;
    }

    String target() {
      return written.target().span().text();
    }
  }

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
    this.batch = batch;
    this.findings = findings;
    for (OverageLine rule : rules) {
      this.rules.add(new Rule(rule));
    }
  }

  /** What a line needs more of to last, as a share of everything weighed. */
  Share stability(Material material, Share share) {
    Optional<Rule> rule = narrowest(material, share, STABILITY);
    return rule.isEmpty()
        ? Share.ZERO
        : rule.get()
            .written
            .extra()
            .byKind(ofLine -> of(ofLine, share), mass -> decaysByTheGram(rule.get(), mass));
  }

  /** The rest has no overage for stability, whatever fits it: it gives way to that of others. */
  void restGivesWay(Material material, Share designed) {
    for (Rule rule : rules) {
      if (rule.purpose.equals(STABILITY) && rule.width(material, designed) < NO_MATCH) {
        rule.ofRest = true;
      }
    }
  }

  /** What a line loses on the way that grows with it, as a share of everything weighed. */
  Share handling(Material material, Share inFeed, Share designed) {
    Optional<Rule> rule = narrowest(material, designed, HANDLING);
    return rule.isEmpty()
        ? Share.ZERO
        : rule.get().written.extra().byKind(ofLine -> of(ofLine, inFeed), mass -> Share.ZERO);
  }

  /** What a line loses each time it is weighed out, in kg. */
  double kgPerWeighing(Material material, Share designed) {
    Optional<Rule> rule = narrowest(material, designed, HANDLING);
    return rule.isEmpty()
        ? 0.0
        : rule.get().written.extra().byKind(ofLine -> 0.0, mass -> kg(rule.get(), mass));
  }

  private double kg(Rule rule, PerWeighing mass) {
    if (batch != Batch.TOLD) {
      reportNoBatch(rule, mass);
      return 0;
    }
    return mass.mass().base();
  }

  private static Share of(OfLine extra, Share share) {
    return Lines.exact(extra.share()).of(share);
  }

  private Share decaysByTheGram(Rule rule, PerWeighing extra) {
    if (!rule.refused) {
      rule.refused = true;
      findings.add(
          Finding.error(
                  STABILITY_BY_MASS,
                  extra.span(),
                  "what decays grows with the batch, so it cannot be given per weighing")
              .helping("write a share of the line: 5 % for stability"));
    }
    return Share.ZERO;
  }

  private void reportNoBatch(Rule rule, PerWeighing mass) {
    if (batch == Batch.UNREADABLE || rule.refused) {
      return;
    }
    rule.refused = true;
    findings.add(
        batch == Batch.NOT_IN_PREMIX
            ? Finding.error(
                    NO_BATCH,
                    mass.span(),
                    "a premix has no batch, so an extra per weighing cannot be computed")
                .helping("write a share of the line: 5 % for handling")
            : Finding.error(
                    NO_BATCH, mass.span(), "an extra per weighing needs the size of a batch")
                .helping("add the line: batch 60 kg weighed"));
  }

  private Optional<Rule> narrowest(Material material, Share share, String purpose) {
    Rule best = null;
    Rule asNarrow = null;
    int width = NO_MATCH;
    for (Rule rule : rules) {
      int fits = rule.purpose.equals(purpose) ? rule.width(material, share) : NO_MATCH;
      if (fits == NO_MATCH) {
        continue;
      }
      rule.used = true;
      boolean lower =
          best != null && fits == 3 && width == 3 && rule.below.compareTo(best.below) < 0;
      if (best == null || fits < width || lower) {
        best = rule;
        asNarrow = null;
        width = fits;
      } else if (fits == width && asNarrow == null) {
        asNarrow = rule;
      }
    }
    if (best != null && asNarrow != null && width == 2) {
      reportTwoGroups(material, best, asNarrow);
    }
    return Optional.ofNullable(best);
  }

  private void reportTwoGroups(Material material, Rule first, Rule second) {
    if (!first.target().equals(second.target()) && !second.doubtful) {
      second.doubtful = true;
      findings.add(
          Finding.error(
                  TWO_GROUPS,
                  second.written.target().span(),
                  material.name()
                      + " is in "
                      + first.target()
                      + " and in "
                      + second.target()
                      + ", and both have overage for "
                      + second.purpose)
              .seeing("the other rule", first.written.target().span())
              .helping("write a line of its own for " + material.name() + ", it goes before both"));
    }
  }

  private static Finding fitsNothing(Rule rule) {
    return Finding.error(
            NOTHING,
            rule.written.target().span(),
            "overage for " + rule.target() + " fits no line of this file")
        .helping("fix the name, write a line for it under mix or coat, or take this line out");
  }

  private static Finding changesNothing(Rule rule) {
    return Finding.error(
            NOTHING,
            rule.written.target().span(),
            "overage for stability changes nothing on the rest: it gives way to that of others")
        .helping("write a share in place of rest, or take the line out");
  }

  /** Says which rules fit no line, and which are written twice. */
  void report() {
    Map<String, OverageLine> first = new HashMap<>();
    for (Rule rule : rules) {
      String target = rule.target() + " for " + rule.purpose;
      OverageLine before = first.putIfAbsent(target, rule.written);
      if (before != null) {
        findings.add(
            Finding.error(
                    Lines.TWICE,
                    rule.written.target().span(),
                    "overage for " + target + " stands here twice")
                .seeing("first written", before.target().span())
                .helping("keep one of the two lines"));
      }
    }
    for (Rule rule : rules) {
      if (!rule.used) {
        findings.add(rule.ofRest ? changesNothing(rule) : fitsNothing(rule));
      }
    }
  }
}
