package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.data.Source.Ending;
import dev.pellucid.engine.data.Source.Reliability;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.text.BundledPath;
import dev.pellucid.text.Span;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** {@code sources.yaml}, and the source that any block names. */
final class Sources {
  static final String FILE = "sources.yaml";

  private final SortedMap<String, Source> byId = new TreeMap<>();
  private final Known known;

  /**
   * @param files of which a later one counts more
   */
  Sources(List<DataFile> files, Remarks remarks) {
    boolean whole = !files.isEmpty();
    for (DataFile file : files) {
      whole &= file.read().whole();
      file.fields(SourcesVocabulary.SOURCES_KEYS, remarks).ifPresent(all -> read(all, remarks));
    }
    known = new Known(ReferenceFindings.SOURCE, "a source", FILE, byId.keySet(), whole);
  }

  private void read(Fields fields, Remarks remarks) {
    for (Entry entry : fields.others()) {
      read(fields, entry, remarks);
    }
  }

  SortedMap<String, Source> byId() {
    return byId;
  }

  private void read(Fields fields, Entry entry, Remarks remarks) {
    Scalar id = entry.key();
    Source earlier = byId.put(id.text(), unknown(id.text(), id.span()));
    if (!Vocabulary.isName(id.text())) {
      remarks.add(KeyFindings.name(id.span(), id.text(), "a source"));
    }
    Optional<Fields> block = fields.blockOf(entry, SourcesVocabulary.SOURCE_ENTRY_KEYS);
    if (block.isPresent()) {
      Source source = source(id, block.get(), remarks);
      byId.put(id.text(), source);
      if (earlier != null && isAnother(source, earlier)) {
        remarks.add(ReferenceFindings.sourceTakesOver(source, earlier));
      }
    }
  }

  /**
   * Whether a source of the folder is not the one of that name which comes along: another work, or
   * the same one better trusted. To trust it less is no mistake, and an act that ends is written
   * anew on purpose.
   */
  private static boolean isAnother(Source own, Source along) {
    return BundledPath.is(along.declared().file().path())
        && !BundledPath.is(own.declared().file().path())
        && along.ending().isEmpty()
        && (!own.cite().equals(along.cite())
            || own.reliability().compareTo(along.reliability()) < 0);
  }

  private static Source source(Scalar id, Fields block, Remarks remarks) {
    Optional<Reliability> standing = block.oneOf(SourcesVocabulary.STANDING, "a standing");
    Optional<Scalar> read = block.text(SourcesVocabulary.READ);
    if (read.isPresent()) {
      new FigureReader(remarks).day(read.get());
    }
    return new Source(
        id.text(),
        standing.orElse(Reliability.INVENTED),
        block.textOr(SourcesVocabulary.CITE, ""),
        block.string(SourcesVocabulary.ADDRESS),
        read.isPresent() ? Optional.of(read.get().text()) : Optional.empty(),
        block.string(SourcesVocabulary.LICENCE),
        ending(block, remarks),
        id.span());
  }

  private static Optional<Ending> ending(Fields block, Remarks remarks) {
    Optional<Scalar> ends = block.text(SourcesVocabulary.ENDS);
    Optional<LocalDate> day = day(ends, remarks);
    Optional<LocalDate> lookedUp = day(block.text(SourcesVocabulary.END_LOOKED_UP), remarks);
    return day.isEmpty() || ends.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Ending(
                day.get(), ends.get().span(), lookedUp, block.string(SourcesVocabulary.END_FOUND)));
  }

  private static Optional<LocalDate> day(Optional<Scalar> written, Remarks remarks) {
    return written.isPresent() ? new FigureReader(remarks).day(written.get()) : Optional.empty();
  }

  /** The source of a block; one that is missing or unknown is a finding, and stands in as such. */
  Source of(Fields block) {
    return of(block, Vocabulary.SOURCE);
  }

  /**
   * @param key that names the source
   */
  Source of(Fields block, Key<Text> key) {
    Optional<Scalar> id = block.text(key);
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
        id,
        Reliability.INVENTED,
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        place);
  }
}
