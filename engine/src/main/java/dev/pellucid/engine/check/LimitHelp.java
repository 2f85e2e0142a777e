package dev.pellucid.engine.check;

import dev.pellucid.engine.check.Contributors.Contributor;
import dev.pellucid.engine.compute.ComputedFeed;
import dev.pellucid.engine.judge.Verdict;
import dev.pellucid.engine.resolve.Limit;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Bound;
import dev.pellucid.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a person can do about a broken limit. Whatever names an amount was tried on the recipe: it
 * meets the limit and breaks none that was kept. What a premix brings is put right in the premix,
 * what heat and storage take by an overage or a shorter shelf life, moisture by the dryer, all else
 * by the smallest change of shares, of one line or two, else of many. Where nothing of these helps,
 * it says what stands in the way.
 */
final class LimitHelp {
  private final RuleContext recipe;
  private final ComputedFeed feed;
  private final Verdict broken;
  private final Optional<Contributor> largest;

  private LimitHelp(
      RuleContext recipe, ComputedFeed feed, Verdict broken, Optional<Contributor> largest) {
    this.recipe = recipe;
    this.feed = feed;
    this.broken = broken;
    this.largest = largest;
  }

  /**
   * A finding with what helps.
   *
   * @param largest the line that brings most of it
   */
  static Finding told(
      Finding finding,
      RuleContext recipe,
      ComputedFeed feed,
      Verdict broken,
      Optional<Contributor> largest) {
    if (recipe.fixing().again() == Again.NONE) {
      return finding.helping("change the recipe");
    }
    return new LimitHelp(recipe, feed, broken, largest).told(finding);
  }

  private Finding told(Finding finding) {
    Finding told = finding;
    for (String words : found()) {
      told = told.helping(words);
    }
    return told.helps().size() > finding.helps().size() ? told : nothing(told);
  }

  private List<String> found() {
    Optional<Fixing.Cure> cure = others() > 0 ? recipe.fixing().cure(recipe) : Optional.empty();
    if (cure.isPresent()) {
      return List.of(cure.get().words());
    }
    if (MoistureFix.isOfMoisture(feed, broken)) {
      Optional<MoistureFix.Found> aim = MoistureFix.found(recipe, feed, broken);
      return aim.filter(MoistureFix.Found::helps).isPresent()
          ? List.of(aim.get().words())
          : aim.isEmpty() ? shares() : List.of();
    }
    if (largest.isEmpty()) {
      return List.of();
    }
    List<String> found = new ArrayList<>();
    boolean comesByPremix = largest.get().most().path().size() > 1;
    if (!comesByPremix && !isSuppliedMinimum()) {
      found.addAll(shares());
      if (!found.isEmpty()) {
        return found;
      }
    }
    found.addAll(LossFix.words(recipe, feed, broken, largest));
    SupplyFix.words(recipe, feed, broken).ifPresent(found::add);
    return found.isEmpty() ? shares() : found;
  }

  private List<String> shares() {
    Optional<Change> change = Fix.smallest(recipe, feed, broken);
    return change.isPresent() ? List.of(change.get().words()) : List.of();
  }

  /** A premix is made to bring what a fish needs of it. */
  private boolean isSuppliedMinimum() {
    if (broken.limit().side() != Bound.Side.MIN) {
      return false;
    }
    for (Supplied one : Supplied.to(feed.recipe())) {
      if (broken.limit().subject().addends().equals(List.of(one.supply().nutrient()))) {
        return true;
      }
    }
    return false;
  }

  private Finding nothing(Finding finding) {
    String subject = broken.limit().subject().text();
    if (MoistureFix.isOfMoisture(feed, broken)) {
      Optional<MoistureFix.Found> aim = MoistureFix.found(recipe, feed, broken);
      return (aim.isPresent() ? finding.noting(aim.get().words()) : finding)
          .helping("look at the moisture that the process aims at, and at the limits of it");
    }
    if (largest.isEmpty()) {
      return finding.helping(
          "no line of this recipe brings "
              + subject
              + ": take in an ingredient or premix that does");
    }
    int others = others();
    if (others >= Fix.FEW) {
      return finding.helping(
          others
              + " other limits are broken too: look for the one share or content that moves them");
    }
    return recipe.fixing().maySolve() ? ofMany(finding) : none(finding);
  }

  private Finding ofMany(Finding finding) {
    Optional<Change> change = others() > 0 ? recipe.fixing().manyCure(recipe) : Optional.empty();
    ManyLines many = new ManyLines(recipe, List.of(broken.limit()));
    Optional<Change> found = change.isPresent() ? change : many.change();
    if (found.isEmpty()) {
      return many.isImpossible() ? impossible(finding, many) : none(finding);
    }
    Finding told = finding.helping(found.get().words());
    // What the label must say then is for a person to write.
    boolean isWhole = found.get().relabels().isEmpty();
    for (TextEdit edit : isWhole ? found.get().edits() : List.<TextEdit>of()) {
      told = told.fixing(edit.span(), edit.replacement());
    }
    return told;
  }

  private Finding impossible(Finding finding, ManyLines many) {
    Optional<String> against = many.against(broken.limit());
    return noting(finding, against.isPresent() ? against : inTheWay())
        .helping(
            "no change of shares within their bounds meets it and keeps all else: widen a bound, or"
                + " take other ingredients");
  }

  private Optional<String> inTheWay() {
    return InTheWay.words(recipe, feed, broken);
  }

  private static Finding noting(Finding finding, Optional<String> words) {
    return words.isPresent() ? finding.noting(words.get()) : finding;
  }

  private Finding none(Finding finding) {
    return noting(finding, inTheWay())
        .helping(
            "no change of one line or two was found, within their bounds, that meets it and keeps all"
                + " else: widen a bound, or take other ingredients");
  }

  private int others() {
    List<Limit> all = Fix.broken(recipe);
    return all.contains(broken.limit()) ? all.size() - 1 : 0;
  }
}
