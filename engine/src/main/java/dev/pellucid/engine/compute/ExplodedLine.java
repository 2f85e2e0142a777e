package dev.pellucid.engine.compute;

import dev.pellucid.engine.data.Price;
import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Material;
import dev.pellucid.engine.resolve.ResolvedPremix;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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

  /** Whether there is any of it. */
  boolean isOfSome() {
    return kg > 0 || richest > 0;
  }

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

  /** The same at another price. */
  ExplodedLine priced(Price price) {
    return new ExplodedLine(
        line,
        path,
        new Material.Single(material.ingredient(), Optional.of(price)),
        composition,
        through,
        taken,
        kg,
        richest);
  }

  /**
   * The same of a premix that brings so many times as much of a source, in place of its carrier.
   * Empty where the carrier has not as much to give, or the source is no one part of it.
   *
   * @param lineKg of the line in the feed
   * @param lineRichest of the line with its own handling overage
   */
  Optional<ExplodedLine> supplied(
      String premix, String source, double times, double lineKg, double lineRichest) {
    for (int i = 0; i < through.size(); i++) {
      if (through.get(i).code().equals(premix)) {
        Optional<ResolvedPremix.Part> from = part(through.get(i), source);
        if (from.isEmpty() || i + 1 >= path.size()) {
          return Optional.empty();
        }
        double moved = (times - 1) * from.get().share().part();
        double more = more(through.get(i), path.get(i + 1), from.get(), moved);
        Taken was = taken.get(i);
        List<Taken> anew = new ArrayList<>(taken);
        anew.set(i, new Taken(was.share() + more, was.most() + more));
        return was.share() + more < 0
            ? Optional.empty()
            : Optional.of(
                new ExplodedLine(line, path, material, composition, through, anew, kg, richest)
                    .weighed(lineKg, lineRichest));
      }
    }
    return Optional.of(this);
  }

  /** The source grows, the last part gives way: it is the carrier. */
  private static double more(
      ResolvedPremix premix, String here, ResolvedPremix.Part source, double moved) {
    String carrier = premix.parts().get(premix.parts().size() - 1).material().name();
    return here.equals(source.material().name()) ? moved : here.equals(carrier) ? -moved : 0;
  }

  private static Optional<ResolvedPremix.Part> part(ResolvedPremix premix, String name) {
    List<ResolvedPremix.Part> found = new ArrayList<>();
    for (ResolvedPremix.Part part : premix.parts()) {
      if (part.material().isCalled(name)) {
        found.add(part);
      }
    }
    return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
  }
}
