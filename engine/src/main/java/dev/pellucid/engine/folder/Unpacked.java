package dev.pellucid.engine.folder;

import java.io.ByteArrayInputStream;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.jspecify.annotations.Nullable;

/** A zip archive as a temporary folder, which goes away when it is closed. */
public final class Unpacked implements Closeable {
  private final Path root;

  private Unpacked(Path root) {
    this.root = root;
  }

  /**
   * Unpacks; an entry that would lie outside the folder is left out.
   *
   * @throws IOException where the disk fails
   */
  public static Unpacked of(byte[] zip) throws IOException {
    Unpacked unpacked = new Unpacked(Files.createTempDirectory("pellucid"));
    try (ZipInputStream entries = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (ZipEntry entry = entries.getNextEntry(); entry != null; entry = entries.getNextEntry()) {
        Path file = unpacked.root.resolve(entry.getName()).normalize();
        Path folder = file.getParent();
        if (!entry.isDirectory() && folder != null && folder.startsWith(unpacked.root)) {
          Files.createDirectories(folder);
          Files.copy(entries, file);
        }
      }
    }
    return unpacked;
  }

  public Path root() {
    return root;
  }

  @Override
  public void close() throws IOException {
    Files.walkFileTree(
        root,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path folder, @Nullable IOException broken)
              throws IOException {
            Files.delete(folder);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
