package dev.pellucid.engine.folder;

import dev.pellucid.finding.Finding;
import dev.pellucid.parse.SourceBytes;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The files of a folder by their place in it, in one order on every system. First all are listed;
 * texts are read one by one when they are asked for, so that memory holds what is in flight and not
 * the folder.
 *
 * <p>Links are not followed, {@code target} and folders with a leading dot are passed over. What is
 * wrong with a file itself, its name, its length, its bytes, is a finding.
 */
public final class FeedFolder {
  /** The longest file that is read, in bytes: 1 MiB. */
  static final long LONGEST = 1 << 20;

  private static final List<String> READ =
      List.of(".recipe", ".premix", ".limits", ".figures", ".yaml", ".yml");

  /** A file of these is called by its name, wherever it lies. */
  private static final List<String> NAMED = List.of(".recipe", ".premix", ".limits");

  /** What makes a folder one of feeds. */
  public static final String SETTINGS = "pellucid.yaml";

  private final Path root;
  private final String prefix;
  private final SortedMap<String, Path> files = new TreeMap<>();
  private final List<Finding> findings = new ArrayList<>();

  private FeedFolder(Path root, String prefix) {
    this.root = root;
    this.prefix = prefix;
  }

  /**
   * Lists a folder.
   *
   * @param prefix what is printed before each path, with its last {@code /}; may be empty
   * @throws IOException where the folder itself cannot be opened
   */
  public static FeedFolder list(Path root, String prefix) throws IOException {
    FeedFolder folder = new FeedFolder(root, prefix);
    Files.walkFileTree(root, folder.new Lister());
    folder.clashes();
    return folder;
  }

  /** This folder with one file as another has it, which is without it where the other has none. */
  public FeedFolder with(String path, FeedFolder other) {
    FeedFolder mixed = new FeedFolder(root, prefix);
    mixed.files.putAll(files);
    mixed.files.remove(path);
    Path file = other.files.get(path);
    if (file != null) {
      mixed.files.put(path, file);
    }
    return mixed;
  }

  /** Whether there is a file of that name right in a folder. */
  public static boolean holds(Path root, String name) {
    return Files.isRegularFile(root.resolve(name));
  }

  /** What was wrong with names and links. */
  public List<Finding> findings() {
    return findings.stream().sorted().toList();
  }

  /** Paths below the folder of every file that is read, in order. */
  public List<String> paths() {
    return List.copyOf(files.keySet());
  }

  /** Whether a path below the folder is a file that is read. */
  public boolean has(String path) {
    return files.containsKey(path);
  }

  /** A path below the folder as findings print it. */
  public String printed(String path) {
    return prefix + path;
  }

  /** Whether a link to another place was found there and passed over. */
  public boolean isLink(String path) {
    return findings.stream()
        .filter(finding -> finding.code().equals(FolderFindings.LINK))
        .anyMatch(finding -> finding.span().file().path().equals(printed(path)));
  }

  /** Paths below the folder that end so, in order. */
  public List<String> ending(String extension) {
    return files.keySet().stream().filter(path -> path.endsWith(extension)).toList();
  }

  /** Paths of every YAML file, in order; whether its place means something is for others to say. */
  public List<String> data() {
    return files.keySet().stream()
        .filter(path -> path.endsWith(".yaml") || path.endsWith(".yml"))
        .toList();
  }

  /** The text of a listed file; a finding where it cannot be read. */
  public Optional<SourceFile> read(String path, List<Finding> found) {
    Path file = files.get(path);
    if (file == null) {
      throw new IllegalArgumentException("not a file of this folder: " + path);
    }
    try {
      long bytes = Files.size(file);
      if (bytes > LONGEST) {
        found.add(FolderFindings.tooLong(prefix + path, bytes));
        return Optional.empty();
      }
      SourceBytes.Decoded decoded = SourceBytes.decode(prefix + path, Files.readAllBytes(file));
      found.addAll(decoded.findings());
      return decoded.isUnreadable() ? Optional.empty() : Optional.of(decoded.source());
    } catch (IOException closed) {
      found.add(FolderFindings.unreadable(prefix + path));
      return Optional.empty();
    }
  }

  /** Writes a text as UTF-8, its line ends as they are, into folders that are made for it. */
  public static void write(Path file, String text) throws IOException {
    Path parent = file.toAbsolutePath().getParent();
    if (parent != null) {
      Files.createDirectories(parent);
    }
    Files.write(file, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Takes a file away that one of our own goals wrote, if it is there. */
  public static void delete(Path file) throws IOException {
    Files.deleteIfExists(file);
  }

  private void clashes() {
    Map<String, String> byLetters = new HashMap<>();
    Map<String, String> byName = new HashMap<>();
    for (String path : files.keySet()) {
      if (NAMED.stream().anyMatch(path::endsWith)) {
        String name = path.substring(path.lastIndexOf('/') + 1);
        String other = byName.putIfAbsent(name, path);
        if (other != null) {
          findings.add(FolderFindings.twice(prefix + path, prefix + other));
        }
      }
      String earlier = byLetters.putIfAbsent(path.toLowerCase(Locale.ROOT), path);
      if (earlier != null) {
        findings.add(FolderFindings.clash(prefix + path, prefix + earlier));
      }
    }
  }

  private String relative(Path file) {
    List<String> parts = new ArrayList<>();
    root.relativize(file).forEach(part -> parts.add(part.toString()));
    return String.join("/", parts);
  }

  private static boolean isRead(String path) {
    return READ.stream().anyMatch(path::endsWith);
  }

  private final class Lister extends SimpleFileVisitor<Path> {
    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
      String name = String.valueOf(folder.getFileName());
      boolean passedOver = name.startsWith(".") || name.equals("target");
      return passedOver && !folder.equals(root)
          ? FileVisitResult.SKIP_SUBTREE
          : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
      String path = relative(file);
      boolean hidden = String.valueOf(file.getFileName()).startsWith(".");
      if (attributes.isSymbolicLink() && !hidden && Files.isDirectory(file)) {
        findings.add(FolderFindings.linkToFolder(prefix + path, prefix + SETTINGS));
      } else if (attributes.isSymbolicLink() && !hidden && isRead(path)) {
        findings.add(FolderFindings.link(prefix + path));
      } else if (attributes.isRegularFile()
          && !hidden
          && isRead(path)
          && FolderFindings.hasHidden(path)) {
        findings.add(FolderFindings.control(prefix + path));
      } else if (attributes.isRegularFile() && !hidden && isRead(path)) {
        files.put(path, file);
      }
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException closed) throws IOException {
      if (file.equals(root)) {
        throw closed;
      }
      findings.add(
          Files.isDirectory(file)
              ? FolderFindings.unreadableFolder(prefix + relative(file), prefix + SETTINGS)
              : FolderFindings.unreadable(prefix + relative(file)));
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult postVisitDirectory(Path folder, @Nullable IOException closed) {
      if (closed != null) {
        findings.add(FolderFindings.unreadableFolder(prefix + relative(folder), prefix + SETTINGS));
      }
      return FileVisitResult.CONTINUE;
    }
  }
}
