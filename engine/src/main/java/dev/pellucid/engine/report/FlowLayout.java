package dev.pellucid.engine.report;

import dev.pellucid.engine.report.Flow.Arrow;
import dev.pellucid.engine.report.Flow.Box;
import dev.pellucid.engine.report.Flow.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Where the boxes of a flow stand and where its arrows pass. Each place has a column, and a second
 * one where its boxes hang on each other; arrows of one source that go over a column share a lane
 * there. In a column what is certain stands first, and then what stands beside its sources, so that
 * few arrows cross. Each arrow ends at a height of its own, where its words have room.
 */
final class FlowLayout {
  static final int WIDE = 132;
  static final int GUTTER = 108;
  static final int LINE = 13;
  static final int TOP = 22;
  private static final int PORT = 27;
  private static final int LANE = 12;
  private static final int GAP = 9;
  private static final int LETTERS = 21;
  private static final int MOST_COLUMNS = 2;
  private static final int SWEEPS = 4;

  /** A box or a lane in a column. */
  private static final class Item {
    final List<String> words;
    final boolean certain;
    final int column;
    final List<Item> sources = new ArrayList<>();
    double high;
    double y;

    Item(List<String> words, boolean certain, int column, double high) {
      this.words = words;
      this.certain = certain;
      this.column = column;
      this.high = high;
    }

    double middle() {
      return y + high / 2;
    }
  }

  /** A box at its place. */
  record Placed(Box box, List<String> words, double x, double y, double high) {
    Placed {
      words = List.copyOf(words);
    }
  }

  /** A point of a way. */
  record Point(double x, double y) {}

  /**
   * An arrow on its way.
   *
   * @param lanes the heights at which it passes columns between, from the first of them
   * @param to where it ends
   * @param back whether it does not go from left to right
   */
  record Routed(Arrow arrow, Point from, List<Point> lanes, Point to, boolean back) {
    Routed {
      lanes = List.copyOf(lanes);
    }
  }

  private final Flow flow;
  private final Map<String, Item> items = new HashMap<>();
  private final Map<Arrow, List<Item>> lanes = new HashMap<>();
  private final Map<String, Item> shared = new HashMap<>();
  private final Map<String, List<Arrow>> into = new HashMap<>();
  private final SortedMap<Integer, List<Item>> columns = new TreeMap<>();
  private final SortedMap<Integer, Place> heads = new TreeMap<>();

  FlowLayout(Flow flow) {
    this.flow = flow;
    flow.arrows()
        .forEach(arrow -> into.computeIfAbsent(arrow.to(), none -> new ArrayList<>()).add(arrow));
    int from = 0;
    for (Place place : Place.values()) {
      from = place(place, from);
    }
    flow.arrows().forEach(this::lane);
    for (int i = 0; i < SWEEPS; i++) {
      columns.values().forEach(FlowLayout::stack);
    }
  }

  /** Puts the boxes of a place into columns. */
  private int place(Place place, int from) {
    List<Box> boxes = flow.boxes().stream().filter(box -> box.place() == place).toList();
    if (boxes.isEmpty()) {
      return from;
    }
    Map<String, Integer> deep = depths(boxes);
    heads.put(from, place);
    int most = 0;
    for (Box box : boxes) {
      int depth = deep.getOrDefault(box.key(), 0);
      most = Math.max(most, depth);
      int ports = into.getOrDefault(box.key(), List.of()).size();
      List<String> words = words(box);
      add(
          box.key(),
          new Item(
              words, box.certain(), from + depth, Math.max(words.size() * LINE + 9, ports * PORT)));
    }
    return from + most + 1;
  }

  private void add(String key, Item item) {
    items.put(key, item);
    columns.computeIfAbsent(item.column, none -> new ArrayList<>()).add(item);
  }

  /** How many boxes of the same place lie before each; boxes in a circle are ended at the last. */
  private Map<String, Integer> depths(List<Box> boxes) {
    Map<String, Integer> deep = new HashMap<>();
    boxes.forEach(box -> deep.put(box.key(), 0));
    for (int round = 1; round < MOST_COLUMNS; round++) {
      Map<String, Integer> last = new HashMap<>(deep);
      for (Arrow arrow : flow.arrows()) {
        Integer before = last.get(arrow.from());
        Integer now = deep.get(arrow.to());
        if (before != null && now != null && !arrow.from().equals(arrow.to())) {
          deep.put(arrow.to(), Math.min(MOST_COLUMNS - 1, Math.max(now, before + 1)));
        }
      }
    }
    return deep;
  }

