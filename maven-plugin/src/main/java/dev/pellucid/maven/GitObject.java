package dev.pellucid.maven;

import dev.pellucid.engine.folder.Committed;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

/**
 * Something that a repository holds, as {@code git cat-file --batch} hands it out: contents as they
 * were committed, without any filter. All that is asked at once is asked of one process.
 */
final class GitObject {
  private static final int LONGEST_LINE = 1 << 16;

  private final String name;
  private final String type;
  private final long size;
  private final byte[] content;

  private GitObject(String name, String type, long size, byte[] content) {
    this.name = name;
    this.type = type;
    this.size = size;
    this.content = content;
  }

  /**
   * Reads some.
   *
   * @param asked names that git understands, each on one line
   * @return by what was asked, those that are there
   * @throws GitTrouble where git cannot be asked
   * @throws IOException where its answer is not whole
   */
  static Map<String, GitObject> of(Git git, Collection<String> asked) throws IOException {
    List<String> lines = List.copyOf(asked);
    return lines.isEmpty()
        ? Map.of()
        : git.answered(lines, output -> read(lines, output), "cat-file", "--batch", "--buffer");
  }

  private static Map<String, GitObject> read(List<String> asked, InputStream output)
      throws IOException {
    Map<String, GitObject> there = new HashMap<>();
    InputStream in = new BufferedInputStream(output, LONGEST_LINE);
    for (String one : asked) {
      // "NAME TYPE SIZE", or what was asked and a word that says why there is nothing.
      String[] words = line(in).split(" ", -1);
      if (words.length == 3 && words[2].matches("[0-9]{1,18}")) {
        there.put(one, content(in, words[0], words[1], Long.parseLong(words[2])));
      }
    }
    return there;
  }

  private static GitObject content(InputStream in, String name, String type, long size)
      throws IOException {
    boolean wanted = !type.equals("blob") || size <= Committed.longest();
    byte[] content = wanted ? in.readNBytes((int) Math.min(size, Integer.MAX_VALUE)) : new byte[0];
    if (wanted && content.length < size) {
      throw new EOFException("git broke off");
    }
    in.skipNBytes(size - content.length + 1);
    return new GitObject(name, type, size, content);
  }

  private static String line(InputStream in) throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    for (int one = in.read(); one != '\n'; one = in.read()) {
      if (one < 0 || line.size() > LONGEST_LINE) {
        throw new EOFException("git broke off");
      }
      line.write(one);
    }
    return line.toString(StandardCharsets.UTF_8);
  }

  /** Its full name. */
  String name() {
    return name;
  }

  boolean is(String kind) {
    return type.equals(kind);
  }

  /** As a file at a path; without its bytes where it is longer than what is read. */
  Committed at(String path) {
    return Committed.file(path, size, content);
  }

  String text() {
    return new String(content, StandardCharsets.UTF_8);
  }

  /**
   * An entry of a folder.
   *
   * @param mode in octal digits, as git writes it
   * @param id the full name of what it is
   */
  record Entry(String mode, String name, String id) {
    boolean isFolder() {
      return mode.equals("40000");
    }

    boolean isFile() {
      return mode.startsWith("100");
    }

    boolean isLink() {
      return mode.equals("120000");
    }
  }

  /** What a folder holds: each a mode, a blank, a name, a zero and a name of bytes. */
  List<Entry> entries() {
    int id = name.length() / 2;
    List<Entry> entries = new ArrayList<>();
    int at = 0;
    while (at < content.length) {
      int blank = next(at, ' ');
      int zero = next(blank, '\0');
      if (zero + 1 + id > content.length) {
        break;
      }
      entries.add(
          new Entry(
              new String(content, at, blank - at, StandardCharsets.US_ASCII),
              new String(content, blank + 1, zero - blank - 1, StandardCharsets.UTF_8),
              HexFormat.of().formatHex(content, zero + 1, zero + 1 + id)));
      at = zero + 1 + id;
    }
    return entries;
  }

  private int next(int from, char sign) {
    int at = from;
    while (at < content.length && content[at] != sign) {
      at++;
    }
    return at;
  }
}
