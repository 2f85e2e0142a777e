package dev.pellucid.engine.docs;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A fenced block of a page of the documentation.
 *
 * @param line of its opening fence, counted from 1
 * @param kind the first word behind the fence, which also colours it
 * @param settings what else stands there: {@code file=pellucid.yaml}, {@code part}
 * @param text what is shown, each line with its end
 */
record DocBlock(int line, String kind, Map<String, String> settings, String text) {
  private static final String NOT_RUN = "not-run:";

  DocBlock {
    settings = Map.copyOf(settings);
  }

  static DocBlock of(int line, String info, String text) {
    int reason = info.indexOf(NOT_RUN);
    String words = reason < 0 ? info : info.substring(0, reason);
    List<String> parts = List.of(words.strip().split("\\s+", -1));
    Map<String, String> settings = new TreeMap<>();
    for (String part : parts.subList(1, parts.size())) {
      int equals = part.indexOf('=');
      settings.put(
          equals < 0 ? part : part.substring(0, equals),
          equals < 0 ? "" : part.substring(equals + 1));
    }
    if (reason >= 0) {
      settings.put(NOT_RUN, info.substring(reason + NOT_RUN.length()).strip());
    }
    return new DocBlock(line, parts.get(0), settings, text);
  }

  Optional<String> setting(String key) {
    return Optional.ofNullable(settings.get(key));
  }

  boolean says(String key) {
    return settings.containsKey(key);
  }

  /** The words behind a setting, parted by commas. */
  List<String> list(String key) {
    return setting(key).map(all -> Arrays.asList(all.split(",", -1))).orElse(List.of());
  }

  /** Why nothing is made of it; empty where something is. */
  Optional<String> notRun() {
    return setting(NOT_RUN);
  }

  DocBlock withText(String other) {
    return new DocBlock(line, kind, settings, other);
  }

  List<String> lines() {
    return text.lines().toList();
  }
}
