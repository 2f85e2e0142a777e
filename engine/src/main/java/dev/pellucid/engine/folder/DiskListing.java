package dev.pellucid.engine.folder;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import org.jspecify.annotations.Nullable;

/** Lists a folder on a disk. Links are not followed. */
final class DiskListing extends SimpleFileVisitor<Path> {
  private final Path root;
  private final Listing listing = new Listing();

  private DiskListing(Path root) {
    this.root = root;
  }

  static Texts of(Path root) throws IOException {
    DiskListing disk = new DiskListing(root);
    Files.walkFileTree(root, disk);
    return disk.listing.texts();
  }

  @Override
  public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
    return Names.isPassedOver(String.valueOf(folder.getFileName())) && !folder.equals(root)
        ? FileVisitResult.SKIP_SUBTREE
        : FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
    String path = relative(file);
    String name = Names.ofFile(path);
    if (name.startsWith(".")) {
      listing.record(path);
      return FileVisitResult.CONTINUE;
    }
    if (attributes.isSymbolicLink()) {
      link(file, path);
    } else if (Listing.isOurs(name) && attributes.isOther()) {
      listing.special(path);
    } else if (attributes.isRegularFile()) {
      listing.file(path, new Stored.OnDisk(file));
    }
    return FileVisitResult.CONTINUE;
  }

  /** What a link that leads nowhere would be, a folder or a file, nobody can say. */
  private void link(Path file, String path) {
    if (Files.isDirectory(file)) {
      listing.linkToFolder(path);
    } else if (Listing.isOurs(Names.ofFile(path)) || !Files.exists(file)) {
      listing.link(path);
    }
  }

  @Override
  public FileVisitResult visitFileFailed(Path file, IOException closed) throws IOException {
    if (file.equals(root)) {
      throw closed;
    }
    if (Files.isDirectory(file)) {
      listing.closedFolder(relative(file));
    } else {
      listing.closed(relative(file));
    }
    return FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult postVisitDirectory(Path folder, @Nullable IOException closed) {
    if (closed != null) {
      listing.closedFolder(relative(folder));
    }
    return FileVisitResult.CONTINUE;
  }

  private String relative(Path file) {
    String separator = root.getFileSystem().getSeparator();
    return root.relativize(file).toString().replace(separator, "/");
  }
}
