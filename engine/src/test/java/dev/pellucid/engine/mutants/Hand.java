package dev.pellucid.engine.mutants;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How a hand slips in one line. */
enum Hand {
  /** The point of one figure stands one place further left or right. */
  TEN_TIMES {
    @Override
    Optional<Slip> slip(String path, List<String> lines, int at, Random random) {
      return changed(path, lines, at, figure(lines.get(at), random));
    }
  },
  TEN_TIMES_OR_LOST {
    @Override
    Optional<Slip> slip(String path, List<String> lines, int at, Random random) {
      boolean lost = random.nextInt(3) == 0 && !lines.get(at).strip().startsWith("-");
      return (lost ? LOST : TEN_TIMES).slip(path, lines, at, random);
    }
  },
  LOST {
    @Override
    Optional<Slip> slip(String path, List<String> lines, int at, Random random) {
      return Optional.of(Slip.lost(path, lines, at, 0));
    }
  },
  SECTION_LOST {
    @Override
    Optional<Slip> slip(String path, List<String> lines, int at, Random random) {
      int end = at + 1;
      while (end < lines.size()
          && (lines.get(end).isBlank() || Character.isWhitespace(lines.get(end).charAt(0)))) {
        end++;
      }
      return Optional.of(Slip.lost(path, lines, at, end - at - 1));
    }
  },
  TWICE {
    @Override
    Optional<Slip> slip(String path, List<String> lines, int at, Random random) {
      return Optional.of(Slip.twice(path, lines, at));
    }
  },
  /** To the end of another section. */
  MOVED {
    @Override
    Optional<Slip> slip(String path, List<String> lines, int at, Random random) {
      int to = random.nextInt(lines.size() - 1);
      while (to > 0 && !lines.get(to).isBlank()) {
        to--;
      }
      boolean far = to > 1 && Math.abs(to - at) > 2;
      return far
          ? Optional.of(Slip.moved(path, lines, at, at < to ? to - 1 : to))
          : Optional.empty();
    }
  },
  /** Two letters of the first name change places, or one is lost. */
  NAME_MISSPELT {
    @Override
    Optional<Slip> slip(String path, List<String> lines, int at, Random random) {
      String line = lines.get(at);
      Matcher name = Pattern.compile("[A-Za-z][A-Za-z0-9-]{2,}").matcher(line);
      if (!name.find()) {
        return Optional.empty();
      }
      int letter = name.start() + random.nextInt(name.end() - name.start() - 1);
      String slipped =
          random.nextBoolean() || line.charAt(letter) == line.charAt(letter + 1)
              ? line.substring(0, letter) + line.substring(letter + 1)
              : line.substring(0, letter)
                  + line.charAt(letter + 1)
                  + line.charAt(letter)
                  + line.substring(letter + 2);
      return changed(path, lines, at, slipped);
    }
  },
  /** The unit is lost, stuck to its figure, or another one; or the point is a comma. */
  UNIT {
    @Override
    Optional<Slip> slip(String path, List<String> lines, int at, Random random) {
      String line = lines.get(at);
      String slipped =
          switch (random.nextInt(4)) {
            case 0 -> line.replaceFirst("(?<=\\d) (%|mg/kg|g/kg|g|kg|mm|min|h|d|°C)(?= |$)", "");
            case 1 -> line.replaceFirst("(?<=\\d) (%|mg/kg|g/kg|kg|mm|min|d|°C)(?= |$)", "$1");
            case 2 -> line.replaceFirst("(?<=\\d)\\.(?=\\d)", ",");
            default ->
                line.replaceFirst("(?<=\\d )(%|mm|d|kg)(?= |$)", random.nextBoolean() ? "g" : "t");
          };
      return changed(path, lines, at, slipped);
    }
  },
  CONTENT_UNIT {
    @Override
    Optional<Slip> slip(String path, List<String> lines, int at, Random random) {
      String line = lines.get(at);
      String slipped =
          line.endsWith(" %")
              ? line.replaceFirst("%$", random.nextBoolean() ? "g/kg" : "mg/kg")
              : line.replaceFirst("mg/kg$", random.nextBoolean() ? "g/kg" : "%");
      return changed(path, lines, at, slipped);
    }
  },
  SIDE_TURNED {
    @Override
    Optional<Slip> slip(String path, List<String> lines, int at, Random random) {
      String line = lines.get(at);
      boolean both = line.contains(" min ") && line.contains(" max ");
      String turned =
          line.contains(" min ")
              ? line.replaceFirst(" min ", " max ")
              : line.replaceFirst(" max ", " min ");
      return both ? Optional.empty() : changed(path, lines, at, turned);
    }
  },
  PHRASE_LOST {
    @Override
    Optional<Slip> slip(String path, List<String> lines, int at, Random random) {
      String phrase = " +(on dry matter|at \\d+ % moisture|in \\d+ % of batches)";
      return changed(path, lines, at, lines.get(at).replaceFirst(phrase, ""));
    }
  },
  /** A tab, no colon, other depth, an open quote or bracket. */
  YAML {
    @Override
    Optional<Slip> slip(String path, List<String> lines, int at, Random random) {
      String line = lines.get(at);
      String slipped =
          switch (random.nextInt(6)) {
            case 0 -> "\t" + line.stripLeading();
            case 1 -> line.replaceFirst(": ", " ");
            case 2 -> line.replaceFirst(": ", ":");
            case 3 -> "   " + line;
            case 4 -> line.replaceFirst(": ", ": \"");
            default -> line.replaceFirst(": ", ": [");
          };
      return changed(path, lines, at, slipped);
    }
  },
  PRICE {
    @Override
    Optional<Slip> slip(String path, List<String> lines, int at, Random random) {
      String line = lines.get(at);
      return random.nextInt(4) == 0
          ? changed(path, lines, at, line.replace("/kg", "/t"))
          : changed(path, lines, at, figure(line, random));
    }
  };

  /** Empty where the line has no place for it. */
  abstract Optional<Slip> slip(String path, List<String> lines, int at, Random random);

  private static Optional<Slip> changed(String path, List<String> lines, int at, String to) {
    return to.equals(lines.get(at))
        ? Optional.empty()
        : Optional.of(Slip.changed(path, lines, at, to));
  }

  /** The line with one of its figures ten times as large, or a tenth. */
  static String figure(String line, Random random) {
    List<MatchResult> found =
        Pattern.compile("(?<![\\p{L}\\d.-])\\d+(\\.\\d+)?(?![\\d.-])")
            .matcher(line)
            .results()
            .filter(one -> new BigDecimal(one.group()).signum() != 0)
            .toList();
    if (found.isEmpty()) {
      return line;
    }
    MatchResult one = found.get(random.nextInt(found.size()));
    var figure = new BigDecimal(one.group());
    String other =
        (random.nextBoolean() ? figure.movePointRight(1) : figure.movePointLeft(1)).toPlainString();
    return line.substring(0, one.start()) + other + line.substring(one.end());
  }
}
