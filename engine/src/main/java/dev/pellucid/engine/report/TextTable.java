package dev.pellucid.engine.report;

import dev.pellucid.engine.report.Block.Column;
import dev.pellucid.engine.report.Block.Holds;
import dev.pellucid.engine.report.Block.Table;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A table in a fixed-width font, never wider than a page: heads are broken between words; where
 * that is not enough, the widest columns of words are narrowed and their cells broken too.
 */
final class TextTable {
  private static final int ROOM = 9;
  private static final int INITIALS = 4;
  private static final int NARROWEST = 10;
  private static final String GAP = "  ";

  private final Table table;
  private final int[] widths;
  private final List<String> lines = new ArrayList<>();

  private TextTable(Table table, int pageWidth) {
    this.table = table;
    this.widths = new int[table.columns().size()];
    Arrays.setAll(widths, this::natural);
    narrow(pageWidth);
    widen(pageWidth);
  }

  static List<String> lines(Table table, int pageWidth) {
    return new TextTable(table, pageWidth).lines();
  }

  private List<String> lines() {
    row(table.columns().stream().map(Column::head).toList(), ' ');
    rule();
    for (int i = 0; i < table.rows().size(); i++) {
      boolean sum = table.total() && i == table.rows().size() - 1;
      if (sum) {
        rule();
      }
      row(table.rows().get(i), sum ? ' ' : '_');
    }
    return lines;
  }

  private int natural(int column) {
    Column told = table.columns().get(column);
    int cells = table.rows().stream().mapToInt(row -> length(row.get(column))).max().orElse(0);
    int longest =
        Arrays.stream(told.head().split(" ", -1)).mapToInt(TextTable::length).max().orElse(0);
    return switch (told.holds()) {
      case WORDS, NAME -> Math.max(length(told.head()), cells);
      case FIGURES, WEIGHT -> Math.max(longest, cells);
      case ROOM -> Math.max(Math.max(ROOM, longest), cells);
      case INITIALS -> Math.max(INITIALS, longest);
    };
  }

  /** Where there is room, a head stands on one line. */
  private void widen(int pageWidth) {
    for (int i = 0; i < widths.length; i++) {
      int more = length(table.columns().get(i).head()) - widths[i];
      widths[i] += more > 0 && total() + more <= pageWidth ? more : 0;
    }
  }

  private int total() {
    return Arrays.stream(widths).sum() + GAP.length() * (widths.length - 1);
  }

  private void narrow(int pageWidth) {
    int over = total() - pageWidth;
    for (; over > 0; over--) {
      int widest =
          IntStream.range(0, widths.length)
              .filter(i -> table.columns().get(i).holds() == Holds.WORDS)
              .filter(i -> widths[i] > NARROWEST)
              .boxed()
              .max(Comparator.comparingInt(i -> widths[i]))
              .orElse(-1);
      if (widest < 0) {
        return;
      }
      widths[widest]--;
    }
  }

  private void row(List<String> cells, char room) {
    List<List<String>> broken = new ArrayList<>();
    for (int i = 0; i < widths.length; i++) {
      boolean write = isRoom(table.columns().get(i).holds()) && cells.get(i).isEmpty();
      broken.add(
          write
              ? List.of(String.valueOf(room).repeat(widths[i]))
              : broken(cells.get(i), widths[i]));
    }
    int height = broken.stream().mapToInt(List::size).max().orElse(1);
    for (int line = 0; line < height; line++) {
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < widths.length; i++) {
        Column column = table.columns().get(i);
        int from = i == 0 ? 0 : height - broken.get(i).size();
        int at = line - from;
        String piece = at >= 0 && at < broken.get(i).size() ? broken.get(i).get(at) : "";
        text.append(i == 0 ? "" : GAP).append(padded(piece, widths[i], isRight(column.holds())));
      }
      lines.add(text.toString());
    }
  }

  private static boolean isRight(Holds holds) {
    return holds == Holds.FIGURES || holds == Holds.WEIGHT;
  }

  private static boolean isRoom(Holds holds) {
    return holds == Holds.ROOM || holds == Holds.INITIALS;
  }

  private void rule() {
    lines.add(Arrays.stream(widths).mapToObj("-"::repeat).collect(Collectors.joining(GAP)));
  }

  /** Between words; a word that is longer than the column is cut. */
  private static List<String> broken(String text, int width) {
    List<String> pieces = new ArrayList<>();
    StringBuilder piece = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      String rest = word;
      if (!piece.isEmpty() && length(piece.toString()) + 1 + length(rest) > width) {
        pieces.add(piece.toString());
        piece.setLength(0);
      }
      piece.append(piece.isEmpty() ? "" : " ");
      while (length(rest) > width) {
        int cut = rest.offsetByCodePoints(0, width);
        pieces.add(rest.substring(0, cut));
        rest = rest.substring(cut);
      }
      piece.append(rest);
    }
    pieces.add(piece.toString());
    return pieces;
  }

  static String padded(String text, int width, boolean right) {
    String room = " ".repeat(Math.max(0, width - length(text)));
    return right ? room + text : text + room;
  }

  static int length(String text) {
    return text.codePointCount(0, text.length());
  }
}
