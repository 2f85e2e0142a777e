package dev.pellucid.engine.workspace;

import dev.pellucid.engine.check.Rules;
import dev.pellucid.engine.data.DataFileKind;
import dev.pellucid.engine.resolve.DependsOn;
import dev.pellucid.engine.resolve.Ref;
import dev.pellucid.engine.resolve.ResolvedPremix;
import dev.pellucid.finding.About;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.SourceFile;
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
 * @param brings what of a feed hangs on the line; nothing where a share moves all of it
 */
record Suspect(Finding finding, String path, String word, Set<String> brings) {
  /** Sections whose lines make the feed; the head has no word. */
  private static final Set<String> MAKING = Set.of("", "mix", "coat", "overage", "process");

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
    if (path.endsWith(Trees.RECIPE)) {
      return movesFeed(finding)
          ? Optional.of(new Suspect(finding, path, word, Set.of()))
          : Optional.empty();
    }
    if (path.endsWith(Trees.PROFILE)) {
      return Optional.of(new Suspect(finding, path, word, Set.of()));
    }
    if (path.endsWith(Trees.PREMIX)) {
      ResolvedPremix premix = premixes.get(finding.span().file().stem());
      return premix == null
          ? Optional.empty()
          : Optional.of(new Suspect(finding, path, word, brought(premix, word, finding)));
    }
    Optional<DataFileKind> kind = DataFileKind.of(path);
    boolean fits =
        kind.isPresent()
            && (kind.get() == DataFileKind.INGREDIENTS
                || kind.get() == DataFileKind.NUTRIENTS
                || kind.get() == DataFileKind.PRICES);
    return fits ? Optional.of(new Suspect(finding, path, word, Set.of(word))) : Optional.empty();
  }

  /** A share that is surely wrong, or a line that should make the feed and could not be read. */
  private static boolean movesFeed(Finding finding) {
    return Rules.isCause(finding)
        || finding.severity() == Severity.ERROR
            && !Rules.codes().contains(finding.code())
            && MAKING.contains(section(finding.span()));
  }

  /** The section in which a line stands; empty in the head. */
  private static String section(Span span) {
    SourceFile file = span.file();
    int line = span.from().line();
    while (line > 1) {
      String text = file.line(line);
      if (!text.isEmpty() && Character.isLetter(text.charAt(0))) {
        return text.strip();
      }
      line--;
    }
    return "";
  }

  /** What a line of a premix bears on: its own nutrient, else all that the premix is made for. */
  private static Set<String> brought(ResolvedPremix premix, String word, Finding finding) {
    if (finding.about().side() == About.Side.MIN) {
      // A nutrient that it should bring and does not.
      return Set.of(finding.about().subject());
    }
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
    if (path.endsWith(Trees.RECIPE)) {
      return path.equals(recipe) && (brings.isEmpty() || one.tooLittle() && bears(one));
    }
    if (path.endsWith(Trees.PROFILE)) {
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
