package dev.pellucid.engine.folder;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * A folder that files are written into: the only door through which any goal writes. A file is
 * written whole beside its place, under a hidden name that no reader takes for a file of feeds, and
 * then moved over it in one step. So whatever happens, a full disk or a killed run, the old file is
 * there or the new one. A move that cannot be made in one step is not made.
 *
 * <p>Several threads may write at a time, each a file of its own.
 *
 * <p>Nothing is written or deleted through a link below the folder. What a killed run left beside a
 * file is taken away by a later one, once it is so old that no run can still be writing it.
 */
public final class Outputs {
  private static final String BESIDE = ".pellucid-";
  private static final String HALF = ".half";
  private static final int MOST_BESIDE = 1000;
  private static final Duration LEFT_BEHIND = Duration.ofMinutes(10);

  /** How much of a file is read to know whose it is. */
  private static final int HEAD = 4096;

  /** How many bytes go to the disk at once. */
  private static final int AT_ONCE = 1 << 16;

  private static final Set<PosixFilePermission> OWNER_ONLY =
      Set.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);

  private final Path root;
  private final boolean lasting;
  private final Set<Path> swept = ConcurrentHashMap.newKeySet();

  private Outputs(Path root, boolean lasting) {
    this.root = root.toAbsolutePath().normalize();
    this.lasting = lasting;
  }

  /** For what the next run makes anew: reports, sheets, pages. */
  public static Outputs into(Path root) {
    return new Outputs(root, false);
  }

  /** For files that a person keeps: they are on the disk before the old ones go. */
  public static Outputs over(Path root) {
    return new Outputs(root, true);
  }

  /**
   * Refuses a folder to write into that lies below a project by its name and, through a link, in
   * truth outside of it or in a hidden folder. One that has its name outside was chosen by a
   * person.
   *
   * @param remedy what to do instead of taking the link away
   * @throws WriteFailure where it leads out
   */
  public static void refuseLinkOut(Path project, Path to, String remedy) throws IOException {
    Path base = project.toAbsolutePath().normalize();
    Path named = to.toAbsolutePath().normalize();
    if (named.startsWith(base)) {
      refuseLinkOut(base, base.relativize(named), remedy, true);
    }
  }

  private static void refuseLinkOut(Path base, Path below, String remedy, boolean notHidden)
      throws IOException {
    Path real = base.toRealPath();
    Path at = base;
    Path named = real;
    for (Path part : below) {
      at = at.resolve(part);
      named = named.resolve(part);
      if (!Files.exists(at, LinkOption.NOFOLLOW_LINKS)) {
        return;
      }
      if (!Files.exists(at)) {
        throw WriteFailure.link(at);
      }
      Path led = at.toRealPath();
      boolean elsewhere = !led.equals(named);
      if (!led.startsWith(real) || (elsewhere && notHidden && isHidden(real.relativize(led)))) {
        throw WriteFailure.leadsOut(at, led, remedy);
      }
      named = led;
    }
  }

  private static boolean isHidden(Path below) {
    for (Path part : below) {
      if (part.toString().startsWith(".")) {
        return true;
      }
    }
    return false;
  }

  /** What stands in a file, written piece by piece, so that nobody holds all of it. */
  public interface Content {
    /** Writes it as UTF-8 and leaves the stream open. */
    void writeTo(OutputStream out) throws IOException;
  }

  /**
   * Writes a text as UTF-8, its line ends as they are, as any other content.
   *
   * @param path below the folder
   * @throws WriteFailure where it cannot; the old file is there unchanged
   */
  public void write(String path, String text) throws IOException {
    write(path, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
  }

  /**
   * Writes a file into folders that are made for it. One that was there keeps its permissions.
   *
   * @param path below the folder
   * @throws WriteFailure where it cannot; the old file is there unchanged
   */
  public void write(String path, Content content) throws IOException {
    Path file = place(path);
    try {
      Path folder = folderOf(file);
      Files.createDirectories(folder);
      replace(file, folder, content);
    } catch (WriteFailure told) {
      throw told;
    } catch (IOException broken) {
      throw WriteFailure.of(file, broken);
    }
  }

  /**
   * Writes a text as UTF-8 into a file that is not there yet. Whatever bears the name already, a
   * link to nowhere too, is left as it is, even where another program makes it meanwhile.
   *
   * @param path below the folder
   * @return whether it was written; not where something bears the name
   * @throws WriteFailure where it cannot be
   */
  public boolean writeNew(String path, String text) throws IOException {
    if (isTaken(root.resolve(path))) {
      return false;
    }
    Path file = place(path);
    try {
      Path folder = folderOf(file);
      Files.createDirectories(folder);
      return appear(file, folder, text.getBytes(StandardCharsets.UTF_8));
    } catch (WriteFailure told) {
      throw told;
    } catch (IOException broken) {
      throw WriteFailure.of(file, broken);
    }
  }

  private boolean appear(Path file, Path folder, byte[] bytes) throws IOException {
    Path half = begin(folder);
    try {
      fill(half, out -> out.write(bytes));
      giveNewName(half, file);
    } catch (FileAlreadyExistsException taken) {
      return false;
    } finally {
      forget(half);
    }
    if (lasting) {
      settle(folder);
    }
    return true;
  }

  /** A second name is refused where one is taken; a move looks first and then moves. */
  private static void giveNewName(Path half, Path file) throws IOException {
    try {
      Files.createLink(file, half);
    } catch (FileAlreadyExistsException taken) {
      throw taken;
    } catch (IOException | UnsupportedOperationException notOnThisDisk) {
      Files.move(half, file);
    }
  }

  private static boolean isTaken(Path file) {
    return Files.exists(file, LinkOption.NOFOLLOW_LINKS);
  }

  /**
   * Takes a file away, if it is there and one of our own.
   *
   * @param path below the folder
   * @param ours tells by the beginning of its text
   * @return whether no such file is there now; a stranger's is left
   * @throws WriteFailure where it cannot be deleted
   */
  public boolean delete(String path, Predicate<String> ours) throws IOException {
    Path file = place(path);
    if (!Files.exists(file)) {
      return true;
    }
    if (!Files.isRegularFile(file) || !ours.test(head(file))) {
      return false;
    }
    try {
      Files.deleteIfExists(file);
      return true;
    } catch (IOException broken) {
      throw WriteFailure.of(file, broken);
    }
  }

  /** Where a file of it is, or would be. */
  public Path path(String path) {
    return root.resolve(path);
  }

  /** Names of the files that lie in the folder itself, sorted; none where there is no folder. */
  public List<String> names() throws IOException {
    if (!Files.isDirectory(root)) {
      return List.of();
    }
    try (Stream<Path> there = Files.list(root)) {
      return there
          .filter(Files::isRegularFile)
          .map(file -> file.getFileName().toString())
          .sorted()
          .toList();
    } catch (UncheckedIOException broken) {
      throw WriteFailure.of(root, new IOException(broken));
    } catch (IOException broken) {
      throw WriteFailure.of(root, broken);
    }
  }

  private Path place(String path) throws IOException {
    Path file = root.resolve(path).normalize();
    if (!file.startsWith(root) || file.equals(root)) {
      throw new IllegalArgumentException("not a path below the folder: " + path);
    }
    if (Files.exists(root)) {
      String remedy = "name another folder";
      Path folder = root.relativize(folderOf(file));
      if (!folder.toString().isEmpty()) {
        refuseLinkOut(root, folder, remedy, false);
      }
    }
    if (Files.isSymbolicLink(file)) {
      throw WriteFailure.link(file);
    }
    return file;
  }

  private static Path folderOf(Path file) {
    Path folder = file.getParent();
    if (folder == null) {
      throw new IllegalArgumentException("not a file: " + file);
    }
    return folder;
  }

  private static String head(Path file) throws IOException {
    try (FileChannel in = FileChannel.open(file, StandardOpenOption.READ)) {
      ByteBuffer bytes = ByteBuffer.allocate(HEAD);
      while (bytes.hasRemaining() && in.read(bytes) >= 0) {
        // Until it is full or the file ends.
      }
      return new String(bytes.array(), 0, bytes.position(), StandardCharsets.UTF_8);
    }
  }

  private void replace(Path file, Path folder, Content content) throws IOException {
    boolean there = Files.exists(file);
    if (there && !Files.isWritable(file)) {
      throw new AccessDeniedException(file.toString());
    }
    Path half = begin(folder);
    try {
      if (there) {
        closeToOthers(half);
      }
      fill(half, content);
      if (there) {
        keepRights(file, half);
      }
      Files.move(half, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException | RuntimeException broken) {
      forget(half);
      throw broken;
    }
    if (lasting) {
      settle(folder);
    }
  }

  private void fill(Path half, Content content) throws IOException {
    try (FileChannel written = FileChannel.open(half, StandardOpenOption.WRITE)) {
      OutputStream out = new BufferedOutputStream(Channels.newOutputStream(written), AT_ONCE);
      content.writeTo(out);
      out.flush();
      if (lasting) {
        written.force(true);
      }
    }
  }

  /** An empty file that nobody else is writing. */
  private Path begin(Path folder) throws IOException {
    for (int i = 0; i < MOST_BESIDE; i++) {
      try {
        Path half = Files.createFile(folder.resolve(BESIDE + i + HALF));
        if (swept.add(folder)) {
          sweep(folder, half);
        }
        return half;
      } catch (FileAlreadyExistsException taken) {
        // By another run that is going on, or by one that was killed.
      }
    }
    throw WriteFailure.crowded(folder);
  }

  /** Ages are taken from the disk, which need not agree with a clock. */
  private static void sweep(Path folder, Path half) {
    try (DirectoryStream<Path> beside = Files.newDirectoryStream(folder, BESIDE + "*" + HALF)) {
      Instant old = Files.getLastModifiedTime(half).toInstant().minus(LEFT_BEHIND);
      for (Path left : beside) {
        if (isOlder(left, FileTime.from(old))) {
          forget(left);
        }
      }
    } catch (IOException | DirectoryIteratorException stay) {
      // A folder may be written and not listed. What is left there is hidden and harmless.
    }
  }

  private static boolean isOlder(Path left, FileTime old) {
    try {
      return Files.getLastModifiedTime(left, LinkOption.NOFOLLOW_LINKS).compareTo(old) < 0;
    } catch (IOException gone) {
      return false;
    }
  }

  private static void forget(Path half) {
    try {
      Files.deleteIfExists(half);
    } catch (IOException stays) {
      // Hidden and harmless; what failed before it is what a person must know.
    }
  }

  private static void closeToOthers(Path half) throws IOException {
    PosixFileAttributeView rights =
        Files.getFileAttributeView(half, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
    if (rights != null) {
      rights.setPermissions(OWNER_ONLY);
    }
  }

  private static void keepRights(Path file, Path half) throws IOException {
    PosixFileAttributeView old = Files.getFileAttributeView(file, PosixFileAttributeView.class);
    PosixFileAttributeView its = Files.getFileAttributeView(half, PosixFileAttributeView.class);
    if (old == null || its == null) {
      return;
    }
    PosixFileAttributes kept = old.readAttributes();
    PosixFileAttributes made = its.readAttributes();
    try {
      if (!kept.group().equals(made.group())) {
        its.setGroup(kept.group());
      }
      if (!kept.owner().equals(made.owner())) {
        its.setOwner(kept.owner());
      }
    } catch (IOException notAllowed) {
      // Whoever writes a file of another owns the new one, as with any editor that does so.
    }
    its.setPermissions(kept.permissions());
  }

  /** Where the system can: the move itself on the disk. */
  private static void settle(Path folder) {
    try (FileChannel opened = FileChannel.open(folder, StandardOpenOption.READ)) {
      opened.force(true);
    } catch (IOException notHere) {
      // Some systems open no folder; the file is whole either way.
    }
  }
}
