package dev.pellucid.engine.goal;

import dev.pellucid.engine.folder.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What a folder takes of the data that come with the program, in words. */
final class DataAlong {
  /** So many files of its own are named; of more, how many there are. */
  private static final int NAMED = 5;

  private DataAlong() {}

  /** {@code groups, 61 ingredients, 5 species; from the folder: ...}; empty where nothing comes. */
  static String words(Texts texts) {
    Map<String, Integer> files = new TreeMap<>();
    for (String place : texts.comingAlong()) {
      int slash = place.indexOf('/');
      files.merge(slash < 0 ? stem(place) : place.substring(0, slash), 1, Integer::sum);
    }
    List<String> parts = new ArrayList<>();
    files.forEach((kind, count) -> parts.add(count == 1 ? kind : count + " " + kind));
    return files.isEmpty() ? "" : String.join(", ", parts) + own(texts.replaced());
  }

  private static String own(List<Texts.Replaced> instead) {
    if (instead.isEmpty()) {
      return "";
    }
    List<String> named = instead.stream().limit(NAMED).map(Texts.Replaced::own).toList();
    int left = instead.size() - named.size();
    return "; the folder has its own "
        + String.join(", ", named)
        + (left > 0 ? " and " + left + " more" : "");
  }

  private static String stem(String file) {
    return file.substring(0, file.lastIndexOf('.'));
  }
}
