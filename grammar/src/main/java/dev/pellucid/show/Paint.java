package dev.pellucid.show;

import dev.pellucid.finding.Severity;

/**
 * How what stands out in a printed finding is made to: by colour on a screen, not at all in a file.
 */
public interface Paint {
  /** Leaves words as they are. */
  Paint NONE =
      new Paint() {
        @Override
        public String place(String words) {
          return words;
        }

        @Override
        public String grave(Severity severity, String words) {
          return words;
        }
      };

  /** Where it is: {@code catfish/CG-36.recipe:13:3}. */
  String place(String words);

  /** How grave it is, and what is marked by it. */
  String grave(Severity severity, String words);
}
