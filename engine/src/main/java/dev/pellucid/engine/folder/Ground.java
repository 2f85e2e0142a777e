package dev.pellucid.engine.folder;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Predicate;

/** The place where a folder of feeds is to begin: what stands there, and what round it. */
public final class Ground {
  private static final String REPOSITORY = ".git";

  private final Path root;

  private Ground(Path root) {
    this.root = root.toAbsolutePath().normalize();
  }

  /** That of a folder, which need not be there. */
  public static Ground at(Path root) {
    return new Ground(root);
  }

  /** Why nothing can begin there, and what to do; empty where it can. */
  public Optional<String> closed() {
    if (!Files.exists(root)) {
      return Optional.of("there is no folder " + root + "; make it, then run the goal again");
    }
    if (!Files.isDirectory(root)) {
      return Optional.of(root + " is a file, not a folder; name a folder");
    }
    return Files.isWritable(root)
        ? Optional.empty()
        : Optional.of(
            "nothing can be written into "
                + root
                + "; see that you may write this folder, or name another");
  }

  /** What it is called. */
  public String name() {
    Path last = root.getFileName();
    return last == null ? "" : last.toString();
  }

  /** The nearest folder above that is one of feeds. */
  public Optional<Path> feedsAbove() {
    return above(folder -> Texts.holds(folder, Texts.SETTINGS));
  }

  /** The root of the repository that it lies in; empty where it is that root, and without one. */
  public Optional<Path> repositoryAbove() {
    return isRepository(root) ? Optional.empty() : above(Ground::isRepository);
  }

  /** Whether it, or a folder above, is the root of a repository. */
  public boolean isInRepository() {
    return isRepository(root) || repositoryAbove().isPresent();
  }

  private static boolean isRepository(Path folder) {
    return Files.exists(folder.resolve(REPOSITORY));
  }

  private Optional<Path> above(Predicate<Path> is) {
    for (Path at = root.getParent(); at != null; at = at.getParent()) {
      if (is.test(at)) {
        return Optional.of(at);
      }
    }
    return Optional.empty();
  }

  /** The first folder on the way to a file in whose place something else stands. */
  public Optional<Path> inTheWay(String path) {
    Path at = root;
    Path folders = root.relativize(root.resolve(path)).getParent();
    if (folders != null) {
      for (Path part : folders) {
        at = at.resolve(part);
        if (Files.exists(at, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(at)) {
          return Optional.of(at);
        }
      }
    }
    return Optional.empty();
  }

  /** Whether something bears a name there. */
  public boolean has(String path) {
    return Files.exists(root.resolve(path), LinkOption.NOFOLLOW_LINKS);
  }

  /**
   * What stands in a file, as far as it can be read as text; nothing where there is none, or one
   * that is longer than any file of feeds.
   *
   * @throws IOException where the disk fails
   */
  public String text(String path) throws IOException {
    Path file = root.resolve(path);
    if (!Files.isRegularFile(file) || !Files.isReadable(file) || Files.size(file) > Texts.LONGEST) {
      return "";
    }
    return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
  }
}
