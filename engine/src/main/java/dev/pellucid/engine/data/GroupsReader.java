package dev.pellucid.engine.data;

import dev.pellucid.engine.data.FeedTables.Group;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import java.util.List;
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

  /**
   * @param files of which a later one counts more
   */
  SortedMap<String, Group> read(List<DataFile> files) {
    SortedMap<String, Group> groups = new TreeMap<>();
    for (DataFile file : files) {
      file.fields(GroupsVocabulary.GROUPS_KEYS, remarks).ifPresent(all -> groups(all, groups));
    }
    return groups;
  }

  private void groups(Fields fields, SortedMap<String, Group> groups) {
    for (Entry entry : fields.others()) {
      group(fields, entry, groups);
    }
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
