package dev.pellucid.engine.compare;

import dev.pellucid.engine.account.Account;
import dev.pellucid.engine.judge.LabelVerdict;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * All that is compared of a feed, as plain values: the two states of a folder are not open at once.
 *
 * @param claims what the label says of nutrients, by name
 * @param printed what else stands on the label, by heading
 * @param weighings what the scales must show
 */
public record FeedFigures(
    Account account,
    Map<String, Claimed> claims,
    Map<String, String> printed,
    Weighings weighings) {
  public FeedFigures {
    claims = inOrder(claims);
    printed = inOrder(printed);
  }

  /** The same feed, of which nothing is asked and nothing told. */
  FeedFigures withoutLimits() {
    return new FeedFigures(account.withoutLimits(), Map.of(), Map.of(), weighings);
  }

  /** What is waived and until when. */
  Set<String> waivers() {
    return account.limits().values().stream()
        .flatMap(limit -> limit.demand().waiver().stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** What limits with a waiver are about. */
  Set<String> waived() {
    return account.limits().values().stream()
        .filter(limit -> limit.demand().waivedUntil().isPresent())
        .map(limit -> limit.subject())
        .collect(Collectors.toSet());
  }

  private static <T> Map<String, T> inOrder(Map<String, T> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }

  /** A figure of the label and what the feed makes of it, in a sentence. */
  public record Claimed(String sentence, LabelVerdict.Outcome outcome) {}

  /**
   * What the scales must show.
   *
   * @param kg of the batch, without overage and water
   * @param loads of the mix
   * @param rounds of the coater
   * @param each kg of each line in one load, or one round of the coater, by its name
   */
  public record Weighings(double kg, int loads, int rounds, Map<String, Double> each) {
    /** Where the folder tells no plant or no scales. */
    static final Weighings NONE = new Weighings(0, 0, 0, Map.of());

    public Weighings {
      each = inOrder(each);
    }
  }
}
