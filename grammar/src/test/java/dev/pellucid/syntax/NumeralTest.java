package dev.pellucid.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.measure.Unit;
import dev.pellucid.text.SourceFile;
import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NumeralTest {
  @Test
  void valueAndDoubleAreThoseOfTheExactFigure() {
    Random random = new Random(20_261_128);
    for (int trial = 0; trial < 200_000; trial++) {
      assertIsExact(number(random));
    }
    for (String text :
        List.of("0", "0.0", "00.50", "0.1", "2.50", "9007199254740993", "0.00000000000001")) {
      assertIsExact(text);
    }
  }

  @Test
  void aRangeIsReversedByTheValuesOfItsEnds() {
    assertTrue(isReversed("2.51", "2.5"));
    assertFalse(isReversed("2.50", "2.5"));
    assertFalse(isReversed("2.5", "2.50"));
    assertFalse(isReversed("2", "10"));
    // Both have the same nearest double.
    assertTrue(isReversed("0.1000000000000000001", "0.1"));
    assertFalse(isReversed("0.1", "0.1000000000000000001"));
  }

  private static boolean isReversed(String low, String high) {
    Numeral from = numeral(low);
    Word unit = new Word("%", from.span());
    return new Range(from, numeral(high), Unit.PERCENT, unit, from.span()).isReversed();
  }

  private static void assertIsExact(String text) {
    BigDecimal exact = new BigDecimal(text);
    assertEquals(exact, numeral(text).value(), text);
    assertEquals(exact.doubleValue(), numeral(text).nearest(), text);
  }

  private static String number(Random random) {
    StringBuilder text = new StringBuilder();
    digits(random, text);
    if (random.nextInt(4) > 0) {
      digits(random, text.append('.'));
    }
    return text.toString();
  }

  private static void digits(Random random, StringBuilder text) {
    for (int n = random.nextInt(random.nextBoolean() ? 3 : 12); n >= 0; n--) {
      text.append((char) ('0' + random.nextInt(10)));
    }
  }

  private static Numeral numeral(String text) {
    return new Numeral(text, new SourceFile("x", text).span(0, text.length()));
  }
}
