package dev.pellucid.engine.resolve;

import dev.pellucid.text.SourceFile;
import java.util.regex.Pattern;

/** Head lines that are written and could not be read; a finding has spoken of each. */
final class UnreadHead {
  private UnreadHead() {}

  /** Whether a line begins with the word, for a caller that was given none. */
  static boolean has(SourceFile source, String word) {
    return Pattern.compile("(?m)^[ \\t]+" + word + "[ \\t]").matcher(source.text()).find();
  }
}
