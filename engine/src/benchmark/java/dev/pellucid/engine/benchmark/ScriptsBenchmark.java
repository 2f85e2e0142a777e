package dev.pellucid.engine.benchmark;

import dev.pellucid.parse.FeedParser;
import dev.pellucid.parse.Lexing;
import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/**
 * How long it takes to lex and to parse recipes with a remark on each line in a script other than
 * that of English, as a ratio to the same recipes with English remarks of the same length.
 *
 * <p>Arguments: the number of recipes and of rounds.
 */
public final class ScriptsBenchmark {
  private static final long SEED = 20_261_128;
  private static final int WARM_UP = 10;
  private static final int LONGEST = 40;

  /** A remark of each line; the first is the measure of the others. */
  private record Remark(String script, String text) {}

  private static final List<Remark> REMARKS =
      List.of(
          new Remark("English", "looked at with the mill and kept as it was in spring"),
          new Remark("accented", "révisé à l'été, gardé tel quel après l'essai où ça gèle"),
          new Remark("Cyrillic", "проверено вместе с мельницей и оставлено как весной"),
          new Remark("Chinese", "与饲料厂一起检查过，保持春季的用量不变，等待新的化验结果再决定是否需要调整这一行"),
          new Remark("pairs of surrogates", "\uD83D\uDC1F".repeat(LONGEST / 2)));

  private ScriptsBenchmark() {}

  public static void main(String[] arguments) throws Exception {
    int count = Integer.parseInt(arguments[0]);
    int rounds = Integer.parseInt(arguments[1]);
    race("lexed", count, rounds, ScriptsBenchmark::lex);
    race("parsed", count, rounds, ScriptsBenchmark::parse);
  }

  private static void race(String what, int count, int rounds, ToIntFunction<SourceFile> work)
      throws Exception {
    List<Contender> contenders = new ArrayList<>();
    REMARKS.forEach(
        remark -> {
          List<SourceFile> texts = texts(count, remark.text());
          contenders.add(
              new Contender(
                  remark.script() + " remarks " + what, () -> texts.stream().mapToInt(work).sum()));
        });
    System.out.println();
    System.out.print(new Rounds(contenders, 0, count).run(1, WARM_UP, rounds));
  }

  private static int lex(SourceFile text) {
    return Lexing.lexemes(text).isEmpty() ? 0 : 1;
  }

  private static int parse(SourceFile text) {
    return FeedParser.parse(text).findings().isEmpty() ? 1 : 0;
  }

  private static List<SourceFile> texts(int count, String remark) {
    String tail = "  # " + remark.substring(0, Math.min(LONGEST, remark.length()));
    List<SourceFile> texts = new ArrayList<>();
    for (int number = 0; number < count; number++) {
      String plain = RecipeWriter.write(SEED, number, false);
      texts.add(
          new SourceFile(
              RecipeWriter.code(number) + ".recipe",
              plain
                  .lines()
                  .map(line -> line.isBlank() ? line : line + tail)
                  .reduce("", ScriptsBenchmark::below)));
    }
    return texts;
  }

  private static String below(String above, String line) {
    return above + line + "\n";
  }
}
