package dev.pellucid.engine.figures;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The first line in which two records differ.
 *
 * @param at its index in the older record; as many as that has lines where it ends before
 * @param was the piece, or the line, that is there
 * @param words what differs, for a headline
 * @param others how many other lines differ
 */
record Difference(How how, int at, String was, String words, int others) {
  /** What became of a line. */
  enum How {
    /** A piece of it is now another. */
    MOVED,
    /** It was not there. */
    NEW,
    /** It is not there any more. */
    GONE,
    /** It stands elsewhere, or is no fact. */
    LAYOUT
  }

  /** Of two lists of lines that are not equal. */
  static Difference between(List<String> was, List<String> is) {
    int at = 0;
    while (at < was.size() && at < is.size() && was.get(at).equals(is.get(at))) {
      at++;
    }
    String before = at < was.size() ? was.get(at) : "";
    String now = at < is.size() ? is.get(at) : "";
    boolean gone = !before.isBlank() && !is.contains(before);
    boolean fresh = !now.isBlank() && !was.contains(now);
    int others = others(was, is);
    FactLine old = FactLine.read(before);
    FactLine next = FactLine.read(now);
    if (isFact(before) && isFact(now) && gone && fresh && sameSubject(old, next)) {
      return moved(at, section(is, at), old, next, others);
    }
    if (isFact(now) && fresh) {
      String words = plain(next) + " is not in the record of figures";
      return new Difference(How.NEW, at, before, words, others);
    }
    if (isFact(before) && gone) {
      String words = "the record of figures says " + plain(old) + ", which is not so any more";
      return new Difference(How.GONE, at, before, words, others);
    }
    if (was.stream().allMatch(String::isBlank)) {
      return new Difference(How.LAYOUT, at, before, "the record of figures is empty", 0);
    }
    String words =
        at < was.size()
            ? "the record of figures is not as it was written"
            : "the record of figures ends too early";
    return new Difference(How.LAYOUT, at, before, words, others);
  }

  private static boolean isFact(String line) {
    return line.startsWith(" ");
  }

  private static boolean sameSubject(FactLine one, FactLine other) {
    return one.pieces().get(0).equals(other.pieces().get(0));
  }

  private static String plain(FactLine line) {
    return String.join(" ", line.pieces());
  }

  /** The heading above a line. */
  private static String section(List<String> lines, int at) {
    for (int i = at; i >= 0; i--) {
      String line = lines.get(i);
      if (!line.isEmpty() && !isFact(line)) {
        return line;
      }
    }
    return "";
  }

  private static Difference moved(int at, String section, FactLine old, FactLine next, int others) {
    List<String> before = old.pieces();
    List<String> now = next.pieces();
    int piece = 1;
    while (piece < before.size()
        && piece < now.size()
        && before.get(piece).equals(now.get(piece))) {
      piece++;
    }
    boolean limit = section.equals(FiguresRecord.LIMITS);
    boolean both = piece < before.size() && piece < now.size() && (limit || piece == 1);
    String was = both ? before.get(piece) : said(before);
    String is = both ? now.get(piece) : said(now);
    String subject = before.get(0);
    if (limit) {
      subject = piece == 1 ? subject + " against its limit" : "the limit of " + subject;
    }
    String words = subject + " is now " + is + ", the record says " + was;
    return new Difference(How.MOVED, at, was, words, others);
  }

  private static String said(List<String> pieces) {
    return pieces.size() > 1 ? String.join(" ", pieces.subList(1, pieces.size())) : "nothing";
  }

  /** Lines but the first that are in one of the two only; one that moved counts once. */
  private static int others(List<String> was, List<String> is) {
    return Math.max(0, Math.max(onlyIn(was, is), onlyIn(is, was)) - 1);
  }

  private static int onlyIn(List<String> lines, List<String> other) {
    Set<String> there = new HashSet<>(other);
    List<String> alone = new ArrayList<>(lines);
    alone.removeIf(line -> line.isBlank() || there.contains(line));
    return alone.size();
  }
}
