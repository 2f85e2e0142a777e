package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.quantity.Figures;
import dev.pellucid.measure.Unit;
import dev.pellucid.syntax.Bound;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one limit asks, in words: the only place that words it. It is nothing but text and figures,
 * so that whoever keeps it holds no file of the folder.
 *
 * @param subject as one writes it
 * @param title of the subject, for people
 * @param isAnalysis whether a laboratory can find it: a nutrient, a sum of some, or a ratio
 * @param isFound whether one analysis of the feed finds it: no ratio, and nothing that is only
 *     reckoned
 * @param basis words after a figure; empty for as fed
 * @param inBatches the part of batches that must keep it, where confidence is asked for
 * @param written the figure of the bound, whatever is waived
 * @param inForce the figure of the bound in force
 * @param waivedUntil the last day on which a waiver stands in its place
 * @param by the profile that asks, or the code of the recipe
 */
public record Demand(
    String subject,
    String title,
    boolean isAnalysis,
    boolean isFound,
    Bound.Side side,
    String basis,
    OptionalDouble inBatches,
    String written,
    String inForce,
    Optional<LocalDate> waivedUntil,
    Limit.Kind kind,
    String by) {

  static Demand of(Limit limit) {
    return new Demand(
        limit.subject().text(),
        limit.subject().title(),
        !limit.subject().nutrients().isEmpty(),
        isFound(limit.subject()),
        limit.side(),
        limit.basis().words(),
        limit.inBatches(),
        limit.written().asWritten(),
        limit.writtenInForce().asWritten(),
        limit.waiver().map(Waiver::until),
        limit.origin().kind(),
        limit.origin().name());
  }

  private static boolean isFound(Subject subject) {
    for (Nutrient nutrient : subject.addends()) {
      if (!nutrient.analysed()) {
        return false;
      }
    }
    return !subject.addends().isEmpty();
  }

  /**
   * What a limit is called in its recipe, without its figure, so that it keeps its name when the
   * figure changes: {@code crude-protein min in 95 % of batches (catfish-grower)}.
   */
  static String name(Limit limit) {
    String about = about(limit.subject().text(), limit.side());
    String batches = batches(limit.inBatches());
    return about + limit.basis().words() + batches + " (" + limit.origin().name() + ")";
  }

  /** What it is about and on which side: {@code crude-protein min}. */
  public String about() {
    return about(subject, side);
  }

  private static String about(String subject, Bound.Side side) {
    return subject + " " + side.word();
  }

  /** {@code " on dry matter in 95 % of batches"}; empty for the plain case. */
  public String terms() {
    return basis + batches(inBatches);
  }

  /** {@code min 35 %}, whatever is waived. */
  public String bound() {
    return side.word() + " " + written;
  }

  /** The bound in force. */
  public String boundNow() {
    return side.word() + " " + inForce;
  }

  /** {@code min 35 % on dry matter in 95 % of batches}, whatever is waived. */
  public String asked() {
    return bound() + terms();
  }

  /** The same with the bound in force. */
  public String askedNow() {
    return boundNow() + terms();
  }

  /** {@code crude-protein min 35 % on dry matter}, as its line says it, whatever is waived. */
  public String line() {
    return subject + " " + asked();
  }

  /** The same with the bound in force. */
  public String lineNow() {
    return subject + " " + askedNow();
  }

  /** Whether another bound stands in place of the one that was written. */
  public boolean isWaived() {
    return !inForce.equals(written);
  }

  /** The bound in force where the basis stands elsewhere: {@code min 35 % in 95 % of batches}. */
  public String askedNowBesideBasis() {
    return boundNow() + batches(inBatches);
  }

  /** {@code crude-protein min 33 % until 2026-12-01}; empty where nothing is waived. */
  public Optional<String> waiver() {
    return waivedUntil.map(day -> about() + " " + inForce + " until " + day);
  }

  /** The profile that asks for it; empty for the recipe itself. */
  public String profile() {
    return kind == Limit.Kind.RECIPE ? "" : by;
  }

  /** What kind of demand it is, in a word: {@code need}. */
  public String kindWord() {
    return kind.word();
  }

  /** The same for all limits that ask the same of the same feed, whatever their figures. */
  public String key() {
    return profile() + " " + about() + basis + inBatches;
  }

  private static String batches(OptionalDouble inBatches) {
    return inBatches.isPresent()
        ? " in " + Figures.plain(inBatches.getAsDouble(), Unit.PERCENT) + " of batches"
        : "";
  }
}
