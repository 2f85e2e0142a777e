package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Ingredient;
import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.data.Plant;
import dev.pellucid.engine.quantity.Share;
import dev.pellucid.engine.resolve.Line.Place;
import dev.pellucid.syntax.SupplyLine;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A premix as it is made.
 *
 * @param dose its intended share of the weighed feed
 * @param parts what it is made of; their shares add up to 100 %
 * @param supplies what it was made to bring, per kg of weighed feed at its dose
 * @param keeping how long it may lie before it is used
 * @param process how it is made
 * @param plant where it is made; empty where neither the premix nor the folder names one
 */
public record ResolvedPremix(
    String code,
    String title,
    Optional<Share> dose,
    List<Part> parts,
    List<Supply> supplies,
    Optional<Keeping> keeping,
    Passes process,
    Optional<Plant> plant,
    Span declared) {
  public ResolvedPremix {
    parts = List.copyOf(parts);
    supplies = List.copyOf(supplies);
  }

  /** Stands for rework that is left out. */
  static ResolvedPremix nothing() {
    return new ResolvedPremix(
        "",
        "",
        Optional.empty(),
        List.of(),
        List.of(),
        Optional.empty(),
        new Passes(List.of()),
        Optional.empty(),
        new SourceFile("", "").beginning());
  }

  /** The same premix with the parts of one batch as it was made. */
  public ResolvedPremix asMade(List<Part> made) {
    return new ResolvedPremix(code, title, dose, made, supplies, keeping, process, plant, declared);
  }

  /** Reckoned like a feed that has no coat and no limits. */
  public ResolvedRecipe asRecipe(String status) {
    return new ResolvedRecipe(
        declared.file(),
        code,
        title,
        status,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        plant,
        lines(),
        process,
        List.of(),
        List.of(),
        Optional.empty(),
        declared);
  }

  /** The ingredients that it brings, premixes in it opened, in the order of its parts. */
  public List<Ingredient> ingredients() {
    List<Ingredient> all = new ArrayList<>();
    for (Part part : parts) {
      all.addAll(part.material().ingredients());
    }
    return all;
  }

  private List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    for (Part part : parts) {
      lines.add(
          new Line(
              lines.size(),
              Place.MIX,
              part.material(),
              part.designed(),
              part.share(),
              part.onTop(),
              0,
              part.share().compareTo(part.designed()) < 0,
              Optional.empty(),
              Optional.empty(),
              part.name(),
              part.name()));
    }
    return lines;
  }

  /**
   * A part of the premix.
   *
   * @param designed its share before overage; the {@code rest} without giving way to that of others
   * @param share its share as it is in the premix, stability overage included
   * @param onTop handling overage, weighed on top of 100 %
   */
  public record Part(Material material, Share designed, Share share, Share onTop, Span name) {
    /** kg that are weighed of it for one kg of the premix. */
    public double weighed() {
      return share.part() + onTop.part();
    }
  }

  /** {@code vitamin-c 100 mg/kg from ascorbyl-phosphate-35}; the amount in the nutrient's base. */
  public record Supply(Nutrient nutrient, double amount, String from, SupplyLine written) {}

  /**
   * Hours and °C.
   *
   * @param warmth where the temperature is written, else where the time is
   */
  public record Keeping(double hours, double temperature, Span span, Span warmth) {}
}
