package dev.pellucid.parse;

import dev.pellucid.syntax.Section;
import dev.pellucid.syntax.SectionWord;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.ParserRuleContext;
import org.jspecify.annotations.Nullable;

/** A section while its lines are read. */
abstract class OpenSection<L> implements Part {
  private final LineReader reader;
  private final SectionWord word;
  private final Span heading;
  private final List<L> lines = new ArrayList<>(32);
  private boolean whole = true;

  OpenSection(LineReader reader, SectionWord word, Span heading) {
    this.reader = reader;
    this.word = word;
    this.heading = heading;
  }

  /** The record of a line as its rule reads it; null where a finding has said why there is none. */
  abstract @Nullable L record(ParserRuleContext line);

  @Override
  public void read(Line line) {
    ParserRuleContext fitting = reader.read(word, line);
    L record = fitting == null ? null : record(fitting);
    if (record != null && reader.isSound()) {
      lines.add(record);
    } else {
      whole = false;
    }
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

  Span heading() {
    return heading;
  }

  Section<L> closed() {
    return new Section<>(heading, lines, whole);
  }
}
