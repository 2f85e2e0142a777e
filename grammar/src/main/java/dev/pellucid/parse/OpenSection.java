package dev.pellucid.parse;

import dev.pellucid.slip.Place;
import dev.pellucid.syntax.Section;
import dev.pellucid.syntax.SectionWord;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A section while its lines are read. */
final class OpenSection<L> {
  private final SectionWord word;
  private final Span heading;
  private final Function<Line, Optional<L>> reader;
  private final List<L> lines = new ArrayList<>(16);
  private boolean whole = true;

  /**
   * @param reader a line to its record; empty when a finding has said why not
   */
  OpenSection(SectionWord word, Span heading, Function<Line, Optional<L>> reader) {
    this.word = word;
    this.heading = heading;
    this.reader = reader;
  }

  void read(Line line) {
    Optional<L> read = reader.apply(line);
    read.ifPresent(lines::add);
    whole &= read.isPresent();
  }

  /** What is read is not all that was meant. */
  void lacksSomething() {
    whole = false;
  }

  boolean isBare() {
    return whole && lines.isEmpty();
  }

  SectionWord word() {
    return word;
  }

  Place place() {
    return Place.of(word);
  }

  Span heading() {
    return heading;
  }

  Section<L> closed() {
    return new Section<>(heading, lines, whole);
  }
}
