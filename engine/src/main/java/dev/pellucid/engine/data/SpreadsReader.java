package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Practice.DefaultSpread;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** {@code practice/spreads.yaml}: what lots vary by where no ± is written. */
final class SpreadsReader {
  static final String FILE = "practice/spreads.yaml";

  private final Sources sources;
  private final Known names;
  private final Nutrients nutrients;
  private final Remarks remarks;

  SpreadsReader(Sources sources, Known names, Nutrients nutrients, Remarks remarks) {
    this.sources = sources;
    this.names = names;
    this.nutrients = nutrients;
    this.remarks = remarks;
  }

  Map<String, DefaultSpread> read(Optional<DataFile> file) {
    Map<String, DefaultSpread> spreads = new HashMap<>();
    Optional<Fields> fields = DataFile.fields(file, PracticeVocabulary.SPREADS_KEYS, remarks);
    if (fields.isPresent()) {
      Source source = sources.of(fields.get());
      SpreadSisters sisters = new SpreadSisters(nutrients, remarks);
      for (Entry entry : fields.get().others()) {
        spread(fields.get(), entry, source, spreads, sisters);
      }
      sisters.look();
    }
    return spreads;
  }

  private void spread(
      Fields fields,
      Entry entry,
      Source source,
      Map<String, DefaultSpread> spreads,
      SpreadSisters sisters) {
    boolean known = names.check(entry.key(), fields.keys(), remarks);
    Optional<Scalar> written = fields.textOf(entry);
    OptionalDouble share = new FigureReader(remarks).share(written);
    boolean slipped = CommonSpan.SPREAD.look(written, share, remarks);
    if (known && !slipped && written.isPresent() && share.isPresent()) {
      sisters.add(entry.key().text(), written.get(), share.getAsDouble());
    }
    if (known && share.isPresent()) {
      spreads.put(entry.key().text(), new DefaultSpread(share.getAsDouble(), source));
    }
  }
}
