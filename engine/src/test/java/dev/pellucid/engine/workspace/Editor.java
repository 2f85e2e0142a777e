package dev.pellucid.engine.workspace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeSet;

/** Makes up edits of a folder, of every kind of file; the same from the same seed. */
final class Editor {
  private final Random random;
  private final SortedMap<String, String> base;

  /**
   * @param base the folder to which a file is brought back now and then
   */
  Editor(long seed, SortedMap<String, String> base) {
    this.random = new Random(seed);
    this.base = base;
  }

  /** The next edit of a folder. */
  Edit next(SortedMap<String, String> folder) {
    List<String> paths = List.copyOf(folder.keySet());
    if (paths.isEmpty() || random.nextInt(6) == 0) {
      return back(folder);
    }
    String path = favoured(paths);
    String text = folder.getOrDefault(path, "");
    return switch (random.nextInt(14)) {
      case 0, 1, 2 -> Edit.write("change a digit of", path, digit(text));
      case 3 -> Edit.write("drop a line of", path, withoutLine(text));
      case 4 -> Edit.write("repeat a line of", path, twice(text));
      case 5, 6 -> Edit.write("put a remark on top of", path, "# a remark\n" + text);
      case 7 -> Edit.write("swap a word of", path, swapped(text, folder));
      case 8 -> Edit.write("break a line of", path, broken(text));
      case 9 -> Edit.remove(path);
      case 10 -> Edit.move(path, renamed(path), text);
      case 11 -> Edit.write("copy to", renamed(path), text);
      case 12 -> Edit.write("change the day of", path, text.replaceAll("2026-1\\d", "2026-09"));
      default -> Edit.write("empty", path, "");
    };
  }

  /** Every kind of file is taken about as often, however many there are of it. */
  private String favoured(List<String> paths) {
    TreeSet<String> kinds = new TreeSet<>();
    paths.forEach(path -> kinds.add(kind(path)));
    List<String> all = List.copyOf(kinds);
    String kind = all.get(random.nextInt(all.size()));
    List<String> these = paths.stream().filter(path -> kind(path).equals(kind)).toList();
    return these.get(random.nextInt(these.size()));
  }

  private static String kind(String path) {
    int dot = path.lastIndexOf('.');
    return path.endsWith(".yaml")
        ? path.substring(0, Math.max(0, path.indexOf('/')))
        : path.substring(dot);
  }

  /** Brings one file back as it was in the beginning. */
  private Edit back(SortedMap<String, String> folder) {
    List<String> changed = new ArrayList<>();
    base.forEach(
        (path, text) -> {
          if (!text.equals(folder.get(path))) {
            changed.add(path);
          }
        });
    List<String> from = changed.isEmpty() ? List.copyOf(base.keySet()) : changed;
    String path = from.get(random.nextInt(from.size()));
    return Edit.write("bring back", path, base.getOrDefault(path, ""));
  }

  private String digit(String text) {
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i < text.length(); i++) {
      if (Character.isDigit(text.charAt(i))) {
        places.add(i);
      }
    }
    if (places.isEmpty()) {
      return text + "\n";
    }
    int at = places.get(random.nextInt(places.size()));
    return text.substring(0, at) + random.nextInt(10) + text.substring(at + 1);
  }

  private List<String> lines(String text) {
    return new ArrayList<>(List.of(text.split("\n", -1)));
  }

  private String withoutLine(String text) {
    List<String> lines = lines(text);
    lines.remove(random.nextInt(lines.size()));
    return String.join("\n", lines);
  }

  private String twice(String text) {
    List<String> lines = lines(text);
    int at = random.nextInt(lines.size());
    lines.add(at, lines.get(at));
    return String.join("\n", lines);
  }

  private String broken(String text) {
    List<String> lines = lines(text);
    int at = random.nextInt(lines.size());
    lines.set(at, lines.get(at) + " : ][ \"");
    return String.join("\n", lines);
  }

  /** Puts a word of another file, or of nowhere, in the place of one. */
  private String swapped(String text, SortedMap<String, String> folder) {
    List<String> words = words(text);
    List<String> paths = List.copyOf(folder.keySet());
    List<String> others = words(folder.getOrDefault(paths.get(random.nextInt(paths.size())), ""));
    if (words.isEmpty() || others.isEmpty()) {
      return text + " ";
    }
    String old = words.get(random.nextInt(words.size()));
    String fresh =
        random.nextBoolean() ? others.get(random.nextInt(others.size())) : old + old.charAt(0);
    int at = text.indexOf(old);
    return text.substring(0, at) + fresh + text.substring(at + old.length());
  }

  private static List<String> words(String text) {
    return List.of(text.split("[^A-Za-z0-9-]+", -1)).stream()
        .filter(word -> word.length() > 2)
        .toList();
  }

  private String renamed(String path) {
    int slash = path.lastIndexOf('/') + 1;
    Optional<String> place =
        random.nextInt(3) == 0
            ? Optional.of(path.substring(0, slash) + "other/")
            : Optional.empty();
    return place.orElse(path.substring(0, slash)) + random.nextInt(3) + path.substring(slash);
  }
}
