package dev.pellucid.slip;

import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * A line that did not parse to the one finding about it. The order of the list is meaning: the
 * first slip that knows the line speaks, so the surest stand first; the last knows every line.
 */
public final class Slips {
  private static final List<Slip> IN_ORDER =
      List.of(
          new StillToGive(),
          new CurlyQuotes(),
          new QuoteInside(),
          new QuoteUnclosed(),
          new CommentGlued(),
          new GroupedNumber(),
          new DecimalComma(),
          new Exponent(),
          new NotFinite(),
          new Hexadecimal(),
          new NumberColon(),
          new OtherDigits(),
          new NumberDots(),
          new HalfNumber(),
          new PlusMinus(),
          new SignedNumber(),
          new PercentFirst(),
          new UnitGlued(),
          new DashRange(),
          new ComparisonSign(),
          new SymbolGlued(),
          new EqualsSign(),
          new UnitFixed(),
          new HeadLineLate(),
          new HeadWord(),
          new NameCapitals(),
          new NameLetters(),
          new ShareBound(),
          new StepForm(),
          new NoneForm(),
          new PhraseWord(),
          new AmountMissing(),
          new NameWithSpace(),
          new RangeUnits(),
          new ToMissing(),
          new WithinOneEnd(),
          new BoundBare(),
          new UnitMissing(),
          new UnitUnknown(),
          new PhraseIncomplete(),
          new BatchWeight(),
          new PurposeMissing(),
          new OriginMissing(),
          new ExtraText(),
          new ModelLine());

  private Slips() {}

  public static Finding finding(BrokenLine line) {
    for (Slip slip : IN_ORDER) {
      Optional<Finding> finding = slip.in(line);
      if (finding.isPresent()) {
        return finding.get();
      }
    }
    throw new IllegalStateException("the last slip knows every line");
  }
}
