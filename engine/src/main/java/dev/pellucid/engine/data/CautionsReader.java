package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code practice/cautions.yaml}: sentences for the batch sheet. */
final class CautionsReader {
  static final String FILE = "practice/cautions.yaml";

  private final List<String> inspection;
  private final Map<String, List<String>> byWord = new LinkedHashMap<>();

  CautionsReader(Optional<DataFile> file, Remarks remarks) {
    Optional<Fields> fields = DataFile.fields(file, PracticeVocabulary.CAUTIONS_KEYS, remarks);
    inspection = sentences(fields, PracticeVocabulary.INSPECTION);
    for (Key<ListOf<Text>> key : PracticeVocabulary.CAUTIONS) {
      List<String> sentences = sentences(fields, key);
      if (!sentences.isEmpty()) {
        byWord.put(key.name(), sentences);
      }
    }
  }

  private static List<String> sentences(Optional<Fields> fields, Key<ListOf<Text>> key) {
    return fields.isPresent() ? fields.get().strings(key) : List.of();
  }

  List<String> inspection() {
    return inspection;
  }

  /** By step word or trait word. */
  Map<String, List<String>> cautions() {
    return byWord;
  }
}
