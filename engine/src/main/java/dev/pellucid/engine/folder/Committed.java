package dev.pellucid.engine.folder;

import java.util.Optional;

/**
 * A file of a commit in memory. Where several commits have the same file, one of these stands for
 * it in all of them, and its text is one object.
 */
public final class Committed {
  private final String path;
  private final Optional<Stored.InMemory> content;

  private Committed(String path, Optional<Stored.InMemory> content) {
    this.path = path;
    this.content = content;
  }

  /** The longest file whose bytes are wanted. */
  public static long longest() {
    return Texts.LONGEST;
  }

  /**
   * A file.
   *
   * @param path below the folder
   * @param bytes none where it is longer than what is read
   */
  public static Committed file(String path, long size, byte[] bytes) {
    return new Committed(path, Optional.of(new Stored.InMemory(size, bytes)));
  }

  /** A link to another place, which is not followed. */
  public static Committed link(String path) {
    return new Committed(path, Optional.empty());
  }

  /** Whether a file would be read for its name and its place. */
  public static boolean isRead(String path) {
    return Names.isReached(path) && Names.isRead(Names.ofFile(path));
  }

  /** Whether what lies in a folder of that name is none of ours. */
  public static boolean isPassedOver(String folder) {
    return Names.isPassedOver(folder);
  }

  void into(Listing listing) {
    if (content.isPresent()) {
      listing.file(path, content.get());
    } else {
      listing.link(path);
    }
  }
}
