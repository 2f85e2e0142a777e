package dev.pellucid.engine.folder;

import dev.pellucid.finding.Finding;
import dev.pellucid.text.RecordName;
import java.util.Optional;
import java.util.Set;

/**
 * A file or folder that was found, could be meant to be read, and was not.
 *
 * @param path below the folder; empty for the folder itself
 * @param finding what was said of it
 */
public record Passed(String path, Why why, Finding finding) {
  boolean is(String path, Why why) {
    return this.why == why && this.path.equals(path);
  }

  /** Of a copy, the path of what it is a copy of. */
  Optional<String> original() {
    String name = Names.ofFile(path);
    String folder = path.substring(0, path.length() - name.length());
    return why == Why.COPY ? NearName.of(name).map(it -> folder + it.meant()) : Optional.empty();
  }

  /** The batch with whose number its name begins. */
  private Optional<RecordName> batch() {
    return RecordName.of(Names.ofFile(path));
  }

  /** Whether it may be a batch record or a file of lots by its name, wherever it lies. */
  public boolean mayBeOfStore() {
    return why == Why.LOTS || batch().isPresent();
  }

  /**
   * Whether nothing is lost by it: the file that it is a copy of is there, or it is a photo or the
   * like and has the record of its batch.
   *
   * @param files paths of those that are read
   */
  boolean isSpare(Set<String> files) {
    boolean has = batch().filter(of -> Names.hasRecord(of.number(), files)).isPresent();
    return switch (why) {
      case COPY -> has || original().filter(files::contains).isPresent();
      case RECORD ->
          batch().filter(of -> !of.mayBeRecord()).stream()
              .anyMatch(of -> has || !Names.isMade(of.code(), files));
      case LINK, CLOSED, NEAR, LOTS, SPECIAL, UNSEEN -> false;
    };
  }

  /** Why it was not read. */
  public enum Why {
    /** It leads to another place. */
    LINK("is a link and is not followed"),
    /** The system does not open it. */
    CLOSED("cannot be opened"),
    /** It ends nearly as files do that are read. */
    NEAR("is not read for the end of its name"),
    /** A program laid it by, and what it is a copy of is not there. */
    COPY("is a copy that is laid by and is not read"),
    /** It has the number of a batch for its name, and does not end as files do that are read. */
    RECORD("has the name of a batch record and is not read for the end of its name"),
    /** It is called as a file of lots is, and does not end as files do that are read. */
    LOTS("has the name of a file of lots and is not read for the end of its name"),
    /** It is a pipe, a socket or a device. */
    SPECIAL("is a pipe, a socket or a device and is not opened"),
    /** Its name holds a character that cannot be seen. */
    UNSEEN("is not read for a character in its name that cannot be seen");

    private final String words;

    Why(String words) {
      this.words = words;
    }

    /** As a sentence goes on behind the path. */
    public String words() {
      return words;
    }
  }
}
