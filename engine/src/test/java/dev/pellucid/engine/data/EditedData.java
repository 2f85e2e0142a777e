package dev.pellucid.engine.data;

import dev.pellucid.text.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The data files of a folder under an editor that makes one edit after the other: digits change,
 * lines go and double, files break, move, double, are closed, vanish and come back.
 */
final class EditedData {
  private final SortedMap<String, SourceFile> good;
  private final SortedMap<String, SourceFile> texts;
  private final SortedMap<String, SourceFile> closed = new TreeMap<>();
  private final Random random;

  EditedData(SortedMap<String, SourceFile> good, long seed) {
    this.good = good;
    this.texts = new TreeMap<>(good);
    this.random = new Random(seed);
  }

  SortedMap<String, SourceFile> texts() {
    return texts;
  }

  SortedMap<String, SourceFile> closed() {
    return closed;
  }

  /** Makes one edit; half of them fix what was done before, so that much stays right. */
  String edit() {
    if (random.nextInt(2) == 0 && fix()) {
      return "fixed";
    }
    String path = anyPath();
    SourceFile file = texts.get(path);
    if (file == null || random.nextInt(12) == 0) {
      return "moved " + path + move(path);
    }
    String text = changed(file.text());
    texts.put(path, new SourceFile(path, text));
    return "changed " + path;
  }

  /** One file as it was at first, the very same object. */
  private boolean fix() {
    TreeSet<String> away = new TreeSet<>(closed.keySet());
    away.addAll(texts.keySet());
    away.addAll(good.keySet());
    away.removeIf(path -> good.get(path) == texts.get(path));
    if (away.isEmpty()) {
      return false;
    }
    String path = List.copyOf(away).get(random.nextInt(away.size()));
    closed.remove(path);
    texts.remove(path);
    if (good.containsKey(path)) {
      texts.put(path, good.get(path));
    }
    return true;
  }

  private String move(String path) {
    SourceFile file = texts.getOrDefault(path, new SourceFile(path, ""));
    String other =
        path.replaceFirst("([^/]*)\\.yaml$", random.nextBoolean() ? "a/$1.yaml" : "$1-x.yaml");
    switch (random.nextInt(4)) {
      case 0 -> texts.remove(path);
      case 1 -> {
        texts.remove(path);
        closed.put(path, new SourceFile(path, ""));
      }
      case 2 -> texts.put(other, new SourceFile(other, file.text()));
      default -> {
        texts.remove(path);
        texts.put(other, new SourceFile(other, file.text()));
      }
    }
    return " to " + other;
  }

  /** Every folder as often as every other, however many files it has. */
  private String anyPath() {
    TreeSet<String> folders = new TreeSet<>();
    good.keySet().forEach(path -> folders.add(folder(path)));
    String folder = List.copyOf(folders).get(random.nextInt(folders.size()));
    List<String> paths = good.keySet().stream().filter(it -> folder(it).equals(folder)).toList();
    return paths.get(random.nextInt(paths.size()));
  }

  private static String folder(String path) {
    return path.contains("/") ? path.substring(0, path.indexOf('/')) : "";
  }

  private String changed(String text) {
    List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
    int at = random.nextInt(lines.size());
    String line = lines.get(at);
    switch (random.nextInt(7)) {
      case 0, 1 -> lines.set(at, line.replaceFirst("[0-9]", String.valueOf(random.nextInt(10))));
      case 2 -> lines.remove(at);
      case 3 -> lines.add(at, line);
      case 4 -> lines.set(at, line + " [");
      case 5 -> lines.add(0, "# a remark");
      default -> lines.set(at, line.replaceFirst("([a-z])([a-z]+)$", "$2$1"));
    }
    return String.join("\n", lines);
  }
}
