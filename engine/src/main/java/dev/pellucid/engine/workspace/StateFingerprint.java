package dev.pellucid.engine.workspace;

import dev.pellucid.engine.folder.Texts;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.text.Normalizer;
import java.util.Collection;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a recipe or premix is made from, in twelve hexadecimal digits: the beginning of the SHA-256
 * over the path and the content of every file that it hangs on, those that come along too. Line
 * ends count as one kind, so that it is the same on every system. Where it is the same, every file
 * is; a file that is missing, new, or changed in a comment gives another one.
 *
 * <p>Files of prices are among them: limits on cost are judged, and what a feed costs stands in its
 * account.
 */
final class StateFingerprint {
  /** So many digits tell states of one folder apart, and can be copied by hand. */
  private static final int DIGITS = 12;

  private StateFingerprint() {}

  /**
   * The fingerprint.
   *
   * @param paths of all files that it hangs on
   */
  static String of(Texts texts, Collection<String> paths) {
    Map<String, String> files = new TreeMap<>();
    for (String path : paths) {
      // Some systems keep letters and their marks apart in names of files.
      files.put(
          Normalizer.normalize(path, Normalizer.Form.NFC), texts.digest(path).orElse("unread"));
    }
    MessageDigest all = sha256();
    files.forEach((path, digest) -> all.update(line(path, digest)));
    return HexFormat.of().formatHex(all.digest()).substring(0, DIGITS);
  }

  private static byte[] line(String path, String digest) {
    return (path + "\0" + digest + "\n").getBytes(StandardCharsets.UTF_8);
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException never) {
      throw new IllegalStateException(never);
    }
  }
}
