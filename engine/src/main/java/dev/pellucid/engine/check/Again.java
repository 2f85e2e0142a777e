package dev.pellucid.engine.check;

import dev.pellucid.text.TextEdit;
import java.util.List;
import java.util.Optional;

/** The same recipe with its text changed: read, computed and judged as if it stood there so. */
public interface Again {
  /** Where nothing is tried. */
  Again NONE =
      new Again() {
        @Override
        public Optional<RuleContext> with(List<TextEdit> edits) {
          return Optional.empty();
        }

        @Override
        public Optional<RuleContext> withOverage(String name, String extra, String purpose) {
          return Optional.empty();
        }
      };

  /**
   * Empty where the text then has an error of its own. What comes of it tries nothing again.
   *
   * @param edits that touch no place twice
   */
  Optional<RuleContext> with(List<TextEdit> edits);

  /**
   * With a line of overage by this name, in place of one that stands there by this name.
   *
   * @param extra as it is written: {@code 12 %}
   */
  Optional<RuleContext> withOverage(String name, String extra, String purpose);
}
