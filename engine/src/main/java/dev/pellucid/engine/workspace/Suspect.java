package dev.pellucid.engine.workspace;

import dev.pellucid.engine.data.DataFileKind;
import dev.pellucid.engine.resolve.DependsOn;
import dev.pellucid.engine.resolve.Ref;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A line of which something is said, and which may be why something is wrong in feeds.
 *
 * @param word the first of the line: a nutrient, an ingredient, {@code dose}
 * @param brings what of a feed hangs on the line
 */
record Suspect(Finding finding, String path, String word, Set<String> brings) {
  Suspect {
    brings = Set.copyOf(brings);
  }

  /** Those among the findings of a folder. */
  static List<Suspect> among(List<Finding> findings, Map<String, ResolvedPremix> premixes) {
    List<Suspect> suspects = new ArrayList<>();
    for (Finding finding : findings) {
      if (finding.severity() != Severity.NOTE) {
        of(finding, premixes).ifPresent(suspects::add);
      }
    }
    return suspects;
  }

  private static Optional<Suspect> of(Finding finding, Map<String, ResolvedPremix> premixes) {
    String path = finding.span().file().path();
    String word = word(finding.span());
    if (path.endsWith(".limits")) {
      return Optional.of(new Suspect(finding, path, word, Set.of()));
    }
    if (path.endsWith(".premix")) {
      ResolvedPremix premix = premixes.get(finding.span().file().stem());
      return premix == null
          ? Optional.empty()
          : Optional.of(new Suspect(finding, path, word, brought(premix, word)));
    }
    Optional<DataFileKind> kind = DataFileKind.of(path);
    boolean fits =
        kind.isPresent()
            && (kind.get() == DataFileKind.INGREDIENTS || kind.get() == DataFileKind.PRICES);
    return fits ? Optional.of(new Suspect(finding, path, word, Set.of(word))) : Optional.empty();
  }

  /** What a line of a premix bears on: its own nutrient, else all that the premix is made for. */
  private static Set<String> brought(ResolvedPremix premix, String word) {
    Set<String> all = new TreeSet<>();
    premix.supplies().forEach(supply -> all.add(supply.nutrient().name()));
    return all.contains(word) ? Set.of(word) : all;
  }

  private static String word(Span span) {
    String line = span.file().line(span.from().line()).strip();
    String bare = line.startsWith("- ") ? line.substring(2).strip() : line;
    int end = 0;
    while (end < bare.length()
        && !Character.isWhitespace(bare.charAt(end))
        && bare.charAt(end) != ':') {
      end++;
    }
    return bare.substring(0, end);
  }

  /** Whether something that is wrong with the feed of a recipe follows from this line. */
  boolean explains(String recipe, Consequence one, DependsOn hangs) {
    if (path.endsWith(".recipe")) {
      return path.equals(recipe) && one.tooLittle() && bears(one);
    }
    if (path.endsWith(".limits")) {
      return one.bound().filter(this::isHere).isPresent();
    }
    if (DataFileKind.of(path).filter(kind -> kind == DataFileKind.PRICES).isPresent()) {
      return one.cost() && hangs.refs().contains(new Ref(Ref.Kind.PRICE, word));
    }
    return bears(one) && hangs.on(path);
  }

  private boolean bears(Consequence one) {
    return one.contents().stream().anyMatch(brings::contains);
  }

  private boolean isHere(Span bound) {
    return bound.file().path().equals(path) && bound.from().line() == finding.span().from().line();
  }
}
