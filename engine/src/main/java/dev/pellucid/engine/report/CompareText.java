package dev.pellucid.engine.report;

import dev.pellucid.engine.compare.Comparison;
import dev.pellucid.engine.compare.FileChange;
import dev.pellucid.engine.compare.PremixChange;
import dev.pellucid.engine.compare.RecipeChange;
import java.util.List;
import java.util.Optional;

/** A comparison as text, the gravest first: all of it, in one line each, or one thing of it. */
public final class CompareText {
  private static final int MOST = 8;

  private final CompareWords words;
  private final String currency;

  public CompareText(String currency) {
    this.words = new CompareWords(currency, MOST);
    this.currency = currency;
  }

  /** All of it; lines end in {@code \n}, and the first one tells what it comes to. */
  public String text(Comparison comparison) {
    StringBuilder out = head(comparison);
    CompareTally.told(comparison).forEach(change -> feed(change, out));
    CompareTally.premixes(comparison).forEach(change -> premix(change, out));
    comparison.files().forEach(change -> file(change, out));
    return foot(comparison, out);
  }

  /** For a console: a line for each feed, premix and file, in the same order. */
  public String brief(Comparison comparison) {
    StringBuilder out = head(comparison);
    for (RecipeChange change : CompareTally.told(comparison)) {
      out.append(CompareLine.of(change, currency)).append('\n');
    }
    for (PremixChange change : CompareTally.premixes(comparison)) {
      out.append(CompareFindings.premixInOne(change, currency)).append('\n');
    }
    for (FileChange change : comparison.files()) {
      out.append(CompareFindings.file(change)).append('\n');
    }
    return foot(comparison, out);
  }

  /**
   * One feed or premix in full.
   *
   * @param code now or before; empty where nothing of that code changes
   */
  public Optional<String> of(Comparison comparison, String code) {
    StringBuilder out = new StringBuilder();
    for (RecipeChange change : comparison.changes()) {
      if (change.code().equals(code) || change.formerly().filter(code::equals).isPresent()) {
        feed(change, out);
      }
    }
    for (PremixChange change : comparison.premixes()) {
      if (change.code().equals(code)) {
        premix(change, out);
      }
    }
    return out.isEmpty() ? Optional.empty() : Optional.of(CompareTally.of(comparison) + "\n" + out);
  }

  private static StringBuilder head(Comparison comparison) {
    StringBuilder out = new StringBuilder(CompareTally.of(comparison)).append('\n');
    comparison.notices().forEach(notice -> out.append(notice).append('\n'));
    return out;
  }

  private static String foot(Comparison comparison, StringBuilder out) {
    CompareTally.foot(comparison).forEach(words -> out.append(words).append('\n'));
    return out.toString();
  }

  private void feed(RecipeChange change, StringBuilder out) {
    lines(change.named() + "  " + change.how().words(), words.of(change), out);
    words.details(change).forEach(line -> out.append("  ").append(line).append('\n'));
  }

  private void premix(PremixChange change, StringBuilder out) {
    lines(
        change.code() + "  premix, " + change.how().words(),
        CompareFindings.premix(change, currency, MOST),
        out);
  }

  private static void file(FileChange change, StringBuilder out) {
    lines(change.path(), CompareFindings.lines(change.findings(), false), out);
  }

  private static void lines(String head, List<String> lines, StringBuilder out) {
    out.append(head).append('\n');
    lines.forEach(line -> out.append("  ").append(line).append('\n'));
  }

  /** One line for all. */
  public static String tally(Comparison comparison) {
    return CompareTally.of(comparison);
  }
}
