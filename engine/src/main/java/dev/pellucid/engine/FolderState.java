package dev.pellucid.engine;

import dev.pellucid.engine.folder.FeedFolder;
import dev.pellucid.engine.folder.Unpacked;
import java.io.IOException;
import java.nio.file.Path;

/** A folder of feeds in one state: as it lies there, or out of an archive. */
public abstract sealed class FolderState {
  private FolderState() {}

  /** A folder as it lies there. */
  public static FolderState at(Path root) {
    return new There(root);
  }

  /** A folder that was packed. */
  public static FolderState packed(byte[] zip) {
    return new Packed(zip);
  }

  /** What is made of it while it is open. */
  interface Work<T> {
    T with(FeedFolder folder) throws IOException;
  }

  abstract <T> T open(Work<T> work) throws IOException;

  private static final class There extends FolderState {
    private final Path root;

    There(Path root) {
      this.root = root;
    }

    @Override
    <T> T open(Work<T> work) throws IOException {
      return work.with(FeedFolder.list(root, ""));
    }
  }

  private static final class Packed extends FolderState {
    private final byte[] zip;

    Packed(byte[] zip) {
      this.zip = zip.clone();
    }

    @Override
    <T> T open(Work<T> work) throws IOException {
      try (Unpacked unpacked = Unpacked.of(zip)) {
        return work.with(FeedFolder.list(unpacked.root(), ""));
      }
    }
  }
}
