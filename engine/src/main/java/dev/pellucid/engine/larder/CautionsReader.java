package dev.pellucid.engine.larder;

import dev.pellucid.engine.yaml.Yaml.Scalar;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code practice/cautions.yaml}: sentences for the batch sheet. */
final class CautionsReader {
  static final String FILE = "practice/cautions.yaml";
  static final String INSPECTION = "inspection";

  private final Map<String, List<String>> byWord = new LinkedHashMap<>();

  CautionsReader(Optional<DataFile> file, Remarks remarks) {
    Optional<Fields> fields = file.flatMap(it -> it.fields(Vocabulary.CAUTIONS, remarks));
    for (String word : Vocabulary.CAUTIONS.words()) {
      List<String> sentences =
          fields.map(it -> it.texts(word).stream().map(Scalar::text).toList()).orElse(List.of());
      if (!sentences.isEmpty()) {
        byWord.put(word, sentences);
      }
    }
  }

  List<String> inspection() {
    return byWord.getOrDefault(INSPECTION, List.of());
  }

  /** By step word or trait word. */
  Map<String, List<String>> cautions() {
    Map<String, List<String>> cautions = new LinkedHashMap<>(byWord);
    cautions.remove(INSPECTION);
    return cautions;
  }
}
