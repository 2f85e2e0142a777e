package dev.pellucid.engine.larder;

import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.NearNames;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/** What every reader of a data file needs: the findings, the figures and the sources. */
final class Shelf {
  static final Code UNKNOWN_NAME = new Code("data-unknown-name");

  private final List<Finding> findings;
  private final FigureReader figures;
  private final SortedMap<String, Source> sources;

  Shelf(List<Finding> findings, SortedMap<String, Source> sources) {
    this.findings = findings;
    this.figures = new FigureReader(findings);
    this.sources = sources;
  }

  List<Finding> findings() {
    return findings;
  }

  FigureReader figures() {
    return figures;
  }

  /** The source that a block names. */
  Optional<Source> source(Fields block) {
    Optional<Scalar> id = block.text("source");
    id.ifPresent(name -> known(name, "a source of sources.yaml", sources.keySet()));
    return id.map(name -> sources.get(name.text()));
  }

  /** Whether a name is one of those that are there. */
  boolean known(Scalar name, String what, Collection<String> names) {
    if (names.contains(name.text())) {
      return true;
    }
    List<String> near = NearNames.of(name.text(), names);
    findings.add(
        Finding.error(UNKNOWN_NAME, name.span(), name.text() + " is not " + what)
            .helping(
                near.isEmpty()
                    ? "add it there, or mend the name"
                    : "did you mean " + String.join(" or ", near) + "?"));
    return false;
  }
}
