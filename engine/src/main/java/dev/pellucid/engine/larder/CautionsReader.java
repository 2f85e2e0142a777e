package dev.pellucid.engine.larder;

import dev.pellucid.engine.yaml.Yaml.Scalar;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** {@code practice/cautions.yaml}. */
final class CautionsReader {
  static final String INSPECTION = "inspection";

  private CautionsReader() {}

  /** By step word or trait word, and by {@link #INSPECTION}. */
  static Map<String, List<String>> read(Fields file) {
    Map<String, List<String>> cautions = new HashMap<>();
    for (String word : file.keys().words()) {
      if (file.has(word)) {
        cautions.put(word, file.texts(word).stream().map(Scalar::text).toList());
      }
    }
    return cautions;
  }
}
