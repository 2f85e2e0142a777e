package dev.pellucid.engine.folder;

import dev.pellucid.finding.Finding;
import dev.pellucid.parse.SourceBytes;
import dev.pellucid.text.SourceFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveInputStream;
import org.apache.commons.io.input.BoundedInputStream;
import org.jspecify.annotations.Nullable;

/**
 * The files of a folder by their place in it, in one order on every system. First all are listed;
 * texts are read one by one when they are asked for, so that memory holds what is in flight and not
 * the folder.
 *
 * <p>Links are not followed, {@code target} and folders with a leading dot are passed over. What is
 * wrong with a file itself, its name, its length, its bytes, is a finding, and so is a file that is
 * not read for a slip in its name.
 */
public final class FeedFolder {
  /** The longest file that is read, in bytes: 1 MiB. */
  static final long LONGEST = 1 << 20;

  /** Tar archives are written in whole records of so many bytes, the last one filled up. */
  private static final int TAR_RECORD = 10240;

  private static final String CUT_OFF = "the archive is cut off";

  /** What the library says where an entry ends before its bytes do. */
  private static final String CUT = "Truncated TAR archive";

  private static final List<String> READ =
      List.of(".recipe", ".premix", ".limits", ".figures", ".yaml", ".yml");

  /** A file of these is called by its name, wherever it lies. */
  private static final List<String> NAMED = List.of(".recipe", ".premix", ".limits");

  /** What a feed hangs on. */
  private static final List<String> MEANT = List.of(".recipe", ".premix", ".limits", ".yaml");

  /** What makes a folder one of feeds. */
  public static final String SETTINGS = "pellucid.yaml";

  private final Path root;
  private final String prefix;
  private final SortedMap<String, Stored> files = new TreeMap<>();
  private final List<Finding> clashes = new ArrayList<>();
  private final PassedOver passed;

