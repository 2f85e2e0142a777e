package dev.pellucid.syntax;

import dev.pellucid.text.Span;
import java.util.List;

/**
 * A section and its lines.
 *
 * @param heading the section word, for what concerns the section as a whole
 * @param whole whether every line of the section could be read; when not, what is here is not all
 */
public record Section<L>(Span heading, List<L> lines, boolean whole) {
  public Section {
    lines = List.copyOf(lines);
  }
}
