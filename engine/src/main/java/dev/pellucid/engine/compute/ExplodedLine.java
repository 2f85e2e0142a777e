package dev.pellucid.engine.compute;

import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedPremix;
import java.util.List;

/**
 * An ingredient of a line, premixes opened; kg per 100 kg of recipe.
 *
 * @param through the premixes it came in, the outermost first
 * @param taken its parts of them, in the same order
 * @param kg in the feed
 * @param richest with all handling overage
 */
record ExplodedLine(
    Line line,
    List<String> path,
    Material.Single material,
    Composition composition,
    List<ResolvedPremix> through,
    List<Taken> taken,
    double kg,
    double richest) {

  /**
   * How much of a premix one part of it is.
   *
   * @param share in the feed
   * @param most with all handling overage of the premix
   */
  record Taken(double share, double most) {}

  /**
   * The same of a line that is weighed otherwise.
   *
   * @param lineKg of the line in the feed
   * @param lineRichest of the line with its own handling overage
   */
  ExplodedLine weighed(double lineKg, double lineRichest) {
    double least = lineKg;
    double most = lineRichest;
    for (Taken part : taken) {
      least *= part.share();
      most *= part.most();
    }
    return new ExplodedLine(line, path, material, composition, through, taken, least, most);
  }
}