  private FeedFolder(Path root, String prefix) {
    this.root = root;
    this.prefix = prefix;
    this.passed = new PassedOver(prefix);
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

  /**
   * Lists what a tar archive holds, as if it were unpacked, and keeps it in memory; what would not
   * be read of a folder is not kept.
   *
   * @param prefix as above
   * @throws IOException where the archive is not whole
   */
  public static FeedFolder packed(InputStream tar, String prefix) throws IOException {
    FeedFolder folder = new FeedFolder(Path.of(""), prefix);
    try {
      folder.unpack(tar);
    } catch (IOException broken) {
      // What the stream itself has to say goes on as it is.
      throw CUT.equals(broken.getMessage()) ? new IOException(CUT_OFF, broken) : broken;
    }
    folder.clashes();
    return folder;
  }

  /** This folder with one file as another has it, which is without it where the other has none. */
  public FeedFolder with(String path, FeedFolder other) {
    FeedFolder mixed = new FeedFolder(root, prefix);
    mixed.files.putAll(files);
    mixed.files.remove(path);
    Stored file = other.files.get(path);
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
    return Stream.concat(passed.findings().stream(), clashes.stream()).sorted().toList();
  }

  /**
   * What was found and not read though it could be meant to be: whoever must have seen every file
   * asks for it. A copy is not among them where the file that it is a copy of is there.
   */
  public List<Passed> passedOver() {
    return passed.lost(this::has);
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
    return passed.isLink(path);
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
    Stored file = files.get(path);
    if (file == null) {
      throw new IllegalArgumentException("not a file of this folder: " + path);
    }
    try {
      long bytes = file.size();
      if (bytes > LONGEST) {
        found.add(FolderFindings.tooLong(prefix + path, bytes));
        return Optional.empty();
      }
      SourceBytes.Decoded decoded = SourceBytes.decode(prefix + path, file.bytes());
      found.addAll(decoded.findings());
      return decoded.isUnreadable() ? Optional.empty() : Optional.of(decoded.source());
    } catch (IOException closed) {
      found.add(FolderFindings.unreadable(prefix + path));
      return Optional.empty();
    }
  }

  /**
   * Whether recipes, premixes, profiles and data are exactly those that were kept elsewhere.
   *
   * @param kept what each is called for its content, by its path below the folder
   * @param bears whether a content is called so
   * @throws IOException where one cannot be read
   */
  public boolean isAs(Map<String, String> kept, BiPredicate<byte[], String> bears)
      throws IOException {
    Map<String, String> left = new TreeMap<>();
    kept.forEach((path, name) -> left.put(composed(path), name));
    left.keySet().removeIf(path -> !(isMeant(path) && isReadAt(path)));
    for (Map.Entry<String, Stored> file : files.entrySet()) {
      if (isMeant(file.getKey())) {
        Stored stored = file.getValue();
        String name = left.remove(composed(file.getKey()));
        // What is too long to be read is no part of a feed, so it need not be read here.
        if (name == null || stored.size() > LONGEST || !bears.test(stored.bytes(), name)) {
          return false;
        }
      }
    }
    return left.isEmpty();
  }

  /** Some systems keep letters and their marks apart in names of files. */
  private static String composed(String path) {
    return Normalizer.normalize(path, Normalizer.Form.NFC);
  }

  private static boolean isMeant(String path) {
    return MEANT.stream().anyMatch(path::endsWith);
  }

  private void clashes() {
    Map<String, String> byLetters = new HashMap<>();
    Map<String, String> byName = new HashMap<>();
    for (String path : files.keySet()) {
      if (NAMED.stream().anyMatch(path::endsWith)) {
        String name = path.substring(path.lastIndexOf('/') + 1);
        String other = byName.putIfAbsent(name, path);
        if (other != null) {
          clashes.add(FolderFindings.twice(prefix + path, prefix + other));
        }
      }
      String earlier = byLetters.putIfAbsent(path.toLowerCase(Locale.ROOT), path);
      if (earlier != null) {
        clashes.add(FolderFindings.clash(prefix + path, prefix + earlier));
      }
    }
  }

  private String relative(Path file) {
    List<String> parts = new ArrayList<>();
    root.relativize(file).forEach(part -> parts.add(part.toString()));
    return String.join("/", parts);
  }

  private static boolean isRead(String name) {
    return READ.stream().anyMatch(name::endsWith);
  }

  private static boolean isPassedOver(String folder) {
    return folder.startsWith(".") || folder.equals("target");
  }

  /** Whether a lister would come upon a path below the folder. */
  private static boolean isReadAt(String path) {
    List<String> parts = List.of(path.split("/", -1));
    int last = parts.size() - 1;
    return isRead(path)
        && !parts.get(last).startsWith(".")
        && parts.subList(0, last).stream().noneMatch(FeedFolder::isPassedOver);
  }

  /** Takes from an archive what a lister would find on the disk. */
  private void unpack(InputStream packed) throws IOException {
    BoundedInputStream counted = BoundedInputStream.builder().setInputStream(packed).get();
    TarArchiveInputStream tar = new TarArchiveInputStream(counted, StandardCharsets.UTF_8.name());
    for (TarArchiveEntry entry = tar.getNextEntry(); entry != null; entry = tar.getNextEntry()) {
      if (!entry.isCheckSumOK()) {
        throw new IOException("this is not a tar archive, or it is damaged");
      }
      if (isReadAt(entry.getName())) {
        unpack(entry, tar);
      }
    }
    // What is left is filling; whoever writes it must be able to end.
    counted.transferTo(OutputStream.nullOutputStream());
    if (counted.getCount() == 0 || counted.getCount() % TAR_RECORD != 0) {
      throw new IOException(CUT_OFF);
    }
  }

  private void unpack(TarArchiveEntry entry, InputStream content) throws IOException {
    String path = entry.getName();
    if (entry.isSymbolicLink()) {
      passed.link(path);
    } else if (entry.isFile() && !passed.unseen(path)) {
      long size = entry.getSize();
      byte[] bytes = size > LONGEST ? new byte[0] : content.readNBytes((int) size);
      files.put(path, new Stored.InMemory(size, bytes));
    }
  }

  private final class Lister extends SimpleFileVisitor<Path> {
    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
      return isPassedOver(String.valueOf(folder.getFileName())) && !folder.equals(root)
          ? FileVisitResult.SKIP_SUBTREE
          : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
      String path = relative(file);
      String name = String.valueOf(file.getFileName());
      Optional<NearName> near = isRead(name) ? Optional.empty() : NearName.of(name);
      boolean ours = isRead(name) || near.isPresent();
      if (name.startsWith(".")) {
        return FileVisitResult.CONTINUE;
      }
      if (attributes.isSymbolicLink()) {
        link(file, path, ours);
      } else if (ours && attributes.isOther()) {
        passed.special(path);
      } else if (ours && passed.unseen(path)) {
        return FileVisitResult.CONTINUE;
      } else if (attributes.isRegularFile() && isRead(name)) {
        files.put(path, new Stored.OnDisk(file));
      } else if (attributes.isRegularFile()) {
        near.ifPresent(it -> passed.near(path, it));
      }
      return FileVisitResult.CONTINUE;
    }

    /** What a link that leads nowhere would be, a folder or a file, nobody can say. */
    private void link(Path file, String path, boolean ours) {
      if (Files.isDirectory(file)) {
        passed.linkToFolder(path);
      } else if (ours || !Files.exists(file)) {
        passed.link(path);
      }
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException closed) throws IOException {
      if (file.equals(root)) {
        throw closed;
      }
      if (Files.isDirectory(file)) {
        passed.closedFolder(relative(file));
      } else {
        passed.closed(relative(file));
      }
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult postVisitDirectory(Path folder, @Nullable IOException closed) {
      if (closed != null) {
        passed.closedFolder(relative(folder));
      }
      return FileVisitResult.CONTINUE;
    }
  }
}
