package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.text.NearNames;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * YAML files in no place of ours that are those of other programs, as a folder of feeds may hold
 * them too: neither their place nor any key in them is nearly one of ours.
 */
final class OtherPrograms {
  /** Words that programs of all kinds have for keys. */
  private static final Set<String> ANYBODYS =
      Set.of("name", "title", "kind", "from", "to", "of", "by", "format", "label", "size", "unit");

  private static final Pattern KEY =
      Pattern.compile("(?m)^[\\s-]*[\"']?([A-Za-z][A-Za-z0-9_-]*)[\"']?\\s*:(\\s|$)");

  private OtherPrograms() {}

  /** Whether a file is one of them. */
  static boolean own(DataFile file) {
    return !file.closed() && !isNearOurs(file.relative()) && !saysOurs(file.source().text());
  }

  private static boolean isNearOurs(String path) {
    List<String> parts = List.of(path.split("/", -1));
    Set<String> folders = new HashSet<>();
    Set<String> files = new HashSet<>();
    for (DataFileKind kind : DataFileKind.values()) {
      String place = kind.place();
      int slash = place.indexOf('/');
      if (slash >= 0) {
        folders.add(place.substring(0, slash));
      }
      if (!kind.isFolder()) {
        files.add(place.substring(slash + 1));
      }
    }
    String file = parts.get(parts.size() - 1);
    return files.contains(file)
        || (parts.size() == 1 && !NearNames.of(file, files).isEmpty())
        || isNear(parts.subList(0, parts.size() - 1), folders);
  }

  private static boolean isNear(Collection<String> folders, Set<String> ours) {
    return folders.stream().anyMatch(folder -> !NearNames.of(folder, ours).isEmpty());
  }

  private static boolean saysOurs(String text) {
    Set<String> ours = new HashSet<>();
    Arrays.stream(DataFileKind.values()).forEach(kind -> collect(kind.keys(), ours));
    ours.removeAll(ANYBODYS);
    Matcher keys = KEY.matcher(text);
    while (keys.find()) {
      if (ours.contains(keys.group(1))) {
        return true;
      }
    }
    return false;
  }

  private static void collect(Keys keys, Set<String> words) {
    for (Key<?> key : keys.names()) {
      words.add(key.name());
      collect(key.holds(), words);
    }
    keys.others().ifPresent(others -> collect(others.holds(), words));
  }

  private static void collect(Keys.Holds holds, Set<String> words) {
    Runnable within =
        holds.byKind(
            text -> () -> {},
            word -> () -> {},
            list -> () -> collect(list.item(), words),
            block -> () -> collect(block.keys(), words));
    within.run();
  }
}
