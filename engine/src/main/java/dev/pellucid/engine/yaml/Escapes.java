package dev.pellucid.engine.yaml;

import dev.pellucid.finding.Finding;
import dev.pellucid.text.Span;
import dev.pellucid.text.Unseen;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Text in double quotes, in which YAML lets a backslash and a few letters stand for any character:
 * {@code "\\x07"}. What may not stand there as itself may not stand there so either, and a line end
 * neither, since such text is one line.
 */
final class Escapes {
  private static final String LETTERS = "0abtnvfreN_LP";
  private static final String MEANT = "\0\u0007\b\t\n\u000B\f\r\u001B\u0085\u00A0\u2028\u2029";

  private final Span quoted;
  private final String raw;
  private final StringBuilder text = new StringBuilder();

  /** For each unit of the text what stands for it in the file. */
  private final List<Span> places = new ArrayList<>();

  private Escapes(Span quoted) {
    this.quoted = quoted;
    this.raw = quoted.text();
  }

  /** The finding about the first escape that stands for what may not stand there. */
  static Optional<Finding> refuse(Span quoted) {
    if (quoted.text().indexOf('\\') < 0) {
      return Optional.empty();
    }
    Escapes escapes = new Escapes(quoted);
    escapes.resolve();
    return escapes.refused();
  }

  private void resolve() {
    int at = 1;
    while (at < raw.length() - 1) {
      int end = raw.charAt(at) == '\\' ? Math.min(at + length(at), raw.length() - 1) : at + 1;
      add(raw.charAt(at) == '\\' ? meant(at, end) : raw.substring(at, end), at, end);
      at = end;
    }
  }

  private void add(String what, int from, int to) {
    text.append(what);
    Span place = quoted.file().span(quoted.start() + from, quoted.start() + to);
    for (int i = 0; i < what.length(); i++) {
      places.add(place);
    }
  }

  private int length(int at) {
    return switch (raw.charAt(at + 1)) {
      case 'x' -> 4;
      case 'u' -> 6;
      case 'U' -> 10;
      default -> 2;
    };
  }

  /** What an escape stands for; nothing for a line end of the file behind a backslash. */
  private String meant(int at, int end) {
    char letter = raw.charAt(at + 1);
    if (end - at > 2) {
      return number(raw.substring(at + 2, end));
    }
    int known = LETTERS.indexOf(letter);
    if (known >= 0) {
      return MEANT.substring(known, known + 1);
    }
    return letter == '\n' || letter == '\r' ? "" : String.valueOf(letter);
  }

  private static String number(String hex) {
    try {
      int c = Integer.parseInt(hex, 16);
      return Character.isValidCodePoint(c) ? Character.toString(c) : "";
    } catch (NumberFormatException noNumber) {
      return "";
    }
  }

  private Optional<Finding> refused() {
    String whole = text.toString();
    int unseen = Unseen.find(whole, 0);
    for (int at = 0; at < whole.length(); at++) {
      boolean refused = at == unseen || isLineEnd(whole.charAt(at));
      if (refused && places.get(at).text().startsWith("\\")) {
        return Optional.of(YamlFindings.escaped(places.get(at), whole.codePointAt(at)));
      }
      unseen = at == unseen ? Unseen.find(whole, at + Unseen.length(whole, at)) : unseen;
    }
    return Optional.empty();
  }

  private static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r';
  }
}
