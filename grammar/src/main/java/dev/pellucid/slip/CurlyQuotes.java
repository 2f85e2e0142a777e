package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Lexeme;
import dev.pellucid.text.Span;
import java.util.Optional;
import java.util.regex.Pattern;

/** Quotes of a word processor in place of straight ones. */
final class CurlyQuotes implements Slip {
  static final Code CODE = new Code("curly-quotes");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    return line.first(lexeme -> look(line, lexeme));
  }

  private static final Pattern CURLY = Pattern.compile("[\u201C\u201D\u201E\u201F\u00AB\u00BB]");

  private Optional<Finding> look(BrokenLine line, Lexeme lexeme) {
    if (!CURLY.matcher(lexeme.text()).find()) {
      return Optional.empty();
    }
    Span all = line.span();
    return Optional.of(
        Finding.error(CODE, lexeme.span(), "text stands in straight quotes, these are curly ones")
            .helping("write \" on both sides")
            .fixing(all, CURLY.matcher(all.text()).replaceAll("\"")));
  }
}
