package dev.pellucid.engine.folder;

import dev.pellucid.text.BundledPath;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Data that no user should have to own, and that come with this program: nutrients, species,
 * profiles, ingredients, law, practice, label rules, with their sources. They lie under the texts
 * of a folder; a file of the same name in the folder takes the place of one of these.
 */
public final class Bundled {
  /** Nothing comes along: the folder has all its data itself. */
  public static final Bundled NONE = new Bundled(new TreeMap<>());

  /** Where they lie in a jar, and the list of their paths there. */
  private static final String PLACE = "/dev/pellucid/bundled/";

  private static final String INDEX = "index.txt";

  private final SortedMap<String, Stored.InMemory> files;

  private Bundled(SortedMap<String, Stored.InMemory> files) {
    this.files = Collections.unmodifiableSortedMap(files);
  }

  /** Where files of another version are read. */
  @FunctionalInterface
  public interface Place {
    /**
     * Opens a file by its path.
     *
     * @return empty where there is none
     * @throws IOException where it cannot be read
     */
    Optional<InputStream> open(String path) throws IOException;
  }

  /** Those of this version. */
  public static Bundled ofThisVersion() {
    try {
      return read(path -> Optional.ofNullable(Bundled.class.getResourceAsStream("/" + path)));
    } catch (IOException torn) {
      throw new UncheckedIOException(torn);
    }
  }

  /**
   * Those of a version, out of its jar.
   *
   * @return none where it has no such data
   * @throws IOException where the jar is not whole
   */
  public static Bundled read(Place jar) throws IOException {
    SortedMap<String, Stored.InMemory> files = new TreeMap<>();
    for (String path : text(jar, INDEX).lines().toList()) {
      files.put(BundledPath.of(path), Stored.InMemory.of(text(jar, path)));
    }
    return new Bundled(files);
  }

  private static String text(Place jar, String path) throws IOException {
    Optional<InputStream> opened = jar.open(PLACE.substring(1) + path);
    if (opened.isEmpty()) {
      if (path.equals(INDEX)) {
        return "";
      }
      throw new IOException("the data that come with the program lack " + path);
    }
    try (InputStream in = opened.get()) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** One that is there, by its place below a folder. */
  SourceFile source(String below) {
    return new SourceFile(
        BundledPath.of(below), text(below).orElseThrow(() -> new IllegalArgumentException(below)));
  }

  /** The text of one, by its place below a folder. */
  public Optional<String> text(String below) {
    return Optional.ofNullable(files.get(BundledPath.of(below)))
        .map(file -> new String(file.bytes(), StandardCharsets.UTF_8));
  }

  /** The places that they would have below a folder, in order. */
  public List<String> places() {
    return files.keySet().stream().map(BundledPath::below).toList();
  }

  /** Files by their paths, each with its mark. */
  SortedMap<String, Stored.InMemory> files() {
    return files;
  }
}
