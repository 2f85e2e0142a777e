package dev.pellucid.engine.folder;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.RecordName;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import dev.pellucid.text.Unseen;
import java.util.List;

/** What can be wrong with a file before its text is known. */
public final class FolderFindings {
  static final Code TOO_LONG = new Code("file-too-long");
  static final Code UNREADABLE = new Code("file-unreadable");
  static final Code LINK = new Code("file-link");
  static final Code CLASH = new Code("file-name-clash");
  static final Code TWICE = new Code("file-name-twice");
  static final Code NEAR = new Code("file-name-near");
  static final Code COPY = new Code("file-copy");
  static final Code SPECIAL = new Code("file-special");
  static final Code UNSEEN = new Code("file-name-unseen");

  private FolderFindings() {}

  /** Every code of this room. */
  public static List<Code> codes() {
    return List.of(TOO_LONG, UNREADABLE, LINK, CLASH, TWICE, NEAR, COPY, SPECIAL, UNSEEN);
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

  /**
   * A folder is no place to look at in an editor, so it is named at the settings.
   *
   * @param path empty for the folder of feeds itself
   */
  static Finding unreadableFolder(String path) {
    String named = path.isEmpty() ? "itself" : path;
    return Finding.error(
            UNREADABLE, place(Texts.SETTINGS), "the folder " + named + " cannot be opened")
        .helping("look whether it is still there and whether you may read it");
  }

  static Finding linkToFolder(String path) {
    return Finding.warning(
            LINK,
            place(Texts.SETTINGS),
            path + " is a link to a folder elsewhere and is not followed")
        .helping("put the folder itself there, so that its history is kept with the rest");
  }

  static Finding link(String path) {
    return Finding.warning(LINK, place(path), "this is a link to another place and is not followed")
        .helping("put the file itself here, so that its history is kept with the rest");
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

  static Finding near(String path, NearName name) {
    return name.copy()
        ? Finding.note(COPY, place(path), "this file is a copy that is laid by, and is not read")
            .helping("delete it, or rename it to " + name.meant() + " if it is the one that counts")
        : Finding.warning(
                NEAR,
                place(path),
                "this file is not read, for its name ends in " + shown(name.ending()))
            .helping("rename it to " + name.meant() + ", or move it out of the folder");
  }

  /** A file that is not read, and may be the record of a batch. */
  static Finding record(String path, RecordName batch) {
    return ofStore(path, "a batch record", Names.BATCHES, batch.number());
  }

  /** A file that is not read, and may tell of lots. */
  static Finding lots(String path) {
    String stem = new SourceFile(path, "").stem();
    return ofStore(path, "a file of lots", Names.LOTS, stem);
  }

  private static Finding ofStore(String path, String what, String place, String stem) {
    return Finding.warning(
            NEAR, place(path), "this file is not read, and by its name it is " + what)
        .helping("name it " + place + stem + ".yaml if it is one, else move it out of the folder");
  }

  /** A point at the end of a sentence would be taken for its own. */
  private static String shown(String ending) {
    return ending.strip().replaceAll("\\.$", " and a point");
  }

  static Finding special(String path) {
    return Finding.warning(
            SPECIAL, place(path), "this is a pipe, a socket or a device, and is not opened")
        .helping("put a file of text here, or take it out of the folder");
  }

  /**
   * @param at where in the path the character stands
   */
  static Finding unseen(String path, int at) {
    return Finding.error(
            UNSEEN,
            place(path),
            "the name holds a character that cannot be seen, " + Unseen.named(path.codePointAt(at)))
        .helping("rename it; what lies under that name is not read");
  }

  private static Span place(String path) {
    return new SourceFile(path, "").beginning();
  }
}
