package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Code;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Of what kind each rule is, and how grave its findings most often are, from the list {@code
 * kinds.txt} beside the schemas of reports: a line for each code.
 */
final class RuleKinds {
  private static final String LIST = "/dev/pellucid/outcome/kinds.txt";
  private static final Map<String, Kind> KINDS = read();

  private RuleKinds() {}

  /**
   * The kind of a rule.
   *
   * @param level as SARIF calls it: error, warning or note
   * @param tag one word
   */
  record Kind(String level, String tag) {}

  /** Of a rule that is in the list. */
  static Optional<Kind> of(Code code) {
    return Optional.ofNullable(KINDS.get(code.text()));
  }

  private static Map<String, Kind> read() {
    Map<String, Kind> kinds = new HashMap<>();
    try (InputStream list = RuleKinds.class.getResourceAsStream(LIST)) {
      if (list == null) {
        throw new IllegalStateException("no list " + LIST);
      }
      String text = new String(list.readAllBytes(), StandardCharsets.UTF_8);
      for (String line : text.split("\n", -1)) {
        String[] words = line.trim().split(" +", -1);
        if (words.length == 3) {
          kinds.put(words[0], new Kind(words[1], words[2]));
        }
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return Map.copyOf(kinds);
  }
}
