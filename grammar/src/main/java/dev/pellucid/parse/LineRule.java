package dev.pellucid.parse;

import dev.pellucid.parse.generated.FeedLines;
import dev.pellucid.syntax.SectionWord;
import org.antlr.v4.runtime.ParserRuleContext;

/** The rule of the grammar that a line follows, which hangs on where it stands. */
enum LineRule {
  OPENING,
  HEAD,
  SHARE,
  SUPPLY,
  OVERAGE,
  LIMIT,
  WAIVER,
  PROCESS,
  LABEL;

  /** The rule of the lines of a section. */
  static LineRule of(SectionWord section) {
    return switch (section) {
      case MIX, CARRIER, COAT -> SHARE;
      case SUPPLY -> SUPPLY;
      case OVERAGE -> OVERAGE;
      case LIMITS -> LIMIT;
      case WAIVERS -> WAIVER;
      case PROCESS -> PROCESS;
      case LABEL -> LABEL;
    };
  }

  /** Has the generated parser read a line. */
  ParserRuleContext read(FeedLines parser) {
    return switch (this) {
      case OPENING -> parser.opening();
      case HEAD -> parser.headLine();
      case SHARE -> parser.shareLine();
      case SUPPLY -> parser.supplyLine();
      case OVERAGE -> parser.overageLine();
      case LIMIT -> parser.limitLine();
      case WAIVER -> parser.waiverLine();
      case PROCESS -> parser.processLine();
      case LABEL -> parser.labelLine();
    };
  }
}
