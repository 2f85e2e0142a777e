package dev.pellucid.engine.folder;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Reads a tar archive as it comes, one entry after the other: headers of the ustar format, and pax
 * headers before a file whose name or size does not fit into one (POSIX.1-2001). Nothing touches
 * the disk.
 */
final class TarReader {
  private static final int BLOCK = 512;
  private static final int NAME = 100;
  private static final int SIZE_AT = 124;
  private static final int SUM_AT = 148;
  private static final int KIND_AT = 156;
  private static final int PREFIX_AT = 345;
  private static final int PREFIX = 155;

  /** The longest pax header that is taken: a name and a few figures. */
  private static final int LONGEST_PAX = 1 << 16;

  private final InputStream in;
  private Map<String, String> pax = new HashMap<>();

  TarReader(InputStream in) {
    this.in = in;
  }

  /** What is told of the archive, in its order. */
  interface Entries {
    /** A file; whether its bytes are wanted. */
    boolean wants(String path, long size);

    /** A file whose bytes were wanted. */
    void file(String path, byte[] bytes);

    /** A symbolic link. */
    void link(String path);
  }

  /**
   * Reads up to the end of the archive.
   *
   * @throws IOException where it ends too early or is no tar archive
   */
  void read(Entries entries) throws IOException {
    try {
      readAll(entries);
    } catch (EOFException early) {
      throw new IOException("the archive is cut off", early);
    }
  }

  private void readAll(Entries entries) throws IOException {
    byte[] header = in.readNBytes(BLOCK);
    while (!isEnd(header)) {
      checkSum(header);
      long size = size(header);
      String path = path(header);
      switch (header[KIND_AT]) {
        case 'x' -> pax = pax(content(size, LONGEST_PAX));
        case 'g' -> skip(size);
        case '0', 0 -> {
          if (entries.wants(path, size)) {
            entries.file(path, content(size, FeedFolder.LONGEST));
          } else {
            skip(size);
          }
          pax = new HashMap<>();
        }
        default -> {
          if (header[KIND_AT] == '2') {
            entries.link(path);
          }
          skip(size);
          pax = new HashMap<>();
        }
      }
      header = in.readNBytes(BLOCK);
    }
    // What is left is filling; whoever writes it must be able to end.
    in.transferTo(OutputStream.nullOutputStream());
  }

  /** A block of noughts. */
  private static boolean isEnd(byte[] header) throws IOException {
    if (header.length < BLOCK) {
      throw new EOFException();
    }
    for (byte one : header) {
      if (one != 0) {
        return false;
      }
    }
    return true;
  }

  private static void checkSum(byte[] header) throws IOException {
    int sum = 0;
    for (int i = 0; i < BLOCK; i++) {
      boolean ofTheSum = i >= SUM_AT && i < KIND_AT;
      sum += ofTheSum ? ' ' : header[i] & 0xFF;
    }
    if (sum != octal(header, SUM_AT, KIND_AT - SUM_AT)) {
      throw new IOException("this is not a tar archive, or it is damaged");
    }
  }

  private long size(byte[] header) throws IOException {
    String told = pax.get("size");
    try {
      return told == null ? octal(header, SIZE_AT, 12) : Long.parseLong(told);
    } catch (NumberFormatException damaged) {
      throw new IOException("the archive tells no size of a file");
    }
  }

  private String path(byte[] header) {
    String prefix = text(header, PREFIX_AT, PREFIX);
    String name = text(header, 0, NAME);
    return Optional.ofNullable(pax.get("path"))
        .orElse(prefix.isEmpty() ? name : prefix + "/" + name);
  }

  private static long octal(byte[] header, int from, int length) throws IOException {
    String digits = text(header, from, length).strip();
    try {
      return digits.isEmpty() ? 0 : Long.parseLong(digits, 8);
    } catch (NumberFormatException damaged) {
      throw new IOException("this is not a tar archive, or it is damaged");
    }
  }

  private static String text(byte[] header, int from, int length) {
    int end = from;
    while (end < from + length && header[end] != 0) {
      end++;
    }
    return new String(header, from, end - from, StandardCharsets.UTF_8);
  }

  private byte[] content(long size, long longest) throws IOException {
    if (size < 0 || size > longest) {
      throw new IOException("the archive holds a part that is too long: " + size + " bytes");
    }
    byte[] bytes = in.readNBytes((int) size);
    if (bytes.length < size) {
      throw new EOFException();
    }
    in.skipNBytes(filling(size));
    return bytes;
  }

  private void skip(long size) throws IOException {
    if (size < 0) {
      throw new IOException("this is not a tar archive, or it is damaged");
    }
    in.skipNBytes(size + filling(size));
  }

  private static long filling(long size) {
    return (BLOCK - size % BLOCK) % BLOCK;
  }

  /** Records of the form {@code LENGTH KEY=VALUE\n}, the length counting all of it in bytes. */
  private static Map<String, String> pax(byte[] bytes) throws IOException {
    Map<String, String> told = new HashMap<>();
    int at = 0;
    while (at < bytes.length && bytes[at] != 0) {
      int blank = at;
      while (blank < bytes.length && bytes[blank] != ' ') {
        blank++;
      }
      int end = end(bytes, at, blank);
      String record = new String(bytes, blank + 1, end - blank - 2, StandardCharsets.UTF_8);
      int equals = record.indexOf('=');
      if (equals > 0) {
        told.put(record.substring(0, equals), record.substring(equals + 1));
      }
      at = end;
    }
    return told;
  }

  private static int end(byte[] bytes, int at, int blank) throws IOException {
    try {
      int end = at + Integer.parseInt(new String(bytes, at, blank - at, StandardCharsets.UTF_8));
      if (end >= blank + 2 && end <= bytes.length) {
        return end;
      }
    } catch (NumberFormatException damaged) {
      // Told below.
    }
    throw new IOException("this is not a tar archive, or it is damaged");
  }
}
