package dev.pellucid.engine.folder;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A file that could not be written or taken away. Its message is a sentence for a person: which
 * file, what happened, and what to do. What lay there before is as it was.
 */
public final class WriteFailure extends IOException {
  private static final long serialVersionUID = 1;

  private WriteFailure(String sentence) {
    super(sentence);
  }

  static WriteFailure of(Path file, IOException broken) {
    String help =
        broken instanceof AccessDeniedException
            ? "; see that you may write this file and its folder, then run the goal again"
            : "; see that the disk has room and the folder can be written, then run the goal again";
    return new WriteFailure(
        file + " was not written, " + reason(broken) + "; what was there is as it was" + help);
  }

  static WriteFailure link(Path link) {
    return new WriteFailure(
        link
            + " is a link, and nothing is written through one; take the link away, then run the"
            + " goal again");
  }

  static WriteFailure leadsOut(Path link, Path real, String remedy) {
    return new WriteFailure(
        link
            + " leads out of its folder to "
            + real
            + ", and nothing is written through such a link; take the link away, or "
            + remedy);
  }

  static WriteFailure crowded(Path folder) {
    return new WriteFailure(
        folder + " is full of files that killed runs left; delete its .pellucid-*.half files");
  }

  private static String reason(IOException broken) {
    if (broken instanceof AccessDeniedException) {
      return "access is denied";
    }
    String told =
        broken instanceof FileSystemException system ? system.getReason() : broken.getMessage();
    return Optional.ofNullable(told).orElse(broken.getClass().getSimpleName());
  }
}
