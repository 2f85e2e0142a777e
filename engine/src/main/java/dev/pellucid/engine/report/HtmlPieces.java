package dev.pellucid.engine.report;

import static j2html.TagCreator.br;
import static j2html.TagCreator.dd;
import static j2html.TagCreator.div;
import static j2html.TagCreator.dt;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.List;
import java.util.stream.Stream;

/** What sheets and labels have in common in HTML. */
final class HtmlPieces {
  private HtmlPieces() {}

  /** Says that a paper is not to be used, and why. */
  static DomContent stamp(String words, List<String> because) {
    return div(strong(words), br(), text(String.join("; ", because))).withClass("stamp");
  }

  /** One thing told; an empty value is room to write. */
  static Stream<DomContent> fact(String name, String value) {
    return Stream.of(dt(name), dd(value).withCondClass(value.isEmpty(), "write"));
  }
}
