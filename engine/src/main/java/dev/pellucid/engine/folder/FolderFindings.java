package dev.pellucid.engine.folder;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.List;

/** What can be wrong with a file before its text is known. */
public final class FolderFindings {
  static final Code TOO_LONG = new Code("file-too-long");
  static final Code UNREADABLE = new Code("file-unreadable");
  static final Code LINK = new Code("file-link");
  static final Code CLASH = new Code("file-name-clash");
  static final Code TWICE = new Code("file-name-twice");

  private FolderFindings() {}

  /** Every code of this room. */
  public static List<Code> codes() {
    return List.of(TOO_LONG, UNREADABLE, LINK, CLASH, TWICE);
  }

  static Finding tooLong(String path, long bytes) {
    long mebibytes = (bytes + (1 << 20) - 1) >> 20;
    return Finding.error(
            TOO_LONG,
            place(path),
            "the file is about " + mebibytes + " MiB long, at most 1 MiB is read")
        .helping("split it, or move it out of the folder");
  }

  static Finding unreadable(String path) {
    return Finding.error(UNREADABLE, place(path), "the file cannot be opened")
        .helping("look whether it is still there and whether you may read it");
  }

  static Finding link(String path) {
    return Finding.warning(LINK, place(path), "this is a link to another place and is not followed")
        .helping("put the file or folder itself here, so that its history is kept with the rest");
  }

  static Finding clash(String path, String earlier) {
    return Finding.error(
            CLASH, place(path), "the name differs from " + earlier + " in capital letters only")
        .helping("rename one of the two, many systems take them for one file");
  }

  static Finding twice(String path, String earlier) {
    SourceFile file = new SourceFile(path, "");
    return Finding.error(TWICE, place(path), file.stem() + " is the name of " + earlier + " too")
        .helping("rename one of the two, or delete the one that is not wanted");
  }

  private static Span place(String path) {
    return new SourceFile(path, "").beginning();
  }
}
