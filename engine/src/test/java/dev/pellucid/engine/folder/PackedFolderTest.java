package dev.pellucid.engine.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.pellucid.finding.Finding;
import dev.pellucid.show.FindingText;
import dev.pellucid.text.SourceFile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A folder out of a tar archive is listed as one on the disk, and a damaged archive is told. */
class PackedFolderTest {
  private final ByteArrayOutputStream tar = new ByteArrayOutputStream();

  private void entry(char kind, String prefix, String name, byte[] content) {
    byte[] header = new byte[512];
    put(header, 0, name);
    put(header, 124, String.format(Locale.ROOT, "%011o", content.length));
    put(header, 345, prefix);
    header[156] = (byte) kind;
    Arrays.fill(header, 148, 156, (byte) ' ');
    int sum = 0;
    for (byte one : header) {
      sum += one & 0xFF;
    }
    put(header, 148, String.format(Locale.ROOT, "%06o", sum));
    header[154] = 0;
    tar.writeBytes(header);
    tar.writeBytes(content);
    tar.writeBytes(new byte[(512 - content.length % 512) % 512]);
  }

  private static void put(byte[] header, int at, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    System.arraycopy(bytes, 0, header, at, bytes.length);
  }

  private void file(String name, String text) {
    entry('0', "", name, text.getBytes(StandardCharsets.UTF_8));
  }

  private void named(String path, String text) {
    String record = " path=" + path + "\n";
    int length = record.getBytes(StandardCharsets.UTF_8).length;
    int digits = String.valueOf(length + 3).length();
    String pax = (length + digits) + record;
    entry('x', "", "pax", pax.getBytes(StandardCharsets.UTF_8));
    file("short", text);
  }

  private byte[] whole() {
    entry('g', "", "pax_global_header", "13 comment=x\n".getBytes(StandardCharsets.UTF_8));
    entry('5', "", "a/", new byte[0]);
    file("a/A-1.recipe", "recipe A-1\n");
    entry('0', "a/deep", "A-2.recipe", "recipe A-2\n".getBytes(StandardCharsets.UTF_8));
    named("b/" + "ü".repeat(120) + ".recipe", "recipe long\n");
    file("over.recipe", "#".repeat((1 << 20) + 1));
    file("README.md", "x".repeat(5000));
    file("target/A-3.recipe", "x");
    file(".git/A-4.recipe", "x");
    file("a/.hidden.recipe", "x");
    entry('2', "", "L-1.recipe", new byte[0]);
    tar.writeBytes(new byte[1024]);
    tar.writeBytes(new byte[10240 - tar.size() % 10240]);
    return tar.toByteArray();
  }

  private static Texts folder(byte[] bytes) throws IOException {
    return Texts.packed(new ByteArrayInputStream(bytes));
  }

  @Test
  void holdsWhatAListerWouldFind() throws IOException {
    Texts folder = folder(whole());
    assertEquals(
        List.of(
            "a/A-1.recipe", "a/deep/A-2.recipe", "b/" + "ü".repeat(120) + ".recipe", "over.recipe"),
        folder.paths());
    List<String> texts = new ArrayList<>();
    folder.read("a/deep/A-2.recipe", new ArrayList<>()).map(SourceFile::text).ifPresent(texts::add);
    folder
        .read(folder.paths().get(2), new ArrayList<>())
        .map(SourceFile::text)
        .ifPresent(texts::add);
    assertEquals(List.of("recipe A-2\n", "recipe long\n"), texts);
    assertTrue(folder.isLink("L-1.recipe"));
    List<Finding> found = new ArrayList<>();
    assertTrue(folder.read("over.recipe", found).isEmpty());
    assertTrue(FindingText.of(found).contains("the file is about 2 MiB long"));
  }

  @Test
  void aNameWithWhatCannotBeSeenIsToldAsOnADisk() throws IOException {
    file("A\u202E-1.recipe", "recipe A-1\n");
    file("x\u200By/A-2.recipe", "recipe A-2\n");
    file("x\u200By/A-3.recipe", "recipe A-3\n");
    file("A-4.recipe", "recipe A-4\n");
    tar.writeBytes(new byte[10240 - tar.size() % 10240]);
    Texts folder = folder(tar.toByteArray());
    assertEquals(List.of("A-4.recipe"), folder.paths());
    assertEquals(
        List.of(
            "A<U+202E>-1.recipe:1:1: error: the name holds a character that cannot be seen,"
                + " U+202E, right-to-left override [file-name-unseen]",
            "x<U+200B>y:1:1: error: the name holds a character that cannot be seen, U+200B, zero"
                + " width space [file-name-unseen]"),
        folder.findings().stream().map(FindingText::firstLine).toList());
  }

  @Test
  void onePackedElsewhereTakesThePlaceOfOneOnTheDisk() throws IOException {
    Texts folder = folder(whole());
    assertEquals(3, folder.with(List.of("a/A-1.recipe"), folder(new byte[10240])).paths().size());
  }

  @Test
  void anArchiveThatIsCutOffOrDamagedIsTold() throws IOException {
    byte[] whole = whole();
    int contentEnds = whole.length - 10240;
    for (int length = 0; length < contentEnds; length += 257) {
      byte[] cut = Arrays.copyOf(whole, length);
      assertThrows(IOException.class, () -> folder(cut), () -> "cut at " + cut.length);
    }
    Random random = new Random(11);
    int told = 0;
    for (int i = 0; i < 2000; i++) {
      byte[] damaged = whole.clone();
      // In the headers before the long file.
      damaged[random.nextInt(4096)] ^= (byte) (1 + random.nextInt(255));
      try {
        folder(damaged);
      } catch (IOException broken) {
        told++;
      }
    }
    assertTrue(told > 700, told + " of 2000");
  }
}
