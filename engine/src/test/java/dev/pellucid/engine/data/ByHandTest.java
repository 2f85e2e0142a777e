package dev.pellucid.engine.data;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What is told apart by hand for speed is what the pattern for it says. */
class ByHandTest {
  private static final Pattern AMOUNT =
      Pattern.compile("^([0-9]+(?:\\.[0-9]+)?)\\s*((?!to\\s)[\\p{L}%°℃].*)?$");
  private static final String[] PARTS = {
    "0", "12", ".", " ", "\t", "\n", "%", "°C", "℃", "to", "to ", "kg", "E", "ü", "±", ",", "-",
    "a", "z9", "\u0085", "\u2028", "𝒜", "\ud800", "μ"
  };

  @Test
  void amounts() {
    Random random = new Random(1);
    for (int i = 0; i < 50_000; i++) {
      String text = text(random);
      Matcher amount = AMOUNT.matcher(text);
      assertEquals(
          amount.matches()
              ? Optional.of(new Amount(amount.group(1), amount.group(2)))
              : Optional.empty(),
          Amount.of(text),
          text);
    }
  }

  @Test
  void names() {
    Random random = new Random(2);
    for (int i = 0; i < 50_000; i++) {
      String text = text(random);
      assertEquals(text.matches(Vocabulary.NAME), Vocabulary.isName(text), text);
    }
  }

  private static String text(Random random) {
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(6); i >= 0; i--) {
      text.append(PARTS[random.nextInt(PARTS.length)]);
    }
    return text.toString();
  }
}
