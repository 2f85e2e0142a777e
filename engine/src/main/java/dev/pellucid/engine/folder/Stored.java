package dev.pellucid.engine.folder;

import dev.pellucid.parse.SourceBytes;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Where the bytes of a file are. */
interface Stored {
  long size() throws IOException;

  byte[] bytes() throws IOException;

  /**
   * Its text.
   *
   * @param path of the file below the folder, each time the same
   */
  SourceBytes.Decoded decoded(String path) throws IOException;

  /** The same in memory; what cannot be read stays as it is. */
  Stored held();

  /** What it is called for its content; see {@link ContentDigest}. */
  default String digest() throws IOException {
    return ContentDigest.of(bytes());
  }

  /** A file of a folder on a disk; its text is read anew each time and kept nowhere. */
  record OnDisk(Path file) implements Stored {
    @Override
    public long size() throws IOException {
      return Files.size(file);
    }

    @Override
    public byte[] bytes() throws IOException {
      return Files.readAllBytes(file);
    }

    @Override
    public SourceBytes.Decoded decoded(String path) throws IOException {
      return SourceBytes.decode(path, bytes());
    }

    @Override
    public Stored held() {
      try {
        long bytes = size();
        return new InMemory(bytes, bytes > Texts.LONGEST ? new byte[0] : bytes());
      } catch (IOException closed) {
        return this;
      }
    }
  }

  /**
   * Out of an archive or an editor, its text the same object each time; of one that is too long to
   * be read there are no bytes.
   */
  final class InMemory implements Stored {
    private final long size;
    private final byte[] bytes;
    private SourceBytes.@Nullable Decoded decoded;
    private @Nullable String digest;

    InMemory(long size, byte[] bytes) {
      this.size = size;
      this.bytes = bytes;
    }

    /** A text as it would be saved. */
    static InMemory of(String text) {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      return new InMemory(bytes.length, bytes.length > Texts.LONGEST ? new byte[0] : bytes);
    }

    @Override
    public long size() {
      return size;
    }

    @Override
    public byte[] bytes() {
      return bytes.clone();
    }

    @Override
    public synchronized SourceBytes.Decoded decoded(String path) {
      SourceBytes.Decoded made = decoded;
      if (made == null) {
        made = SourceBytes.decode(path, bytes);
        decoded = made;
      }
      return made;
    }

    @Override
    public Stored held() {
      return this;
    }

    @Override
    public synchronized String digest() {
      String made = digest;
      if (made == null) {
        made = ContentDigest.of(bytes);
        digest = made;
      }
      return made;
    }

    /** Whether another holds the same text. */
    boolean isLike(InMemory other) {
      return size == other.size && Arrays.equals(bytes, other.bytes);
    }
  }
}
