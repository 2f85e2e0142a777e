package dev.pellucid.engine.larder;

import dev.pellucid.engine.larder.Source.Standing;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.text.Span;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** {@code sources.yaml}, and the source that any block names. */
final class Sources {
  static final String FILE = "sources.yaml";

  private final SortedMap<String, Source> byId = new TreeMap<>();
  private final Known known;

  Sources(Optional<DataFile> file, Remarks remarks) {
    file.flatMap(it -> it.fields(Vocabulary.SOURCES, remarks))
        .ifPresent(fields -> fields.others().forEach(entry -> read(fields, entry, remarks)));
    boolean whole = file.map(it -> it.read().whole()).orElse(true);
    known = new Known(ReferenceFindings.SOURCE, "a source", FILE, byId.keySet(), whole);
  }

  SortedMap<String, Source> byId() {
    return byId;
  }

  private void read(Fields fields, Entry entry, Remarks remarks) {
    Scalar id = entry.key();
    byId.put(id.text(), unknown(id.text(), id.span()));
    if (!id.text().matches(Vocabulary.NAME)) {
      remarks.add(KeyFindings.name(id.span(), id.text(), "a source"));
    }
    fields
        .blockOf(entry, Vocabulary.SOURCE_ENTRY)
        .ifPresent(block -> byId.put(id.text(), source(id, block, remarks)));
  }

  private static Source source(Scalar id, Fields block, Remarks remarks) {
    Optional<Standing> standing = block.oneOf("standing", "a standing", Standing.class);
    Optional<Scalar> read = block.text("read");
    read.ifPresent(day -> new FigureReader(remarks).day(day));
    return new Source(
        id.text(),
        standing.orElse(Standing.INVENTED),
        block.text("cite").map(Scalar::text).orElse(""),
        block.text("address").map(Scalar::text),
        read.map(Scalar::text),
        block.text("licence").map(Scalar::text),
        id.span());
  }

  /** The source of a block; one that is missing or unknown is a finding, and stands in as such. */
  Source of(Fields block) {
    Optional<Scalar> id = block.text("source");
    if (id.isEmpty()) {
      return unknown("", block.place());
    }
    known.check(id.get(), block.remarks());
    Source source = byId.get(id.get().text());
    return source == null ? unknown(id.get().text(), id.get().span()) : source;
  }

  /** What stands in where no source is known: the least trusted there is. */
  static Source unknown(String id, Span place) {
    return new Source(
        id, Standing.INVENTED, "", Optional.empty(), Optional.empty(), Optional.empty(), place);
  }
}
