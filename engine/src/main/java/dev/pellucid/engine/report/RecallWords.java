package dev.pellucid.engine.report;

import dev.pellucid.engine.trace.Recall.Affected;
import dev.pellucid.engine.trace.Recall.Kind;
import dev.pellucid.engine.trace.Recall.NotFollowed;
import dev.pellucid.engine.trace.Recall.State;
import dev.pellucid.engine.trace.Recall.Store;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The words of a recall. */
final class RecallWords {
  private RecallWords() {}

  /** How it came in, short enough for a picture. */
  static String kind(Kind kind) {
    return switch (kind) {
      case WEIGHED -> "weighed in";
      case PREMIX -> "as premix";
      case REWORK -> "as rework";
      case FLUSH -> "with a flush";
      case FINES -> "as fines";
      case PART_BAG -> "as part bag";
      case NEXT_ON_LINE -> "next on line";
      case SAME_BIN -> "same bin";
      case LOT_NOT_TOLD -> "lot not told";
      case ORDER_NOT_TOLD -> "order not told";
    };
  }

  static String holds(boolean certain) {
    return certain ? "certain" : "possible";
  }

  /** How it stands in a word, and why where it is stopped. */
  static String word(State state) {
    String word = state.word().equals("open") ? "not decided" : state.word();
    return word + (state.because().isEmpty() ? "" : ": " + state.because());
  }

  /** How a lot or a batch stands, with the day and who said it, where that is told. */
  static String state(State state) {
    String word = state.word().equals("open") ? "not decided" : state.word();
    String because = state.because().isEmpty() ? "" : ": " + state.because();
    return word
        + state.day().map(day -> " since " + day).orElse("")
        + (state.by().isEmpty() ? "" : " by " + state.by())
        + because;
  }

  static String counted(Store store) {
    String since = store.moved() ? ", with moves since" : "";
    return store
        .counted()
        .map(day -> "counted on " + day + since)
        .or(() -> store.emptied().map(day -> "its bin was empty on " + day + since))
        .orElse("by the books only");
  }

  /** The same for a column. */
  static String whenCounted(Optional<Store> store) {
    String since = store.filter(Store::moved).map(it -> " and moves").orElse("");
    return store
        .flatMap(Store::counted)
        .map(day -> day + since)
        .or(() -> store.flatMap(Store::emptied).map(day -> "bin empty " + day + since))
        .orElse("no");
  }

  static String left(Optional<Store> store) {
    return store.map(it -> RecallFigures.kg(it.kg())).orElse(RecallFigures.NOT_TOLD);
  }

  /** Why a batch may hold it, each reason once. */
  static String why(Affected batch, String asked) {
    List<String> all =
        batch.why().stream().map(doubt -> TraceWords.why(doubt, asked)).distinct().toList();
    return all.isEmpty() ? "no record says why" : String.join("; ", all);
  }

  static String notFollowed(NotFollowed one) {
    String numbers = one.numbers().stream().collect(Collectors.joining(", "));
    String words = one.words().isEmpty() ? "" : " (" + one.words() + ")";
    return switch (one.limit()) {
      case SECOND_ON_LINE ->
          "Only the batch made next on the line was followed, not the ones behind it: "
              + numbers
              + ".";
      case TOLD_IN_WORDS ->
          "Where a flush or fines went is told in words, not by the number of a batch: "
              + numbers
              + words
              + ". Ask who wrote it.";
      case PLANT_NOT_KNOWN ->
          "At which plant it was made is not known, since its recipe cannot be read, so nothing"
              + " was looked for next on the line: "
              + numbers
              + ".";
      case PARTY_NOT_TOLD ->
          "Delivered, and no record tells to whom: "
              + numbers
              + ". Look for the delivery notes before you call this list whole.";
      case MADE_BEFORE ->
          "Not counted: "
              + numbers
              + ". A line of it does not tell its lot, but it was made before there was any.";
      case DECIDED_AHEAD ->
          "Decided for a day that is still to come, so it does not count yet: "
              + numbers
              + words
              + ".";
      case MOVED_AHEAD ->
          "Written for a day that is still to come, so it does not count yet: "
              + numbers
              + words
              + ". Stop what is to leave; where it is done already, mend the day, and call who got any.";
    };
  }
}
