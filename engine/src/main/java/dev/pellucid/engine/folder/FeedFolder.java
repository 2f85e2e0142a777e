package dev.pellucid.engine.folder;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.parse.SourceBytes;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The files of a folder by their place in it; links are not followed, {@code target} and folders
 * with a leading dot are passed over. Texts are read one by one when asked for.
 */
public final class FeedFolder {
  private static final Code TOO_LONG = new Code("file-too-long");
  private static final long LONGEST = 1 << 20;
  private static final List<String> DATA =
      List.of("nutrients/", "ingredients/", "species/", "plant/", "practice/", "prices/");
  private static final List<String> DATA_FILES =
      List.of("pellucid.yaml", "sources.yaml", "groups.yaml");

  private final Path root;
  private final String prefix;
  private final SortedMap<String, Path> files = new TreeMap<>();

  private FeedFolder(Path root, String prefix) {
    this.root = root;
    this.prefix = prefix;
  }

  /**
   * Lists a folder.
   *
   * @param prefix what is printed before each path, with its last {@code /}; may be empty
   */
  public static FeedFolder list(Path root, String prefix) throws IOException {
    FeedFolder folder = new FeedFolder(root, prefix);
    Files.walkFileTree(root, folder.new Lister());
    return folder;
  }

  /** Paths below the folder that end so, in order. */
  public List<String> ending(String extension) {
    return files.keySet().stream().filter(path -> path.endsWith(extension)).toList();
  }

  /** Paths of the data files, in order. */
  public List<String> data() {
    return files.keySet().stream()
        .filter(path -> path.endsWith(".yaml"))
        .filter(path -> DATA_FILES.contains(path) || DATA.stream().anyMatch(path::startsWith))
        .toList();
  }

  /** The text of a file; a finding where it cannot be read. */
  public Optional<SourceFile> read(String path, List<Finding> findings) throws IOException {
    Path file = files.get(path);
    if (file == null || Files.size(file) > LONGEST) {
      findings.add(
          Finding.error(
                  TOO_LONG,
                  new SourceFile(prefix + path, "").beginning(),
                  path + " is longer than 1 MiB, which no recipe or data file is")
              .helping("split it, or move it out of the folder"));
      return Optional.empty();
    }
    SourceBytes.Decoded decoded = SourceBytes.decode(prefix + path, Files.readAllBytes(file));
    findings.addAll(decoded.findings());
    return decoded.isUnreadable() ? Optional.empty() : Optional.of(decoded.source());
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
      if (attributes.isRegularFile()) {
        List<String> parts = new ArrayList<>();
        root.relativize(file).forEach(part -> parts.add(part.toString()));
        files.put(String.join("/", parts), file);
      }
      return FileVisitResult.CONTINUE;
    }
  }
}
