package dev.pellucid.finding;

import dev.pellucid.text.Sentence;
import dev.pellucid.text.Span;

/** A second place that explains a finding, with what is to be seen there: "limit written". */
public record Related(String text, Span span) {
  public Related {
    text = Sentence.of(text);
  }
}
