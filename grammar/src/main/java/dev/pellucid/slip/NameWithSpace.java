package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme.Kind;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A name in several words. */
final class NameWithSpace implements Slip {
  static final Code CODE = new Code("name-space");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    int from = isNamingHead(line) ? 1 : 0;
    int words = from;
    while (line.is(words, Kind.WORD) && !endsName(line, words)) {
      words++;
    }
    int end = words > from + 1 && isPartOfName(line, words) ? words + 1 : words;
    if (words < from + 2 || line.is(0, "inclusion") || !isFollowed(line, end)) {
      return Optional.empty();
    }
    Span name = line.through(from, end - 1);
    String joined = joined(name.text());
    return Optional.of(
        Finding.error(
                CODE,
                name,
                "a name is one word, " + name.text().replaceAll("\\s+", " ") + " has a space in it")
            .helping("write " + joined)
            .fixing(name, joined));
  }

  /** Codes of premixes are in capitals, every other name is in small letters. */
  static String joined(String words) {
    String joined = words.replaceAll("\\s+", "-");
    return joined.equals(joined.toUpperCase(Locale.ROOT))
        ? joined
        : joined.toLowerCase(Locale.ROOT);
  }

  /** Lines of the head that end with a name. */
  static boolean isNamingHead(BrokenLine line) {
    return line.place() == Place.HEAD
        && (line.is(0, "species") || line.is(0, "meets") || line.is(0, "plant"));
  }

  /** The 62 of {@code fish meal 62 10 %}. */
  private static boolean isPartOfName(BrokenLine line, int at) {
    return line.is(at, Kind.NUMBER)
        && line.is(at + 1, Kind.NUMBER)
        && line.at(at).text().indexOf('.') < 0;
  }

  private static boolean isFollowed(BrokenLine line, int at) {
    boolean amount = line.is(at, Kind.NUMBER) && line.is(at + 1, Kind.UNIT);
    return switch (line.place()) {
      case MIX, COAT, CARRIER -> amount || line.is(at, "rest");
      case SUPPLY -> amount;
      case LABEL -> amount || line.is(at, "min") || line.is(at, "max");
      case LIMITS, WAIVERS -> line.is(at, "min") || line.is(at, "max");
      case HEAD -> isNamingHead(line) && at == line.size();
      case OPENING, OVERAGE, PROCESS -> false;
    };
  }

  private static boolean endsName(BrokenLine line, int at) {
    List<String> words =
        line.place().hasShares() ? Vocabulary.BEFORE_SHARE : Vocabulary.phrases(line.place());
    return at > 0 && words.contains(line.at(at).text());
  }
}
