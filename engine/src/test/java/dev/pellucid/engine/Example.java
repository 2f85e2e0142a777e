package dev.pellucid.engine;

import dev.pellucid.engine.folder.Bundled;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The worked example of {@code recipes/}. */
public final class Example {
  /** As it lies there; it takes most of its data from what comes with the program. */
  public static final Path OWN = Path.of("..", "recipes");

  private static final Path WHOLE = makeWhole();

  private Example() {}

  /**
   * The same as a folder that has all its data itself, so that a test may change any of them. It is
   * made once and is not to be written into.
   */
  public static Path whole() {
    return WHOLE;
  }

  private static Path makeWhole() {
    try {
      Path top = Files.createTempDirectory("example");
      Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(top)));
      Path whole = top.resolve("recipes");
      Bundled bundled = Bundled.ofThisVersion();
      for (String place : bundled.places()) {
        if (isNeeded(place)) {
          write(whole.resolve(place), bundled.text(place).orElseThrow());
        }
      }
      try (Stream<Path> files = Files.walk(OWN)) {
        for (Path file : files.filter(Example::isOfFolder).toList()) {
          add(file, whole.resolve(OWN.relativize(file).toString()));
        }
      }
      return whole;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static void delete(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    } catch (IOException left) {
      throw new UncheckedIOException(left);
    }
  }

  /** A profile of a species that it does not feed would be met by no recipe of it. */
  private static boolean isNeeded(String place) {
    return !place.startsWith("limits/tilapia-");
  }

  private static boolean isOfFolder(Path file) {
    return Files.isRegularFile(file) && !OWN.relativize(file).startsWith("target");
  }

  /** Sources and groups are added to those that come along, every other file is as it is. */
  private static void add(Path file, Path to) throws IOException {
    String text = Files.readString(file);
    boolean added =
        List.of("sources.yaml", "groups.yaml").contains(String.valueOf(to.getFileName()));
    Optional<String> under =
        added && Files.exists(to) ? Optional.of(Files.readString(to)) : Optional.empty();
    write(to, under.isPresent() ? text + under.get() : text);
  }

  private static void write(Path to, String text) throws IOException {
    Files.createDirectories(to.getParent());
    Files.writeString(to, text);
  }
}
