package dev.pellucid.parse;

import dev.pellucid.finding.Code;
import java.util.List;
import java.util.stream.Stream;

/** Every code that reading a file can give; each has a page. */
public final class SyntaxCodes {
  private static final List<Code> ALL =
      Stream.of(
              "amount-missing",
              "batch-weight-missing",
              "bound-missing",
              "bound-side-missing",
              "bound-twice",
              "comment-glued",
              "comparison-sign",
              "control-character",
              "curly-quotes",
              "day-form",
              "decimal-comma",
              "figure-missing",
              "figure-out-of-bounds",
              "from-missing",
              "head-line-foreign",
              "head-line-late",
              "head-line-twice",
              "head-line-unknown",
              "heading-extra",
              "heading-lost",
              "indent-extra",
              "indent-missing",
              "limits-missing",
              "line-unreadable",
              "mix-missing",
              "name-capitals",
              "name-differs-from-file",
              "name-form",
              "name-letters",
              "name-space",
              "none-form",
              "not-utf-8",
              "number-colon",
              "number-digits",
              "number-exponent",
              "number-grouped",
              "number-half",
              "number-hexadecimal",
              "number-long",
              "number-not-finite",
              "number-of-limits",
              "number-points",
              "number-sign",
              "opening-kind",
              "opening-missing",
              "opening-twice",
              "opening-word",
              "phrase-incomplete",
              "phrase-twice",
              "phrase-unknown",
              "plus-minus",
              "property-foreign",
              "property-unknown",
              "purpose-missing",
              "quote-inside",
              "quote-unclosed",
              "range-dash",
              "range-end-missing",
              "range-reversed",
              "range-units",
              "section-empty",
              "section-foreign",
              "section-twice",
              "section-unknown",
              "share-bound",
              "sign-after-name",
              "step-form",
              "step-unknown",
              "step-zero",
              "supply-missing",
              "symbol-glued",
              "tab",
              "text-extra",
              "to-be-given",
              "to-missing",
              "unit-first",
              "unit-glued",
              "unit-kind",
              "unit-missing",
              "unit-spelling",
              "unit-unknown",
              "utf-16",
              "weight-for-share",
              "word-unknown")
          .map(Code::new)
          .toList();

  private SyntaxCodes() {}

  /** In the order of the alphabet. */
  public static List<Code> all() {
    return ALL;
  }
}
