package dev.pellucid.engine.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where the bytes of a file are. */
interface Stored {
  long size() throws IOException;

  byte[] bytes() throws IOException;

  /** A file of a folder on a disk. */
  record OnDisk(Path file) implements Stored {
    @Override
    public long size() throws IOException {
      return Files.size(file);
    }

    @Override
    public byte[] bytes() throws IOException {
      return Files.readAllBytes(file);
    }
  }

  /** Out of an archive; of one that is too long to be read there are no bytes. */
  final class InMemory implements Stored {
    private final long size;
    private final byte[] bytes;

    InMemory(long size, byte[] bytes) {
      this.size = size;
      this.bytes = bytes;
    }

    @Override
    public long size() {
      return size;
    }

    @Override
    public byte[] bytes() {
      return bytes.clone();
    }
  }
}
