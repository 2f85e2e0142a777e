package dev.pellucid.engine.goal;

import dev.pellucid.engine.data.TablesReader;
import dev.pellucid.engine.folder.Bundled;
import dev.pellucid.engine.folder.Past;
import dev.pellucid.engine.folder.Texts;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.concurrent.atomic.AtomicReference;

/** A folder of feeds in one state: as it lies there, or out of an archive. */
public abstract sealed class FolderState {
  private FolderState() {}

  /** A folder as it lies there. */
  public static FolderState at(Path root) {
    return new There(root);
  }

  /** A folder that is packed as tar; nothing of it is written to the disk. */
  public static FolderState packed(Packing packing) {
    return new Packed(packing);
  }

  /** A folder whose texts are in memory. */
  public static FolderState of(Texts texts) {
    return new Held(texts);
  }

  /** Who packs a folder, each time anew. */
  public interface Packing {
    /**
     * Hands a tar archive to who reads it.
     *
     * @throws IOException where it cannot be packed or read
     */
    void into(Reading reading) throws IOException;
  }

  /** Who reads a tar archive, once and to its end. */
  public interface Reading {
    /**
     * Reads it.
     *
     * @throws IOException where it is not whole
     */
    void of(InputStream tar) throws IOException;
  }

  /** What is made of it while it is open. */
  public interface Work<T> {
    T with(Texts folder) throws IOException;
  }

  public abstract <T> T open(Work<T> work) throws IOException;

  /** The same with data under it that come along. */
  public FolderState over(Bundled bundled) {
    return new Over(this, bundled);
  }

  /** The same of a folder whose earlier commits are known. */
  public FolderState knowing(Past past) {
    return new Knowing(this, past);
  }

  private static final class Knowing extends FolderState {
    private final FolderState folder;
    private final Past past;

    Knowing(FolderState folder, Past past) {
      this.folder = folder;
      this.past = past;
    }

    @Override
    public <T> T open(Work<T> work) throws IOException {
      return folder.open(texts -> work.with(texts.knowing(past)));
    }
  }

  private static final class Held extends FolderState {
    private final Texts texts;

    Held(Texts texts) {
      this.texts = texts;
    }

    @Override
    public <T> T open(Work<T> work) throws IOException {
      return work.with(texts);
    }
  }

  private static final class Over extends FolderState {
    private final FolderState folder;
    private final Bundled bundled;

    Over(FolderState folder, Bundled bundled) {
      this.folder = folder;
      this.bundled = bundled;
    }

    @Override
    public <T> T open(Work<T> work) throws IOException {
      return folder.open(texts -> work.with(isOwn(texts) ? texts : texts.over(bundled)));
    }

    private static boolean isOwn(Texts texts) {
      return texts.has(Texts.SETTINGS)
          && texts
              .read(Texts.SETTINGS, new ArrayList<>())
              .filter(TablesReader::hasOwnData)
              .isPresent();
    }
  }

  private static final class There extends FolderState {
    private final Path root;

    There(Path root) {
      this.root = root;
    }

    @Override
    public <T> T open(Work<T> work) throws IOException {
      return work.with(Texts.at(root));
    }
  }

  private static final class Packed extends FolderState {
    private final Packing packing;

    Packed(Packing packing) {
      this.packing = packing;
    }

    @Override
    public <T> T open(Work<T> work) throws IOException {
      AtomicReference<Texts> read = new AtomicReference<>();
      packing.into(tar -> read.set(Texts.packed(tar)));
      Texts folder = read.get();
      if (folder == null) {
        throw new IOException("nothing was packed");
      }
      return work.with(folder);
    }
  }
}
