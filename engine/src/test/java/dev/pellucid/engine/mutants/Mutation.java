package dev.pellucid.engine.mutants;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One slip of the pen, or of a disk, somewhere in a text. */
enum Mutation {
  LINE_LOST {
    @Override
    String of(String text, Random random) {
      List<String> lines = lines(text);
      lines.remove(random.nextInt(lines.size()));
      return joined(lines);
    }
  },
  LINE_INDENTED {
    @Override
    String of(String text, Random random) {
      return inOneLine(text, random, line -> "  " + line);
    }
  },
  LINE_OUTDENTED {
    @Override
    String of(String text, Random random) {
      return inOneLine(text, random, line -> line.replaceFirst("^ {1,2}", ""));
    }
  },
  LINE_TWICE {
    @Override
    String of(String text, Random random) {
      return inOneLine(text, random, line -> line + "\n" + line);
    }
  },
  LINES_SWAPPED {
    @Override
    String of(String text, Random random) {
      List<String> lines = lines(text);
      int one = random.nextInt(lines.size());
      int other = random.nextInt(lines.size());
      String kept = lines.get(one);
      lines.set(one, lines.get(other));
      lines.set(other, kept);
      return joined(lines);
    }
  },
  CUT_OFF {
    @Override
    String of(String text, Random random) {
      return text.substring(0, random.nextInt(text.length() + 1));
    }
  },
  STRAY_CHARACTER {
    @Override
    String of(String text, Random random) {
      int at = random.nextInt(text.length() + 1);
      String stray = pick(random, "\u0000", "\u0007", "\u001b", "\u202e", "{", "\"", "#", "%", "é");
      return text.substring(0, at) + stray + text.substring(at);
    }
  },
  TAB {
    @Override
    String of(String text, Random random) {
      return atOne(text, random, " ", found -> "\t");
    }
  },
  DIGIT_CHANGED {
    @Override
    String of(String text, Random random) {
      return atOne(text, random, "[0-9]", found -> String.valueOf(random.nextInt(10)));
    }
  },
  TEN_TIMES {
    @Override
    String of(String text, Random random) {
      return atOne(text, random, NUMBER, found -> found.group().replaceFirst("^([0-9]+)", "$10"));
    }
  },
  NOUGHT {
    @Override
    String of(String text, Random random) {
      return atOne(text, random, NUMBER, found -> "0");
    }
  },
  HUGE {
    @Override
    String of(String text, Random random) {
      return atOne(text, random, NUMBER, found -> "999999999999");
    }
  },
  TINY {
    @Override
    String of(String text, Random random) {
      return atOne(text, random, NUMBER, found -> "0.000000000001");
    }
  },
  NEGATIVE {
    @Override
    String of(String text, Random random) {
      return atOne(text, random, NUMBER, found -> "-" + found.group());
    }
  },
  DAY_MOVED {
    @Override
    String of(String text, Random random) {
      String far = pick(random, "0000-01-01", "9999-12-31", "2026-02-30", "1600-01-01");
      return atOne(text, random, "[0-9]{4}-[0-9]{2}-[0-9]{2}", found -> far);
    }
  },
  UNIT_CHANGED {
    @Override
    String of(String text, Random random) {
      String other = pick(random, "%", "g/kg", "mg/kg", "kg", "t", "g", "mm", "d", "°C", "MJ/kg");
      return atOne(text, random, "(?<=[0-9] )(%|[a-zA-Z°][a-zA-Z/°]*)", found -> other);
    }
  },
  WORD_LOST {
    @Override
    String of(String text, Random random) {
      return atOne(text, random, "[\\p{L}][\\p{L}0-9-]*", found -> "");
    }
  },
  WORD_CHANGED {
    @Override
    String of(String text, Random random) {
      List<String> words =
          Pattern.compile("[\\p{L}][\\p{L}0-9-]*")
              .matcher(text)
              .results()
              .map(MatchResult::group)
              .toList();
      String other = words.isEmpty() ? "" : words.get(random.nextInt(words.size()));
      return atOne(text, random, "[\\p{L}][\\p{L}0-9-]*", found -> other);
    }
  },
  COLON_LOST {
    @Override
    String of(String text, Random random) {
      return atOne(text, random, ":", found -> "");
    }
  },
  VALUE_OVER_LINES {
    @Override
    String of(String text, Random random) {
      return atOne(text, random, "(?<=: )[^\n]+", found -> "\"two\\nlines.\"");
    }
  },
  VALUE_EMPTIED {
    @Override
    String of(String text, Random random) {
      return atOne(text, random, "(?<=: )[^\n]+", found -> "");
    }
  };

  private static final String NUMBER = "[0-9]+(\\.[0-9]+)?";

  /** The text with the slip in it; the same where there is no place for it. */
  abstract String of(String text, Random random);

  private static List<String> lines(String text) {
    return new ArrayList<>(List.of(text.split("\n", -1)));
  }

  private static String joined(List<String> lines) {
    return String.join("\n", lines);
  }

  private static String inOneLine(String text, Random random, UnaryOperator<String> slip) {
    List<String> lines = lines(text);
    int at = random.nextInt(lines.size());
    lines.set(at, slip.apply(lines.get(at)));
    return joined(lines);
  }

  private interface Slip {
    String of(MatchResult found);
  }

  private static String atOne(String text, Random random, String pattern, Slip slip) {
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    List<MatchResult> found = matcher.results().toList();
    if (found.isEmpty()) {
      return text;
    }
    MatchResult one = found.get(random.nextInt(found.size()));
    return text.substring(0, one.start()) + slip.of(one) + text.substring(one.end());
  }

  private static String pick(Random random, String... choices) {
    return choices[random.nextInt(choices.length)];
  }
}
