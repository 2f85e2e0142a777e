package dev.pellucid.parse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.text.SourceFile;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A line is read as if no line of its shape had been read before. */
class ShapesTest {
  private static final List<String> WORDS =
      List.of(
          "maize",
          "rest",
          "rework",
          "cost",
          "inclusion",
          "14.00",
          "7",
          "%",
          "kg",
          "min",
          "max",
          "within",
          "to",
          "for",
          "per",
          "weighing",
          "lines",
          "below",
          "+",
          ":",
          "on",
          "dry",
          "matter",
          "source",
          "accept",
          "\"so\"",
          "1,5");

  @Test
  void whatIsKeptIsWhatIsParsedAnew() {
    Shapes all = new Shapes(Integer.MAX_VALUE);
    Shapes few = new Shapes(200);
    Shapes none = new Shapes(0);
    Random random = new Random(20_261_128);
    List<LineRule> rules = List.of(LineRule.values());
    int fitting = 0;
    for (int trial = 0; trial < 20_000; trial++) {
      Tokens tokens = tokens(line(random, 1 + random.nextInt(6)));
      Line line = new Line(0, tokens.count(), true);
      LineRule rule = rules.get(random.nextInt(rules.size()));
      String anew = told(LineParser.parse(rule, tokens, line));
      assertEquals(anew, told(all.read(rule, tokens, line)));
      assertEquals(anew, told(few.read(rule, tokens, line)));
      assertEquals(anew, told(none.read(rule, tokens, line)));
      fitting += anew.equals("none") ? 0 : 1;
    }
    assertTrue(fitting > 500, "lines that fit: " + fitting);
  }

  @Test
  void linesOfOneShapeAreParsedOnce() {
    Shapes shapes = new Shapes(100);
    Tokens tokens = tokens("maize 14.00 %\nwheat 7 %");
    ParserRuleContext first = shapes.read(LineRule.SHARE, tokens, new Line(0, 3, true));
    ParserRuleContext second = shapes.read(LineRule.SHARE, tokens, new Line(4, 7, true));
    assertSame(first, second);
    assertEquals(told(first), told(LineParser.parse(LineRule.SHARE, tokens, new Line(4, 7, true))));
  }

  @Test
  void aLineOfAnyLengthIsRead() {
    Shapes shapes = new Shapes(1000);
    for (int names = 1; names < 200; names++) {
      Tokens tokens = tokens("lysine" + " + lysine".repeat(names) + " min 1 %");
      Line line = new Line(0, tokens.count(), true);
      String read = told(shapes.read(LineRule.LIMIT, tokens, line));
      assertTrue(read.contains("@" + (tokens.count() - 1)), read);
    }
  }

  private static Tokens tokens(String text) {
    return new Tokens(new SourceFile("x", text));
  }

  private static String line(Random random, int words) {
    List<String> line = new ArrayList<>();
    for (int i = 0; i < words; i++) {
      line.add(WORDS.get(random.nextInt(WORDS.size())));
    }
    return String.join(" ", line);
  }

  /** All that the generated parser says of a line. */
  private static String told(@Nullable Object read) {
    if (read == null) {
      return "none";
    }
    if (read instanceof Token token) {
      return token.getType() + "@" + token.getTokenIndex();
    }
    if (read instanceof List<?> list) {
      return list.stream().map(ShapesTest::told).toList().toString();
    }
    List<String> told = new ArrayList<>();
    Field[] fields = read.getClass().getFields();
    Arrays.sort(fields, Comparator.comparing(Field::getName));
    for (Field field : fields) {
      if (!List.of("parent", "children", "exception", "EMPTY").contains(field.getName())) {
        told.add(field.getName() + " " + told(value(field, read)));
      }
    }
    return read.getClass().getSimpleName() + told;
  }

  private static @Nullable Object value(Field field, Object of) {
    try {
      Object value = field.get(of);
      boolean isTold =
          value instanceof Token || value instanceof List || value instanceof ParserRuleContext;
      return isTold ? value : null;
    } catch (ReflectiveOperationException broken) {
      throw new IllegalStateException(broken);
    }
  }
}
