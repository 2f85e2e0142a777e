package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Practice.DefaultSpread;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.text.Span;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** {@code practice/spreads.yaml}: what lots vary by where no ± is written. */
final class SpreadsReader {
  static final String FILE = "practice/spreads.yaml";

  private final Sources sources;
  private final Known names;
  private final Remarks remarks;
  private final SpreadSisters sisters;
  private final Map<String, DefaultSpread> spreads = new HashMap<>();
  private final Map<String, Span> told = new HashMap<>();

  SpreadsReader(Sources sources, Known names, Nutrients nutrients, Remarks remarks) {
    this.sources = sources;
    this.names = names;
    this.remarks = remarks;
    this.sisters = new SpreadSisters(nutrients, remarks);
  }

  Map<String, DefaultSpread> read(Optional<DataFile> file) {
    Optional<Fields> fields = DataFile.fields(file, PracticeVocabulary.SPREADS_KEYS, remarks);
    if (fields.isPresent()) {
      take(fields.get());
      for (Fields block : fields.get().blocks(PracticeVocabulary.MEASURED_SPREADS)) {
        take(block);
      }
      sisters.look();
    }
    return spreads;
  }

  private void take(Fields fields) {
    Source source = sources.of(fields);
    OptionalInt analyses = new FigureReader(remarks).analyses(fields, !fields.others().isEmpty());
    for (Entry entry : fields.others()) {
      take(fields, entry, source, analyses);
    }
  }

  private void take(Fields fields, Entry entry, Source source, OptionalInt analyses) {
    Scalar name = entry.key();
    boolean known = names.check(name, fields.keys(), remarks);
    Span earlier = told.putIfAbsent(name.text(), name.span());
    if (earlier != null) {
      remarks.add(ReferenceFindings.nutrientTwice(name, "among the spreads", earlier));
      return;
    }
    Optional<Scalar> written = fields.textOf(entry);
    OptionalDouble share = new FigureReader(remarks).share(written);
    boolean slipped = CommonSpan.SPREAD.look(written, share, remarks);
    if (known && !slipped && written.isPresent() && share.isPresent()) {
      sisters.add(name.text(), written.get(), share.getAsDouble());
    }
    if (known && share.isPresent()) {
      spreads.put(name.text(), new DefaultSpread(share.getAsDouble(), source, analyses));
    }
  }
}
