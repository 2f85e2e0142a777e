package dev.pellucid.engine.folder;

import dev.pellucid.finding.Finding;
import java.util.Optional;

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
