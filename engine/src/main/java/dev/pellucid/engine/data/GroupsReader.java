package dev.pellucid.engine.data;

import dev.pellucid.engine.data.FeedTables.Group;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** {@code groups.yaml}: the groups of ingredients. */
final class GroupsReader {
  static final String FILE = "groups.yaml";

  private final Remarks remarks;

  GroupsReader(Remarks remarks) {
    this.remarks = remarks;
  }

  SortedMap<String, Group> read(Optional<DataFile> file) {
    SortedMap<String, Group> groups = new TreeMap<>();
    Optional<Fields> fields = DataFile.fields(file, GroupsVocabulary.GROUPS_KEYS, remarks);
    if (fields.isPresent()) {
      for (Entry entry : fields.get().others()) {
        group(fields.get(), entry, groups);
      }
    }
    return groups;
  }

  private void group(Fields fields, Entry entry, SortedMap<String, Group> groups) {
    Scalar name = entry.key();
    if (!Vocabulary.isName(name.text())) {
      remarks.add(KeyFindings.name(name.span(), name.text(), "a group"));
      return;
    }
    Optional<Scalar> title = fields.textOf(entry);
    groups.put(
        name.text(),
        new Group(name.text(), title.isPresent() ? title.get().text() : "", name.span()));
  }
}
