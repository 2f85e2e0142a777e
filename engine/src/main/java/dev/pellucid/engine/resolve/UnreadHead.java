package dev.pellucid.engine.resolve;

import dev.pellucid.syntax.FileKind;
import dev.pellucid.text.SourceFile;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Pattern;

/** Head lines that are written and could not be read; a finding has spoken of each. */
public final class UnreadHead {
  private static final Set<String> WORDS = words();

  private static Set<String> words() {
    Set<String> words = new HashSet<>();
    for (FileKind kind : FileKind.values()) {
      words.addAll(kind.headWords());
    }
    return Set.copyOf(words);
  }

  private UnreadHead() {}

  /** Whether a line begins with the word, for a caller that was given none. */
  static boolean has(SourceFile source, String word) {
    return Pattern.compile("(?m)^[ \\t]+" + word + "[ \\t]").matcher(source.text()).find();
  }

  /** Whether there are more lines of the word than were read, or one that may stand for it. */
  static boolean mayHave(SourceFile source, String word, int read) {
    long written =
        Pattern.compile("(?m)^[ \\t]+" + word + "[ \\t]").matcher(source.text()).results().count();
    return written > read || isOpen(source);
  }

  /**
   * The same, or whether some line of the head begins with a word that none begins with: a slip
   * that may stand for it.
   */
  public static boolean mayHave(SourceFile source, String word) {
    return has(source, word) || isOpen(source);
  }

  private static boolean isOpen(SourceFile source) {
    boolean inHead = false;
    for (String line : source.text().lines().toList()) {
      String stripped = line.strip();
      if (stripped.isEmpty() || stripped.startsWith("#")) {
        continue;
      }
      if (!Character.isWhitespace(line.charAt(0))) {
        if (inHead) {
          break;
        }
        inHead = true;
        continue;
      }
      if (inHead && !WORDS.contains(stripped.split("\\s", 2)[0])) {
        return true;
      }
    }
    return false;
  }
}
