package dev.pellucid.engine.folder;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.SourceFile;
import dev.pellucid.text.Span;
import java.util.List;
import java.util.Locale;

/** What can be wrong with a file before its text is known. */
public final class FolderFindings {
  static final Code TOO_LONG = new Code("file-too-long");
  static final Code UNREADABLE = new Code("file-unreadable");
  static final Code LINK = new Code("file-link");
  static final Code CLASH = new Code("file-name-clash");
  static final Code CONTROL = new Code("file-name-control");
  static final Code TWICE = new Code("file-name-twice");

  private FolderFindings() {}

  /** Every code of this room. */
  public static List<Code> codes() {
    return List.of(TOO_LONG, UNREADABLE, LINK, CLASH, TWICE, CONTROL);
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
   * @param settings the path of pellucid.yaml
   */
  static Finding unreadableFolder(String path, String settings) {
    return Finding.error(
            UNREADABLE, place(settings), "the folder " + shown(path) + " cannot be opened")
        .helping("look whether it is still there and whether you may read it");
  }

  /**
   * @param settings the path of pellucid.yaml
   */
  static Finding linkToFolder(String path, String settings) {
    return Finding.warning(
            LINK,
            place(settings),
            shown(path) + " is a link to a folder elsewhere and is not followed")
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

  static Finding control(String path) {
    return Finding.error(
            CONTROL,
            place(path),
            "the name holds a sign that does not show, "
                + hidden(path)
                + ", and the file is not read")
        .helping("rename it with letters, digits and hyphens");
  }

  /** {@code U+000A}, and what it is where people have a word for it. */
  private static String hidden(String path) {
    int sign = path.codePoints().filter(FolderFindings::isHidden).findFirst().orElse(0);
    String word = sign == '\n' || sign == '\r' ? "a line end" : sign == '\t' ? "a tab" : "";
    String number = String.format(Locale.ROOT, "U+%04X", sign);
    return word.isEmpty() ? number : word;
  }

  /** Whether a name holds what would tear a line apart, or turn it round. */
  static boolean hasHidden(String path) {
    return path.codePoints().anyMatch(FolderFindings::isHidden);
  }

  private static boolean isHidden(int sign) {
    int type = Character.getType(sign);
    return type == Character.CONTROL
        || (type == Character.FORMAT && !isJoiner(sign))
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR
        || type == Character.SURROGATE;
  }

  /** Some scripts, such as Persian, need these two to write a word. */
  private static boolean isJoiner(int sign) {
    return sign == 0x200C || sign == 0x200D;
  }

  /** The place of a file as a whole; what does not show is shown as one sign. */
  private static Span place(String path) {
    return new SourceFile(shown(path), "").beginning();
  }

  private static String shown(String path) {
    StringBuilder shown = new StringBuilder();
    path.codePoints().forEach(sign -> shown.appendCodePoint(isHidden(sign) ? '\uFFFD' : sign));
    return shown.toString();
  }
}
