package dev.pellucid.parse;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.parse.generated.FeedLines.ProcessLineContext;
import dev.pellucid.syntax.ProcessLine;
import dev.pellucid.syntax.ProcessLine.Target;
import dev.pellucid.syntax.Property;
import dev.pellucid.syntax.Range;
import dev.pellucid.syntax.Step;
import dev.pellucid.syntax.Word;
import dev.pellucid.text.Choices;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The lines of process: {@code step [ingredient] property target}. The grammar reads a row of words
 * and a figure; which word is what follows from their number, so that the vocabulary of steps and
 * properties has one home.
 */
final class ProcessLines {
  static final Code STEP_UNKNOWN = new Code("step-unknown");
  static final Code PROPERTY_UNKNOWN = new Code("property-unknown");
  static final Code PROPERTY_FOREIGN = new Code("property-foreign");
  static final Code FIGURE_MISSING = new Code("figure-missing");
  private static final List<String> MANNERS = List.of("vacuum", "drum", "hand");

  private final Pieces pieces;

  ProcessLines(Pieces pieces) {
    this.pieces = pieces;
  }

  Optional<ProcessLine> process(ProcessLineContext context) {
    Word stepWord = pieces.word(context.first);
    Optional<Step> step = step(stepWord);
    if (step.isEmpty()) {
      return Optional.empty();
    }
    Row row = row(context, step.get());
    Optional<Property> property = property(step.get(), row.property());
    if (property.isEmpty()) {
      return Optional.empty();
    }
    Optional<Target> target = target(context, property.get(), row);
    Optional<Range> accept = accept(context, property.get());
    return target.map(
        aim ->
            new ProcessLine(
                step.get(),
                stepWord,
                row.ingredient(),
                property.get(),
                row.property(),
                aim,
                accept,
                pieces.span(context)));
  }

  private Optional<Step> step(Word word) {
    Optional<Step> step = Step.of(word.text());
    if (step.isEmpty()) {
      List<String> all = Arrays.stream(Step.values()).map(Step::word).toList();
      pieces.say(
          near(
                  Finding.error(
                      STEP_UNKNOWN, word.span(), word.text() + " is not a step of a process"),
                  word,
                  all)
              .helping("the steps are " + Choices.all(all)));
    }
    return step;
  }

  /** The words after the step: a last one that is no property is the manner of {@code method}. */
  private Row row(ProcessLineContext context, Step step) {
    Word second = pieces.word(context.second);
    Optional<Word> third = Optional.ofNullable(context.third).map(pieces::word);
    Optional<Word> fourth = Optional.ofNullable(context.fourth).map(pieces::word);
    boolean figure = context.figure != null || context.between != null;
    boolean manner = !figure && (fourth.isPresent() || takesWord(step, second));
    if (third.isEmpty()) {
      return new Row(Optional.empty(), second, Optional.empty());
    }
    if (manner && fourth.isEmpty()) {
      return new Row(Optional.empty(), second, third);
    }
    return new Row(Optional.of(second), third.get(), fourth);
  }

  private static boolean takesWord(Step step, Word word) {
    return Property.of(word.text()).filter(p -> p.takesWord() && step.has(p)).isPresent();
  }

  private Optional<Property> property(Step step, Word word) {
    Optional<Property> property = Property.of(word.text());
    if (property.isPresent() && step.has(property.get())) {
      return property;
    }
    List<String> own = step.properties().stream().map(Property::word).toList();
    if (property.isEmpty()) {
      pieces.say(
          near(
                  Finding.error(
                      PROPERTY_UNKNOWN,
                      word.span(),
                      word.text() + " is not a setting of " + step.word()),
                  word,
                  own)
              .helping(step.word() + " has " + Choices.all(own)));
    } else {
      pieces.say(
          Finding.error(
                  PROPERTY_FOREIGN,
                  word.span(),
                  word.text()
                      + " is not a setting of "
                      + step.word()
                      + ", but of "
                      + owners(property.get()))
              .helping(step.word() + " has " + Choices.all(own)));
    }
    return Optional.empty();
  }

  private static String owners(Property property) {
    return Choices.of(
        Arrays.stream(Step.values()).filter(s -> s.has(property)).map(Step::word).toList());
  }

  private Optional<Target> target(ProcessLineContext context, Property property, Row row) {
    if (property.takesWord()) {
      return manner(property, row);
    }
    Expected expected = expected(property);
    if (context.figure != null) {
      return Optional.of(new Target.Exactly(pieces.amount(context.figure, expected)));
    }
    if (context.between != null) {
      return Optional.of(new Target.Between(pieces.range(context.between, expected)));
    }
    pieces.say(
        Finding.error(FIGURE_MISSING, row.property().span(), property.word() + " has no figure")
            .helping("write " + property.kind().phrase() + ", for example: " + expected.example()));
    return Optional.empty();
  }

  private Optional<Target> manner(Property property, Row row) {
    Optional<Word> manner = row.manner().filter(word -> MANNERS.contains(word.text()));
    if (manner.isEmpty()) {
      Word shown = row.manner().orElse(row.property());
      pieces.say(
          row.manner().isPresent()
              ? Complaints.unknownWord("the method of coating", shown, MANNERS)
              : Finding.error(FIGURE_MISSING, shown.span(), property.word() + " does not say which")
                  .helping("write " + property.word() + " with " + Choices.of(MANNERS)));
    }
    return manner.map(Target.Manner::new);
  }

  private Optional<Range> accept(ProcessLineContext context, Property property) {
    return context.accept == null
        ? Optional.empty()
        : Optional.of(pieces.range(context.accept, expected(property)));
  }

  /** What measures a property, with an example. */
  static Expected expected(Property property) {
    return Expected.of(property.word() + " " + example(property), property.extent());
  }

  private static String example(Property property) {
    return switch (property) {
      case SCREEN -> "1.0 mm";
      case TIME -> "12 min";
      case TEMPERATURE, START -> "55 °C";
      case ON_MIX, TO_MOISTURE -> "18 %";
      case MOISTURE -> "9 %";
      case DIE, LENGTH -> "4.0 mm";
      case METHOD -> "vacuum";
      case BAG -> "25 kg";
      case SHELF_LIFE -> "60 d";
    };
  }

  private static Finding near(Finding finding, Word word, List<String> choices) {
    List<String> near = NearNames.of(word.text(), choices);
    if (near.isEmpty()) {
      return finding;
    }
    Finding helped = finding.helping(Meant.question(Choices.of(near)));
    return near.size() == 1 ? helped.mending(word.span(), near.get(0)) : helped;
  }

  private record Row(Optional<Word> ingredient, Word property, Optional<Word> manner) {}
}
