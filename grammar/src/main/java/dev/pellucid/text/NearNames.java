package dev.pellucid.text;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * The names that a misspelt word was probably meant to be.
 *
 * <p>Distance counts letters left out, put in, replaced, or swapped with a neighbour (the
 * restricted Damerau-Levenshtein distance); capitals do not count. A name is near when the distance
 * is at most a third of the longer word, and at least one slip is always allowed.
 */
public final class NearNames {
  private static final int AT_MOST = 3;

  private NearNames() {}

  /**
   * At most three candidates, the nearest first, equally near ones in the order of the alphabet.
   */
  public static List<String> of(String word, Collection<String> candidates) {
    String wanted = word.toLowerCase(Locale.ROOT);
    List<Near> near = new ArrayList<>();
    for (String candidate : candidates) {
      int limit = Math.max(1, Math.max(wanted.length(), candidate.length()) / 3);
      if (Math.abs(candidate.length() - wanted.length()) <= limit) {
        int distance = distance(wanted, candidate.toLowerCase(Locale.ROOT));
        if (distance <= limit) {
          near.add(new Near(candidate, distance));
        }
      }
    }
    near.sort(Comparator.comparingInt(Near::distance).thenComparing(Near::name));
    return near.stream().limit(AT_MOST).map(Near::name).distinct().toList();
  }

  /**
   * At most three names of which the word is, or nearly is, a part between hyphens: {@code
   * crude-protein} of {@code protein}; the nearest first, then the shortest.
   */
  public static List<String> holding(String word, Collection<String> candidates) {
    String wanted = word.toLowerCase(Locale.ROOT);
    List<Near> near = new ArrayList<>();
    for (String candidate : candidates) {
      int least = Integer.MAX_VALUE;
      for (String part : candidate.toLowerCase(Locale.ROOT).split("-", -1)) {
        int distance = distance(wanted, part);
        int limit = Math.max(wanted.length(), part.length()) / 3;
        least = Math.min(least, distance <= limit ? distance : least);
      }
      if (least < Integer.MAX_VALUE) {
        near.add(new Near(candidate, least));
      }
    }
    near.sort(
        Comparator.comparingInt(Near::distance)
            .thenComparingInt(one -> one.name().length())
            .thenComparing(Near::name));
    return near.stream().limit(AT_MOST).map(Near::name).distinct().toList();
  }

  /** How many slips lie between two words, letter for letter. */
  public static int distance(String a, String b) {
    int[] before = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replaced = last[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(replaced, 1 + Math.min(last[j], row[j - 1]));
        if (swapped(a, i, b, j)) {
          row[j] = Math.min(row[j], before[j - 2] + 1);
        }
      }
      int[] free = before;
      before = last;
      last = row;
      row = free;
    }
    return last[b.length()];
  }

  private static boolean swapped(String a, int i, String b, int j) {
    return i > 1
        && j > 1
        && a.charAt(i - 1) == b.charAt(j - 2)
        && a.charAt(i - 2) == b.charAt(j - 1);
  }

  private record Near(String name, int distance) {}
}
