package dev.pellucid.engine.quality;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How fine a grind is, from what stays on each sieve of a stack (ASABE S319, from memory, sure).
 *
 * <p>What lies on a sieve is taken to have the diameter {@code sqrt(opening x next coarser
 * opening)}. The geometric mean diameter is {@code 10^(Σ W log d / Σ W)} and the spread {@code
 * 10^sqrt(Σ W (log d - log dgw)² / Σ W)}, a plain quotient. Above the coarsest sieve of a stack the
 * next opening is that of the series, {@code √2} times as wide; what falls into the pan is taken to
 * lie on an opening of 37 µm.
 *
 * @param fractions from the coarsest sieve to the finest
 * @param pan what fell through all of them, in the unit of the fractions
 */
public record SieveAnalysis(List<Fraction> fractions, double pan) {
  private static final double SERIES = Math.sqrt(2);
  private static final double PAN_OPENING = 0.037;

  public SieveAnalysis {
    List<Fraction> sorted = new ArrayList<>(fractions);
    sorted.sort(Comparator.comparingDouble(Fraction::opening).reversed());
    fractions = List.copyOf(sorted);
    if (fractions.isEmpty() || !(pan >= 0) || !(sum(fractions) + pan > 0)) {
      throw new IllegalArgumentException("not a sieve analysis: " + fractions);
    }
    for (int i = 1; i < fractions.size(); i++) {
      if (fractions.get(i).opening() == fractions.get(i - 1).opening()) {
        throw new IllegalArgumentException("one sieve twice: " + fractions.get(i));
      }
    }
  }

  /**
   * One sieve.
   *
   * @param opening mm
   * @param mass what stayed on it, in the one unit of the analysis
   */
  public record Fraction(double opening, double mass) {
    public Fraction {
      if (!(opening > 0 && opening < Double.POSITIVE_INFINITY && mass >= 0)) {
        throw new IllegalArgumentException("not a sieve: " + opening);
      }
    }
  }

  /** All that was found again, in the unit of the fractions. */
  public double recovered() {
    return sum(fractions) + pan;
  }

  /** The geometric mean diameter, mm. */
  public double meanDiameter() {
    return Math.pow(10, meanLog());
  }

  /** The geometric standard deviation, a quotient of diameters: 1 when all grains are alike. */
  public double spread() {
    double mean = meanLog();
    double squares = 0;
    for (Grade grade : grades()) {
      double off = Math.log10(grade.diameter()) - mean;
      squares += grade.mass() * off * off;
    }
    return Math.pow(10, Math.sqrt(squares / recovered()));
  }

  /** The share of the mass on sieves of this opening, in mm, or a wider one. */
  public double notThrough(double opening) {
    return fractions.stream()
            .filter(it -> it.opening() >= opening)
            .mapToDouble(Fraction::mass)
            .sum()
        / recovered();
  }

  private double meanLog() {
    double sum = 0;
    for (Grade grade : grades()) {
      sum += grade.mass() * Math.log10(grade.diameter());
    }
    return sum / recovered();
  }

  /** Grains of one diameter, in mm. */
  private record Grade(double diameter, double mass) {}

  private List<Grade> grades() {
    List<Grade> grades = new ArrayList<>();
    double coarser = fractions.get(0).opening() * SERIES;
    for (Fraction fraction : fractions) {
      grades.add(new Grade(Math.sqrt(fraction.opening() * coarser), fraction.mass()));
      coarser = fraction.opening();
    }
    double below = coarser > PAN_OPENING ? PAN_OPENING : coarser / SERIES;
    grades.add(new Grade(Math.sqrt(below * coarser), pan));
    return grades;
  }

  private static double sum(List<Fraction> fractions) {
    return fractions.stream().mapToDouble(Fraction::mass).sum();
  }
}
