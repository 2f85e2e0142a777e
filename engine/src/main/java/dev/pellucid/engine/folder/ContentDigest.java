package dev.pellucid.engine.folder;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What a content is called: its SHA-256 in hexadecimal digits, the same for each kind of line end.
 */
final class ContentDigest {
  private ContentDigest() {}

  static String of(byte[] content) {
    MessageDigest digest = sha256();
    int from = 0;
    for (int i = 0; i + 1 < content.length; i++) {
      if (content[i] == '\r' && content[i + 1] == '\n') {
        digest.update(content, from, i - from);
        from = i + 1;
      }
    }
    digest.update(content, from, content.length - from);
    return HexFormat.of().formatHex(digest.digest());
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException never) {
      throw new IllegalStateException(never);
    }
  }
}
