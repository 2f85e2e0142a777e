package dev.pellucid.engine.form;

import dev.pellucid.syntax.Amount;
import dev.pellucid.syntax.LimitLine;
import dev.pellucid.syntax.ProcessLine;
import dev.pellucid.syntax.Range;
import dev.pellucid.syntax.Section;
import dev.pellucid.syntax.ShareLine;
import dev.pellucid.text.ToBeGiven;
import java.util.List;
import java.util.Optional;

/** The text of a recipe or premix, line by line; whoever takes it lays it out. */
final class FeedText {
  private final StringBuilder text = new StringBuilder();

  FeedText remark(String words) {
    text.append("# ").append(words).append('\n');
    return this;
  }

  /** A remark within a section. */
  FeedText note(String words) {
    text.append("  ");
    return remark(words);
  }

  FeedText opening(String kind, String code, String title) {
    text.append(kind).append(' ').append(code).append(" \"").append(title).append("\"\n");
    return this;
  }

  FeedText line(String... words) {
    text.append("  ").append(String.join("  ", words)).append('\n');
    return this;
  }

  FeedText section(String word) {
    text.append('\n').append(word).append('\n');
    return this;
  }

  /** A figure that a person is still to give. */
  static String wanted(String unit) {
    return ToBeGiven.MARK + " " + unit;
  }

  /** A range of which both ends are still to be given. */
  static String wantedRange(String unit) {
    return ToBeGiven.MARK + " to " + wanted(unit);
  }

  /** The same steps, each setting still to be given but for words, such as how oil is put on. */
  FeedText process(Optional<Section<ProcessLine>> process) {
    section("process");
    for (ProcessLine line : lines(process)) {
      String what = line.ingredient().map(one -> one.text() + " ").orElse("");
      line(
          line.stepAsWritten().text(),
          what + line.propertyAsWritten().text(),
          line.target()
                  .byKind(
                      exactly -> wanted(unit(exactly.amount())),
                      between -> wantedRange(unit(between.range())),
                      manner -> manner.word().text())
              + line.accept().map(band -> "  accept " + band.asWritten()).orElse(""));
    }
    return this;
  }

  /** The same limits, figures and all: what is not asked would be missed by nobody. */
  FeedText limits(List<LimitLine> lines) {
    for (LimitLine line : lines) {
      line(line.span().text().strip());
    }
    return this;
  }

  /** The same lines, each share still to be given but for that of the rest. */
  FeedText shares(List<ShareLine> lines) {
    for (ShareLine line : lines) {
      line(
          line.subject().text(),
          line.share().byKind(stated -> wanted(unit(stated.amount())), rest -> "rest")
              + line.within().map(within -> "  " + within.span().text()).orElse(""));
    }
    return this;
  }

  static <L> List<L> lines(Optional<Section<L>> section) {
    return section.map(Section::lines).orElse(List.of());
  }

  static String unit(Amount amount) {
    return amount.unitAsWritten().text();
  }

  private static String unit(Range range) {
    return range.unitAsWritten().text();
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
