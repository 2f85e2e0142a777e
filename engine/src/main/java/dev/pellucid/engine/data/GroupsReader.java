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
    file.flatMap(it -> it.fields(GroupsVocabulary.GROUPS_KEYS, remarks))
        .ifPresent(fields -> fields.others().forEach(entry -> group(fields, entry, groups)));
    return groups;
  }

  private void group(Fields fields, Entry entry, SortedMap<String, Group> groups) {
    Scalar name = entry.key();
    if (!name.text().matches(Vocabulary.NAME)) {
      remarks.add(KeyFindings.name(name.span(), name.text(), "a group"));
      return;
    }
    String title = fields.textOf(entry).map(Scalar::text).orElse("");
    groups.put(name.text(), new Group(name.text(), title, name.span()));
  }
}
