package dev.pellucid.engine.data;

import dev.pellucid.engine.yaml.Yaml;
import dev.pellucid.text.RecordName;
import java.util.List;
import java.util.Optional;

/**
 * Batch records and files of lots that lie where neither is read: among prices, plans or
 * ingredients, or in no place of ours. There they would be taken for a price list with many slips,
 * and whoever traces a lot would miss them.
 */
final class Astray {
  private static final String LOTS_KEY = Places.LOTS;

  private Astray() {}

  /** Where it belongs; empty where it is in its place, or is neither. */
  static Optional<String> belongs(DataFile file) {
    Optional<DataFileKind> kind = DataFileKind.of(file.relative());
    boolean record =
        kind.filter(it -> it == DataFileKind.BATCHES).isEmpty() && isRecord(file.relative());
    boolean lots = kind.filter(it -> it == DataFileKind.LOTS).isEmpty() && has(file, LOTS_KEY);
    boolean placed = kind.filter(it -> !it.isFolder() || isOf(file, it)).isPresent();
    if (placed || !(record || lots)) {
      return Optional.empty();
    }
    return Optional.of((lots ? Places.LOTS : Places.BATCHES) + "/");
  }

  private static boolean isRecord(String path) {
    return RecordName.of(path.substring(path.lastIndexOf('/') + 1)).isPresent();
  }

  /** Whether anything in it is what such a file tells. */
  private static boolean isOf(DataFile file, DataFileKind kind) {
    return kind.keys().names().stream().anyMatch(key -> has(file, key.name()));
  }

  private static boolean has(DataFile file, String key) {
    return entries(file).stream().anyMatch(entry -> entry.key().text().equals(key));
  }

  private static List<Yaml.Entry> entries(DataFile file) {
    return file.read().root().orElse(null) instanceof Yaml.Mapping root
        ? root.entries()
        : List.of();
  }
}