  private void lane(Arrow arrow) {
    Item from = item(arrow.from());
    Item to = item(arrow.to());
    List<Item> way = new ArrayList<>();
    Item last = from;
    for (int column : List.copyOf(columns.keySet())) {
      if (column > from.column && column < to.column) {
        last = lane(arrow, column, last);
        way.add(last);
      }
    }
    if (from.column < to.column) {
      to.sources.add(last);
    }
    lanes.put(arrow, way);
  }

  private Item lane(Arrow arrow, int column, Item before) {
    String key = column + " " + arrow.certain() + " " + arrow.from();
    Item lane = shared.get(key);
    if (lane == null) {
      lane = new Item(List.of(), arrow.certain(), column, LANE);
      lane.sources.add(before);
      columns.computeIfAbsent(column, none -> new ArrayList<>()).add(lane);
      shared.put(key, lane);
    }
    return lane;
  }

  private Item item(String key) {
    Item item = items.get(key);
    if (item == null) {
      throw new IllegalArgumentException("no box of " + key);
    }
    return item;
  }

  /** Orders a column by where its sources stand, and puts it beside them. */
  private static void stack(List<Item> column) {
    column.sort(
        Comparator.<Item, Boolean>comparing(item -> !item.certain)
            .thenComparingDouble(FlowLayout::wished));
    double from = TOP;
    for (Item item : column) {
      item.y = Math.max(from, item.sources.isEmpty() ? from : wished(item) - item.high / 2);
      from = item.y + item.high + GAP;
    }
  }

  private static double wished(Item item) {
    return item.sources.stream().mapToDouble(Item::middle).average().orElse(item.middle());
  }

  /** How wide all is. */
  double wide() {
    return columns.isEmpty() ? WIDE : x(columns.lastKey()) + WIDE;
  }

  double high() {
    return columns.values().stream()
        .flatMap(List::stream)
        .mapToDouble(item -> item.y + item.high)
        .max()
        .orElse(TOP);
  }

  /** The head of each column that has one, by where it begins. */
  SortedMap<Double, String> heads() {
    SortedMap<Double, String> told = new TreeMap<>();
    heads.forEach((column, place) -> told.put(x(column), place.head()));
    return told;
  }

  private static double x(int column) {
    return column * (double) (WIDE + GUTTER);
  }

  List<Placed> boxes() {
    return flow.boxes().stream()
        .map(
            box -> {
              Item item = item(box.key());
              return new Placed(box, item.words, x(item.column), item.y, item.high);
            })
        .toList();
  }

  List<Routed> arrows() {
    List<Routed> routed = new ArrayList<>();
    for (Box box : flow.boxes()) {
      List<Arrow> ports = new ArrayList<>(into.getOrDefault(box.key(), List.of()));
      ports.sort(Comparator.comparingDouble(arrow -> last(arrow).middle()));
      Item to = item(box.key());
      for (int i = 0; i < ports.size(); i++) {
        routed.add(routed(ports.get(i), to, to.y + to.high * (i + 0.5) / ports.size()));
      }
    }
    return routed;
  }

  private Item last(Arrow arrow) {
    List<Item> way = lanes.getOrDefault(arrow, List.of());
    return way.isEmpty() ? item(arrow.from()) : way.get(way.size() - 1);
  }

  private Routed routed(Arrow arrow, Item to, double y) {
    Item from = item(arrow.from());
    boolean back = from.column >= to.column;
    Point start = new Point(x(from.column) + (back ? 0 : WIDE), from.middle());
    List<Point> way =
        lanes.getOrDefault(arrow, List.of()).stream()
            .map(lane -> new Point(x(lane.column), lane.middle()))
            .toList();
    return new Routed(arrow, start, way, new Point(x(to.column), y), back);
  }

  /** Its name and what is told of it, in lines that fit. */
  private static List<String> words(Box box) {
    List<String> lines = new ArrayList<>(broken(box.name()));
    if (!box.more().isEmpty()) {
      lines.addAll(broken(box.more()));
    }
    return lines;
  }

  private static List<String> broken(String words) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String whole : words.split(" ", -1)) {
      String word = whole;
      for (; word.length() > LETTERS; word = word.substring(LETTERS)) {
        if (!line.isEmpty()) {
          lines.add(line.toString());
          line.setLength(0);
        }
        lines.add(word.substring(0, LETTERS));
      }
      if (!line.isEmpty() && line.length() + 1 + word.length() > LETTERS) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
