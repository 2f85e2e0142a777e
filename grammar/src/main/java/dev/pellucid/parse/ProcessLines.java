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
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

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
  private static final Map<Property, Expected> EXPECTED = expected();

  private final Pieces pieces;

  ProcessLines(Pieces pieces) {
    this.pieces = pieces;
  }

  /** The record of a line; null where a finding says what is not known of it. */
  @Nullable ProcessLine process(ProcessLineContext context) {
    Word stepWord = pieces.word(context.first);
    Optional<Step> step = Step.of(stepWord.text());
    if (step.isEmpty()) {
      sayStepIsUnknown(stepWord);
      return null;
    }
    Row row = row(context, step.get());
    Optional<Property> property = Property.of(row.property().text());
    if (property.isEmpty() || !step.get().has(property.get())) {
      sayPropertyIsNotOf(step.get(), property, row.property());
      return null;
    }
    Target target = target(context, property.get(), row);
    Optional<Range> accept =
        context.accept == null
            ? Optional.empty()
            : Optional.of(pieces.range(context.accept, expected(property.get())));
    if (target == null) {
      return null;
    }
    return new ProcessLine(
        step.get(),
        stepWord,
        Optional.ofNullable(row.ingredient()),
        property.get(),
        row.property(),
        target,
        accept,
        pieces.span(context));
  }

  private void sayStepIsUnknown(Word word) {
    List<String> all = Arrays.stream(Step.values()).map(Step::word).toList();
    pieces.say(
        near(
                Finding.error(
                    STEP_UNKNOWN, word.span(), word.text() + " is not a step of a process"),
                word,
                all)
            .helping("the steps are " + Choices.all(all)));
  }

  /** The words after the step: a last one that is no property is the manner of {@code method}. */
  private Row row(ProcessLineContext context, Step step) {
    Word second = pieces.word(context.second);
    if (context.third == null) {
      return new Row(null, second, null);
    }
    Word third = pieces.word(context.third);
    boolean figure = context.figure != null || context.between != null;
    if (context.fourth != null) {
      return new Row(second, third, pieces.word(context.fourth));
    }
    return !figure && takesWord(step, second)
        ? new Row(null, second, third)
        : new Row(second, third, null);
  }

  private static boolean takesWord(Step step, Word word) {
    Optional<Property> property = Property.of(word.text());
    return property.isPresent() && property.get().takesWord() && step.has(property.get());
  }

  private void sayPropertyIsNotOf(Step step, Optional<Property> property, Word word) {
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
  }

  private static String owners(Property property) {
    return Choices.of(
        Arrays.stream(Step.values()).filter(s -> s.has(property)).map(Step::word).toList());
  }

  private @Nullable Target target(ProcessLineContext context, Property property, Row row) {
    if (property.takesWord()) {
      return manner(property, row);
    }
    Expected expected = expected(property);
    if (context.figure != null) {
      return new Target.Exactly(pieces.amount(context.figure, expected));
    }
    if (context.between != null) {
      return new Target.Between(pieces.range(context.between, expected));
    }
    pieces.say(
        Finding.error(FIGURE_MISSING, row.property().span(), property.word() + " has no figure")
            .helping("write " + property.kind().phrase() + ", for example: " + expected.example()));
    return null;
  }

  private @Nullable Target manner(Property property, Row row) {
    Word manner = row.manner();
    if (manner == null) {
      Word shown = row.property();
      pieces.say(
          Finding.error(FIGURE_MISSING, shown.span(), property.word() + " does not say which")
              .helping("write " + property.word() + " with " + Choices.of(MANNERS)));
      return null;
    }
    if (!MANNERS.contains(manner.text())) {
      pieces.say(Complaints.unknownWord("the method of coating", manner, MANNERS));
      return null;
    }
    return new Target.Manner(manner);
  }

  /** What measures a property, with an example. */
  static Expected expected(Property property) {
    return Objects.requireNonNull(EXPECTED.get(property));
  }

  private static Map<Property, Expected> expected() {
    Map<Property, Expected> expected = new EnumMap<>(Property.class);
    for (Property property : Property.values()) {
      String example = property.word() + " " + example(property);
      expected.put(property, Expected.of(example, property.extent()));
    }
    return Collections.unmodifiableMap(expected);
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
    return near.size() == 1 ? helped.fixing(word.span(), near.get(0)) : helped;
  }

  private record Row(@Nullable Word ingredient, Word property, @Nullable Word manner) {}
}
