package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.yaml.Excerpt;
import dev.pellucid.engine.yaml.Yaml;
import dev.pellucid.engine.yaml.Yaml.Mapping;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.engine.yaml.Yaml.Sequence;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Choices;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.Collection;
import java.util.List;
import java.util.regex.Pattern;

/** What can be wrong with the keys of a data file and with the shape of what stands behind them. */
final class KeyFindings {
  static final Code UNKNOWN_KEY = new Code("data-unknown-key");
  static final Code MISSING_KEY = new Code("data-missing-key");
  static final Code EMPTY_VALUE = new Code("data-empty-value");
  static final Code SHAPE = new Code("data-shape");
  static final Code UNKNOWN_WORD = new Code("data-unknown-word");
  static final Code NAME = new Code("data-name");
  static final Code EMPTY_FILE = new Code("data-empty-file");
  static final Code TO_BE_GIVEN = new Code("data-to-be-given");

  /** What is left of a figure behind its decimal comma: {@code 5 t} of {@code 1,5 t}. */
  private static final Pattern AFTER_COMMA = Pattern.compile("[0-9]+( ?[^0-9 ]+)?");

  private static final String BEHIND = " \" with ";
  private static final String IN_BRACKETS = " []\" with, between the brackets, ";

  static final List<Code> CODES =
      List.of(
          UNKNOWN_KEY,
          MISSING_KEY,
          EMPTY_VALUE,
          SHAPE,
          UNKNOWN_WORD,
          NAME,
          EMPTY_FILE,
          TO_BE_GIVEN);

  private KeyFindings() {}

  static Finding unknownKey(Scalar key, Keys keys) {
    Finding finding =
        Finding.error(
            UNKNOWN_KEY, key.span(), keys.thing() + " has no key called " + shown(key.text()));
    if (key.text().equals("price") && keys.words().contains("contents")) {
      return finding.helping("prices stand in a file of prices/: the name, a colon, the price");
    }
    if (AFTER_COMMA.matcher(key.text()).matches()) {
      return finding.helping(
          "between braces a comma parts entries: write the decimals behind a point");
    }
    Finding helped = suggesting(finding, key, keys.words(), "its keys are ");
    return helped.helps().isEmpty()
        ? helped.helping(
            "take one of its " + keys.words().size() + " keys, which its schema lists for editors")
        : helped;
  }

  /** Of a key that is needed in this place only, with what it means there. */
  static Finding missingKey(Span place, Key<?> key, Keys keys, String meaning) {
    return missing(place, Keys.must(key.name(), key.holds(), meaning), keys);
  }

  static Finding missing(Span place, Key<?> key, Keys keys) {
    return Finding.error(MISSING_KEY, place, keys.thing() + " needs the key " + key.name())
        .helping(written(key));
  }

  private static String written(Key<?> key) {
    String behind =
        key.holds()
            .byKind(
                text -> BEHIND,
                words -> BEHIND,
                list ->
                    list.item()
                        .byKind(
                            text -> IN_BRACKETS,
                            words -> IN_BRACKETS,
                            inner -> IN_BRACKETS,
                            block -> "\" and below it, each begun with a dash, "),
                block -> "\" and below it, indented, ");
    return "add a line \"" + key.name() + ":" + behind + key.meaning();
  }

  /**
   * A mark in place of a value.
   *
   * @param named whether the key is the name of a thing, such as a nutrient
   */
  static Finding toBeGiven(Scalar value, String key, boolean named) {
    Finding finding =
        Finding.error(TO_BE_GIVEN, value.span(), key + " is still to be given")
            .helping("write it in place of " + value.text());
    return named
        ? finding.helping(
            "an analysis, the label of the bag or a table tells it; write none where there is none,"
                + " and leave the line out where nobody knows")
        : finding;
  }

  static Finding empty(Scalar key) {
    return Finding.error(EMPTY_VALUE, key.span(), shown(key.text()) + " has no value")
        .helping("write the value behind the colon, or leave the whole line out");
  }

  static Finding emptyItem(Span place) {
    return Finding.error(EMPTY_VALUE, place, "an item of the list has no value")
        .helping("write its value, or leave it out");
  }

  /** Where a list belongs. */
  static Finding noList(Span place, Yaml found, ListOf<?> wanted) {
    return Finding.error(SHAPE, place, "a list belongs here, not " + kindOf(found))
        .helping(
            wanted
                .item()
                .byKind(
                    text -> listOfTexts(found),
                    words -> listOfTexts(found),
                    list -> listOfTexts(found),
                    block -> listOfBlocks(block.keys())));
  }

  /** How a list of texts is written, with what was found where it is one. */
  private static String listOfTexts(Yaml found) {
    String items = found instanceof Scalar one ? shown(one.text()) : "one, two";
    return "write [" + items + "], or one item a line after a dash";
  }

  private static String listOfBlocks(Keys keys) {
    return "begin each entry with a dash, as in \"  - "
        + keys.words().get(0)
        + ": \", and write its other keys below";
  }

  static Finding shape(Span place, String wanted, Yaml found) {
    Finding finding = Finding.error(SHAPE, place, wanted + " belongs here, not " + kindOf(found));
    return found instanceof Sequence || wanted.startsWith("text")
        ? finding.helping("text with a colon or a bracket in it needs quotes")
        : finding.helping("write keys, each with a colon, a space and its value, indented below");
  }

  static Finding unknownWord(Scalar word, String what, Collection<String> words) {
    Finding finding =
        Finding.error(UNKNOWN_WORD, word.span(), shown(word.text()) + " is not " + what);
    return suggesting(finding, word, words, "it may be ");
  }

  static Finding name(Span place, String name, String what) {
    return Finding.error(NAME, place, shown(name) + " cannot be the name of " + what)
        .helping("use lower-case letters, digits and single hyphens, and begin with a letter");
  }

  static Finding emptyFile(SourceFile file, Keys keys) {
    return Finding.error(EMPTY_FILE, file.beginning(), "the file says nothing")
        .helping("write " + keys.thing() + " into it, or delete it");
  }

  /** The nearest names where there are any, else the whole list where it is short. */
  static Finding suggesting(
      Finding finding, Scalar word, Collection<String> words, String introduction) {
    List<String> near = NearNames.of(word.text(), words);
    if (near.isEmpty()) {
      // crude-protein of protein: nobody calls it by its full name.
      List<String> holding = words.stream().filter(one -> isPart(word.text(), one)).toList();
      if (!holding.isEmpty()) {
        return finding.helping(Meant.question(Choices.of(NearNames.holding(word.text(), holding))));
      }
    }
    if (!near.isEmpty()) {
      Finding helped = finding.helping(Meant.question(Choices.of(near)));
      return near.size() == 1 && word.plain() ? helped.fixing(word.span(), near.get(0)) : helped;
    }
    return words.isEmpty() || words.size() > 30
        ? finding
        : finding.helping(introduction + Choices.of(words));
  }

  private static boolean isPart(String word, String name) {
    return !word.isEmpty() && ("-" + name + "-").contains("-" + word + "-");
  }

  static String shown(String text) {
    return Excerpt.of(text);
  }

  private static String kindOf(Yaml found) {
    if (found instanceof Mapping) {
      return "a block of keys";
    }
    return found instanceof Sequence ? "a list" : "a single text";
  }
}
