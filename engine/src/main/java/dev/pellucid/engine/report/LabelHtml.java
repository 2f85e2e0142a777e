package dev.pellucid.engine.report;

import static j2html.TagCreator.b;
import static j2html.TagCreator.body;
import static j2html.TagCreator.dl;
import static j2html.TagCreator.footer;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.main;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.text;

import dev.pellucid.engine.html.HtmlFile;
import dev.pellucid.engine.html.Inline;
import dev.pellucid.engine.label.BagLabel;
import dev.pellucid.engine.label.BagLabel.Fact;
import dev.pellucid.engine.label.BagLabel.Statement;
import j2html.TagCreator;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A bag label as one HTML file in black and white that loads nothing. It prints on whatever paper
 * is chosen, A6 to A4: letters grow with the page, within what can be read and what fits. What only
 * the printer of the label must know stands below the frame, to be cut off.
 */
public final class LabelHtml {
  static final String DRAFT = "DRAFT, NOT TO BE PUT ON A BAG";
  static final String ASIDE = "Not part of the label:";

  private static final int SHORT = 36;

  private static final String STYLE = Inline.text("report/label.css");

  private LabelHtml() {}

  /** The whole file, to be written as UTF-8. */
  public static String of(BagLabel label) {
    return HtmlFile.of(
        "Label " + label.code(),
        STYLE,
        body(main().with(framed(label)), footer(aside(label.aside()))));
  }

  private static List<DomContent> framed(BagLabel label) {
    List<DomContent> framed = new ArrayList<>();
    framed.add(h1(label.title()));
    framed.add(p(label.code()).withClass("code"));
    framed.add(p(label.what()).withClass("what"));
    if (!label.draftBecause().isEmpty()) {
      framed.add(HtmlPieces.stamp(DRAFT, label.draftBecause()));
    }
    label.statements().forEach(statement -> framed.add(part(statement)));
    framed.add(section(facts(label.facts())));
    return framed;
  }

  private static DomContent aside(List<String> sentences) {
    return p(strong(ASIDE), text(" " + String.join(" ", sentences)));
  }

  private static DomContent part(Statement statement) {
    return section(h2(statement.heading())).with(statement.accept(new Content()));
  }

  /** What stands under a heading. */
  private static final class Content implements Statement.Visitor<Stream<DomContent>> {
    @Override
    public Stream<DomContent> figures(Statement.Figures figures) {
      return Stream.of(facts(figures.figures()));
    }

    @Override
    public Stream<DomContent> names(Statement.Names names) {
      return Stream.of(p(String.join("; ", names.names()) + "."));
    }

    @Override
    public Stream<DomContent> groups(Statement.Groups groups) {
      return groups.groups().stream()
          .map(group -> p(b(group.name() + ": "), text(String.join("; ", group.names()) + ".")));
    }

    @Override
    public Stream<DomContent> sentences(Statement.Sentences sentences) {
      return sentences.sentences().stream().map(TagCreator::p);
    }
  }

  /** Short ones stand two on a row. */
  private static DomContent facts(List<Fact> facts) {
    boolean isShort = facts.stream().allMatch(f -> (f.name() + f.value()).length() <= SHORT);
    return dl().withCondClass(isShort, "pairs")
        .with(facts.stream().flatMap(fact -> HtmlPieces.fact(fact.name(), fact.value())));
  }
}
