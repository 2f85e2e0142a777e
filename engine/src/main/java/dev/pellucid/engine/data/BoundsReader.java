package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Practice.BoundOf;
import dev.pellucid.engine.data.Practice.PracticeBound;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Kind;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** {@code practice/bounds.yaml}. */
final class BoundsReader {
  static final String FILE = "practice/bounds.yaml";

  private final Sources sources;
  private final Remarks remarks;

  BoundsReader(Sources sources, Remarks remarks) {
    this.sources = sources;
    this.remarks = remarks;
  }

  Map<BoundOf, PracticeBound> read(Optional<DataFile> file) {
    Map<BoundOf, PracticeBound> bounds = new EnumMap<>(BoundOf.class);
    Optional<Fields> fields = DataFile.fields(file, PracticeVocabulary.BOUNDS_KEYS, remarks);
    if (fields.isEmpty()) {
      return bounds;
    }
    for (BoundOf of : BoundOf.values()) {
      Optional<Fields> block = fields.get().block(PracticeVocabulary.bound(of));
      Optional<PracticeBound> bound = block.isPresent() ? bound(block.get(), of) : Optional.empty();
      if (bound.isPresent()) {
        bounds.put(of, bound.get());
      }
    }
    return bounds;
  }

  private Optional<PracticeBound> bound(Fields block, BoundOf of) {
    Kind kind = of.unit().kind();
    Source source = sources.of(block);
    Optional<Scalar> from = block.text(PracticeVocabulary.BOUND_FROM);
    Optional<Scalar> to = block.text(PracticeVocabulary.BOUND_TO);
    if (!block.has(PracticeVocabulary.BOUND_FROM) && !block.has(PracticeVocabulary.BOUND_TO)) {
      remarks.add(
          KeyFindings.missingKey(
              block.place(), PracticeVocabulary.BOUND_TO, block.keys(), "the high end, or from"));
      return Optional.empty();
    }
    OptionalDouble low = new FigureReader(remarks).base(from, kind);
    OptionalDouble high = new FigureReader(remarks).base(to, kind);
    if ((block.has(PracticeVocabulary.BOUND_FROM) && low.isEmpty())
        || (block.has(PracticeVocabulary.BOUND_TO) && high.isEmpty())) {
      return Optional.empty();
    }
    BoundSpans spans = BoundSpans.of(of);
    if (low.orElse(0) > high.orElse(Double.MAX_VALUE)) {
      if (to.isPresent() && from.isPresent()) {
        boolean slipped = isOutside(low, spans.from()) && !isOutside(high, spans.to());
        Common common = slipped ? spans.from() : spans.to();
        remarks.add(
            slipped
                ? crossed(from.get(), "is above the high end of the bound", low, common)
                : crossed(to.get(), "is below the low end of the bound", high, common));
      }
      return Optional.empty();
    }
    look(from, low, spans.from());
    look(to, high, spans.to());
    return Optional.of(
        new PracticeBound(
            low.orElse(0), high.orElse(Double.MAX_VALUE), asWritten(from, to), source));
  }

  private void look(Optional<Scalar> written, OptionalDouble end, Common common) {
    if (written.isPresent() && isOutside(end, common)) {
      remarks.add(common.outside(written.get()));
    }
  }

  /** No bound at all is written as nothing. */
  private static boolean isOutside(OptionalDouble end, Common common) {
    return end.isPresent() && end.getAsDouble() > 0 && !common.holds(end.getAsDouble());
  }

  private static Finding crossed(Scalar at, String words, OptionalDouble end, Common common) {
    return FigureFindings.at(FigureFindings.RANGE, at, words)
        .helping(isOutside(end, common) ? common.help(at) : "from is the low end, to the high one");
  }

  private static String asWritten(Optional<Scalar> from, Optional<Scalar> to) {
    if (from.isPresent()) {
      String low = from.get().text();
      return to.isPresent() ? low + " to " + to.get().text() : "at least " + low;
    }
    return to.isPresent() ? "at most " + to.get().text() : "";
  }
}
