package dev.pellucid.engine.data;

import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.measure.Digits;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Why a text is not the figure that belongs in its place, in our words. */
final class NumberSlips {
  private static final Pattern EXPONENT =
      Pattern.compile("^[+-]?[0-9.]+[eE][+-]?[0-9]+(?:\\s.*)?$");

  private record Slip(Pattern pattern, Function<Scalar, Finding> words) {
    static Slip of(String pattern, Function<Scalar, Finding> words) {
      return new Slip(Pattern.compile("^" + pattern + "$", Pattern.CASE_INSENSITIVE), words);
    }

    static Slip figure(String pattern, String sentence, String help) {
      return of(pattern, value -> at(FigureFindings.FIGURE, value, sentence, help));
    }
  }

  private static final String LEFT_OUT =
      "leave the line out when it is unknown, write none when there is none of it";

  private static final List<Slip> SLIPS =
      List.of(
          Slip.of(
              "(?:[0-9]{1,4}[-/.][0-9]{1,2}[-/.][0-9]{1,4}|[0-9]{1,2}[-/ ][a-z]{3,9}(?:[-/ ][0-9]+)?"
                  + "|[a-z]{3}[-/][0-9]{2,4})",
              value ->
                  at(
                      FigureFindings.DATE,
                      value,
                      "is a date, a figure belongs here",
                      "a spreadsheet turns 3-7 into such a date; look the figure up again")),
          Slip.of(
              "[-−+]?\\.?(?:nan|inf|infinity|∞)\\b.*",
              value ->
                  at(
                      FigureFindings.NOT_FINITE,
                      value,
                      "is not a number",
                      "a formula of a spreadsheet went wrong; look the figure up again")),
          Slip.of(
              "[-−–].*[0-9].*",
              value ->
                  at(
                      FigureFindings.NEGATIVE,
                      value,
                      "is below zero, there is no such amount",
                      "write the figure without the sign, or none for nothing")),
          Slip.of(
              "(?:below\\s+)?[0-9]{1,3}(?:[, '’_][0-9]{3})+(?:\\.[0-9]+)?(?![0-9]).*",
              value ->
                  at(
                      FigureFindings.GROUPED,
                      value,
                      "parts the digits of a number",
                      "write the digits without a gap, and a point for the decimals")),
          Slip.of(".*[0-9],[0-9].*", NumberSlips::comma),
          Slip.figure(
              "(?:below\\s+)?0x[0-9a-f]+(?:\\s.*)?", Digits.HEXADECIMAL, Digits.HEXADECIMAL_REMEDY),
          Slip.figure(
              "(?:below\\s+)?[0-9.]+(?::[0-9.]+)+(?:\\s.*)?",
              "has a colon, a figure is one number",
              "write a time in one unit, as in 90 min, and a ratio as one number"),
          Slip.figure(
              ".*[\\p{Nd}&&[^0-9]].*",
              Digits.OTHER,
              "write the same figure in the digits 0 to 9, and a point for the decimals"),
          Slip.figure(
              "(?:n/?a|n\\.?d\\.?|nil|null|~|\\?+|-+|–|unknown|tr(?:ace)?s?)",
              "is not a figure",
              LEFT_OUT),
          Slip.figure(
              "(?:<=?|≤|less than|under|up to|max\\.?)\\s*[0-9].*",
              "is not how a bound is written here",
              "write below and the figure, as in below 0.1 %"),
          Slip.figure(
              "(?:>=?|≥|~|≈|about|approx\\.?|ca\\.?|circa|over|min\\.?|\\+)\\s*[0-9].*",
              "is not a plain figure",
              "write the figure that you count on, with ± and the standard deviation between lots if it varies"),
          Slip.figure(
              "[0-9.]+\\s*\\S*\\s*(?:±|\\+/-).*",
              "does not say the standard deviation as it is written here",
              "write figure, ±, one standard deviation, unit, as in 47.5 ± 1.2 %"),
          Slip.of(
              "[0-9.]+\\s*\\S*\\s*(?:to|-|–|—|\\.\\.+)\\s*[0-9.]+.*",
              value ->
                  at(
                      FigureFindings.RANGE,
                      value,
                      "does not have the shape that belongs here",
                      "one figure is 10 %, a range is 10 to 12 % with one unit at its end")),
          Slip.figure("\\.[0-9].*", "begins with its point", "write a zero before the point"),
          Slip.figure(
              "[0-9]+\\.(?:[^0-9].*)?", "ends with its point", "write digits behind the point"),
          Slip.figure(
              "[0-9]+\\.[0-9]*\\.[0-9.]*.*", "has more than one point", "write one decimal point"));

  private NumberSlips() {}

  static boolean isExponent(String text) {
    return EXPONENT.matcher(text).matches();
  }

  static Finding explain(Scalar value) {
    String text = FigureReader.spaced(value);
    if (isExponent(text)) {
      return at(
          FigureFindings.EXPONENT,
          value,
          "has an exponent",
          "write the number out, as in 0.002 or 500000");
    }
    for (Slip slip : SLIPS) {
      if (slip.pattern().matcher(text).matches()) {
        return slip.words().apply(value);
      }
    }
    return at(
        FigureFindings.FIGURE,
        value,
        "is not a figure with a unit",
        "write a number, a space and a unit, as in 12.5 %");
  }

  static Finding oneFigureForRange(Scalar value) {
    return at(
        FigureFindings.RANGE,
        value,
        "is one figure, a range belongs here",
        "write both ends and one unit, as in 50 to 250 g");
  }

  /** What breaks the number rule in digits and a point. */
  static Optional<Finding> inDigits(Scalar value, String number, int most) {
    int point = number.indexOf('.');
    String whole = point < 0 ? number : number.substring(0, point);
    if (whole.length() > 1 && whole.startsWith("0")) {
      return Optional.of(
          at(
              FigureFindings.ZEROS,
              value,
              "begins with a zero too many",
              "write the number without it, or put the lost decimal point back"));
    }
    if (whole.length() > most || (point >= 0 && number.length() - point - 1 > most)) {
      return Optional.of(
          at(
              FigureFindings.LONG,
              value,
              "has more than " + most + " digits on one side of the point",
              "no analysis is that exact; round it"));
    }
    return Optional.empty();
  }

  private static Finding comma(Scalar value) {
    Matcher comma = Pattern.compile("([0-9]),([0-9])").matcher(value.text());
    String fixed = comma.replaceAll("$1.$2");
    Finding finding = FigureFindings.comma(value, fixed);
    return value.plain() ? finding.fixing(value.span(), fixed) : finding;
  }

  private static Finding at(Code code, Scalar value, String sentence, String help) {
    return FigureFindings.at(code, value, sentence).helping(help);
  }
}
