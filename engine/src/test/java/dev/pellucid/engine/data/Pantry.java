package dev.pellucid.engine.data;

import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A folder of data files in memory: the small pantry of the tests, with files laid over it. */
public final class Pantry {
  private static final Path PANTRY = Path.of("src", "test", "resources", "pantry");

  private final SortedMap<String, SourceFile> files = new TreeMap<>();

  private static final Pantry FULL = of(PANTRY);

  private Pantry() {}

  /** The pantry as it stands, without a finding. */
  public static Pantry full() {
    Pantry copy = new Pantry();
    copy.files.putAll(FULL.files);
    return copy;
  }

  /** The data files of any folder on disk. */
  public static Pantry of(Path root) {
    Pantry pantry = new Pantry();
    try (Stream<Path> paths = Files.walk(root)) {
      List<Path> yaml = paths.filter(path -> path.toString().endsWith(".yaml")).toList();
      for (Path path : yaml) {
        String relative = root.relativize(path).toString().replace('\\', '/');
        pantry.with(relative, Files.readString(path));
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return pantry;
  }

  /** Lays one file over what is there. */
  public Pantry with(String relative, String text) {
    files.put(relative, new SourceFile(relative, text));
    return this;
  }

  /** With rows of every kind about what may follow what. */
  Pantry withSequence() {
    return with(
        "practice/sequence.yaml",
        """
        rows:
          - after: {holds: animal-meals}
            before: [rainbow-trout]
            flush: {quantity: 25 kg, with: maize, to: kept for feeds that hold them}
            because: some trout feed is sold as made of plants
            source: workshop
          - after: {nutrient: selenium, above: 5 mg/kg}
            before: [other-fish, salmonids]
            never: yes
            because: selenium is toxic in small amounts
            source: workshop
          - after: {trait: trace-salt}
            flush: {quantity: 500 g, with: wheat-middlings, to: into the next feed}
            because: metals spoil vitamins
            source: workshop
        """);
  }

  public Pantry without(String relative) {
    files.remove(relative);
    return this;
  }

  /** Only the files of which the path begins with one of these. */
  public Pantry only(String... starts) {
    files.keySet().removeIf(path -> Arrays.stream(starts).noneMatch(path::startsWith));
    return this;
  }

  public String text(String relative) {
    SourceFile file = files.get(relative);
    if (file == null) {
      throw new IllegalArgumentException("not in the pantry: " + relative);
    }
    return file.text();
  }

  public List<String> paths() {
    return List.copyOf(files.keySet());
  }

  SortedMap<String, SourceFile> files() {
    return new TreeMap<>(files);
  }

  public TablesRead stocked() {
    return TablesReader.read(files, new TreeMap<>());
  }
}
