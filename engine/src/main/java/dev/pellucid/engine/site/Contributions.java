package dev.pellucid.engine.site;

import static dev.pellucid.engine.site.Tables.figure;
import static dev.pellucid.engine.site.Tables.figures;
import static dev.pellucid.engine.site.Tables.words;
import static j2html.TagCreator.details;
import static j2html.TagCreator.summary;

import dev.pellucid.engine.explain.Column;
import dev.pellucid.engine.explain.Column.Cell;
import dev.pellucid.engine.explain.Column.Held;
import dev.pellucid.engine.site.FeedView.Line;
import j2html.tags.DomContent;
import j2html.tags.specialized.TrTag;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What each line brings of all that is limited, a column for each figure, so that a line is named
 * once for some of them. What an ingredient holds, and by which source, stands on its own page and
 * not on that of each feed.
 */
final class Contributions {
  /** How many figures stand side by side, so that a table fits the page. */
  private static final int ABREAST = 6;

  private final Map<String, Integer> places = new HashMap<>();
  private final Map<String, String> titles = new HashMap<>();

  private Contributions(List<Line> lines) {
    for (Line line : lines) {
      places.putIfAbsent(line.name(), places.size());
    }
  }

  /**
   * Tables that are closed until they are asked for.
   *
   * @param lines of the recipe, in whose order they stand
   */
  static List<DomContent> of(List<Column> columns, List<Line> lines) {
    Contributions all = new Contributions(lines);
    List<DomContent> tables = new ArrayList<>();
    for (int from = 0; from < columns.size(); from += ABREAST) {
      tables.add(all.table(columns.subList(from, Math.min(from + ABREAST, columns.size()))));
    }
    return tables;
  }

  private DomContent table(List<Column> columns) {
    List<Tables.Head> heads = new ArrayList<>();
    List<String> names = new ArrayList<>();
    List<DomContent> together = new ArrayList<>();
    heads.add(words("Line"));
    for (Column column : columns) {
      heads.add(figures(column.title() + " " + column.unit()));
      names.add(column.title() + " " + column.figure() + " " + column.unit());
      together.add(figure(column.figure()));
    }
    List<TrTag> rows = new ArrayList<>();
    for (Map.Entry<String, String[]> line : cells(columns).entrySet()) {
      TrTag row = Tables.row(titles.getOrDefault(line.getKey(), line.getKey()));
      for (String brought : line.getValue()) {
        row.with(figure(brought));
      }
      rows.add(row);
    }
    rows.add(Tables.row("Together", together.toArray(DomContent[]::new)).withClass("sum"));
    held(columns, true, rows);
    held(columns, false, rows);
    return details(summary(String.join(", ", names)), Tables.table(heads, rows));
  }

  /**
   * What is judged on one side, and below it what is asked; each in the unit that it is asked in.
   */
  private static void held(List<Column> columns, boolean min, List<TrTag> rows) {
    String end = min ? "the poorest" : "the richest";
    TrTag judged = Tables.row("Judged at " + end);
    TrTag asked = Tables.row("Asked");
    boolean any = false;
    for (Column column : columns) {
      List<String> figures = new ArrayList<>();
      List<String> demands = new ArrayList<>();
      for (Held one : column.held()) {
        if (one.min() == min) {
          figures.add(one.judged());
          demands.add(one.asked());
          any = true;
        }
      }
      judged.with(figure(String.join("; ", figures)));
      asked.with(figure(String.join("; ", demands)));
    }
    if (any) {
      rows.add(judged);
      rows.add(asked);
    }
  }

  /** By line, in the order of the recipe. */
  private Map<String, String[]> cells(List<Column> columns) {
    Map<String, String[]> found = new LinkedHashMap<>();
    for (int i = 0; i < columns.size(); i++) {
      for (Cell part : columns.get(i).cells()) {
        titles.put(part.line(), part.title());
        String[] cells = found.computeIfAbsent(part.line(), none -> empty(columns.size()));
        cells[i] = cells[i].isEmpty() ? cell(part) : cells[i] + " + " + cell(part);
      }
    }
    List<String> lines = new ArrayList<>(found.keySet());
    lines.sort(Comparator.comparingInt(this::place));
    Map<String, String[]> inOrder = new LinkedHashMap<>();
    for (String line : lines) {
      inOrder.put(line, found.getOrDefault(line, new String[0]));
    }
    return inOrder;
  }

  private static String[] empty(int number) {
    String[] cells = new String[number];
    Arrays.fill(cells, "");
    return cells;
  }

  /** What comes through a premix stands where the premix does; a step of the process is last. */
  private int place(String line) {
    int through = line.indexOf(" > ");
    String own = through < 0 ? line : line.substring(0, through);
    return places.getOrDefault(own, places.size());
  }

  private static String cell(Cell part) {
    return part.kept().isEmpty() ? part.brings() : part.brings() + " (" + part.kept() + ")";
  }
}
