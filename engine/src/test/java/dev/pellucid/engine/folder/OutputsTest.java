package dev.pellucid.engine.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Files are written whole, in their own folder only, and nothing of another is taken away. */
class OutputsTest {
  @TempDir Path root = Path.of("");

  private List<String> files() throws IOException {
    try (Stream<Path> all = Files.walk(root)) {
      return all.filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
          .map(file -> root.relativize(file).toString())
          .sorted()
          .toList();
    }
  }

  private static String told(Writing writing) {
    return String.valueOf(assertThrows(WriteFailure.class, writing::run).getMessage());
  }

  private interface Writing {
    void run() throws IOException;
  }

  @Test
  void writesExactlyTheBytesAndLeavesNothingBesideThem() throws IOException {
    Outputs.into(root.resolve("new/folder")).write("pages/A-1.html", "\uFEFF20 °C\r\n");
    Outputs.over(root).write("A-1.recipe", "one\n");
    Outputs.over(root).write("A-1.recipe", "two\n");
    assertEquals(List.of("A-1.recipe", "new/folder/pages/A-1.html"), files());
    assertEquals("\uFEFF20 °C\r\n", Files.readString(root.resolve("new/folder/pages/A-1.html")));
    assertEquals("two\n", Files.readString(root.resolve("A-1.recipe")));
  }

  /** What earlier runs left there stays; that is no reason not to write. */
  @Test
  @DisabledOnOs(OS.WINDOWS)
  void writesIntoAFolderThatCannotBeListed() throws IOException {
    Path closed = Files.createDirectories(root.resolve("closed"));
    Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("-wx------"));
    try {
      assumeFalse(Files.isReadable(closed), "whoever runs this may list any folder");
      Outputs.into(closed).write("A-1.html", "one\n");
    } finally {
      Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("rwx------"));
    }
    assertEquals(List.of("closed/A-1.html"), files());
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void keepsThePermissionsOfAFile() throws IOException {
    Path file = Files.writeString(root.resolve("A-1.recipe"), "one\n");
    for (String rights : List.of("rw-r-----", "rw-rw-rw-", "rw-------", "rwxr-xr-x")) {
      Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(rights));
      Outputs.over(root).write("A-1.recipe", "now " + rights);
      assertEquals(rights, PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }
  }

  @Test
  void aPathOutOfTheFolderIsAFaultOfTheCaller() {
    Outputs outputs = Outputs.into(root.resolve("out"));
    assertThrows(IllegalArgumentException.class, () -> outputs.write("../A-1.txt", "x"));
    assertThrows(IllegalArgumentException.class, () -> outputs.write("", "x"));
  }

  @Test
  void nothingIsWrittenOrDeletedThroughALink() throws IOException {
    Path outside = Files.createDirectory(root.resolve("outside"));
    Path to = Files.createDirectory(root.resolve("to"));
    Path mine = Files.writeString(outside.resolve("A-1.txt"), "mine");
    Files.createSymbolicLink(to.resolve("feeds"), outside);
    Files.createSymbolicLink(to.resolve("A-1.txt"), mine);
    Files.createSymbolicLink(to.resolve("A-2.txt"), outside.resolve("not-there"));
    Outputs outputs = Outputs.into(to);
    assertTrue(told(() -> outputs.write("feeds/A-1.txt", "x")).contains("leads out of its folder"));
    assertTrue(told(() -> outputs.write("feeds/deep/A-1.txt", "x")).contains("leads out"));
    assertTrue(told(() -> outputs.delete("feeds/A-1.txt", all -> true)).contains("leads out"));
    assertTrue(told(() -> outputs.write("A-1.txt", "x")).contains("A-1.txt is a link"));
    assertTrue(told(() -> outputs.write("A-2.txt", "x")).contains("A-2.txt is a link"));
    assertTrue(told(() -> outputs.delete("A-1.txt", all -> true)).contains("is a link"));
    assertEquals(List.of("outside/A-1.txt"), files());
    assertEquals("mine", Files.readString(mine));
    assertTrue(Files.isSymbolicLink(to.resolve("A-1.txt")));
  }

  @Test
  void onlyWhatIsOursIsDeleted() throws IOException {
    Files.writeString(root.resolve("ours.txt"), "a sheet, " + "x".repeat(10_000));
    Files.writeString(root.resolve("yours.txt"), "a letter");
    Files.createDirectory(root.resolve("folder.txt"));
    Outputs outputs = Outputs.into(root);
    assertTrue(outputs.delete("ours.txt", head -> head.startsWith("a sheet")));
    assertFalse(outputs.delete("yours.txt", head -> head.startsWith("a sheet")));
    assertFalse(outputs.delete("folder.txt", all -> true));
    assertTrue(outputs.delete("not-there.txt", head -> head.startsWith("a sheet")));
    assertEquals(List.of("yours.txt"), files());
  }

  @Test
  void aLinkFromTheProjectToElsewhereIsRefusedAndOneThatStaysIsNot() throws IOException {
    Path project = Files.createDirectories(root.resolve("project"));
    Path fast = Files.createDirectories(root.resolve("fast"));
    Files.createDirectories(project.resolve(".git/hooks"));
    Files.createDirectories(project.resolve("build"));
    Files.createSymbolicLink(project.resolve("target"), fast);
    Files.createSymbolicLink(project.resolve("inside"), project.resolve("build"));
    Files.createSymbolicLink(project.resolve("hidden"), project.resolve(".git/hooks"));
    Files.createSymbolicLink(project.resolve("nowhere"), root.resolve("not-there"));
    String said =
        told(() -> Outputs.refuseLinkOut(project, project.resolve("target/x"), "name it"));
    assertEquals(
        project.resolve("target")
            + " leads out of its folder to "
            + fast.toRealPath()
            + ", and nothing is written through such a link; take the link away, or name it",
        said);
    told(() -> Outputs.refuseLinkOut(project, project.resolve("target"), ""));
    told(() -> Outputs.refuseLinkOut(project, project.resolve("hidden/x"), ""));
    told(() -> Outputs.refuseLinkOut(project, project.resolve("nowhere/x"), ""));
    Outputs.refuseLinkOut(project, project.resolve("inside/x"), "");
    Outputs.refuseLinkOut(project, project.resolve("not/there/yet"), "");
    Outputs.refuseLinkOut(project, project.resolve(".reports"), "");
    Outputs.refuseLinkOut(project, project, "");
    // The folder was named by a person, by the way it really has.
    Outputs.refuseLinkOut(project, fast.resolve("x"), "");
    // A project that is reached through a link is no link out of the project.
    Path door = Files.createSymbolicLink(root.resolve("door"), project);
    Outputs.refuseLinkOut(door, door.resolve("inside/x"), "");
  }

  @Test
  void whatAKilledRunLeftGoesWhenItIsOldAndIsNeverRead() throws IOException {
    Path old = Files.writeString(root.resolve(".pellucid-0.half"), "recipe A-1\n");
    Path young = Files.writeString(root.resolve(".pellucid-1.half"), "recipe A-1\n");
    Files.setLastModifiedTime(old, FileTime.fromMillis(old.toFile().lastModified() - 3_600_000));
    assertEquals(List.of(), Texts.at(root).paths());
    Outputs.into(root).write("A-1.txt", "x");
    assertFalse(Files.exists(old));
    assertTrue(Files.exists(young));
    assertEquals(List.of(".pellucid-1.half", "A-1.txt"), files());
  }

  @Test
  void aWriteThatFailsSaysSoAndLeavesTheOldFileAndNothingElse() throws IOException {
    Files.createDirectory(root.resolve("A-1.txt"));
    String said = told(() -> Outputs.into(root).write("A-1.txt", "x"));
    assertTrue(said.startsWith(root.resolve("A-1.txt") + " was not written, "), said);
    assertTrue(said.endsWith("then run the goal again"), said);
    Files.writeString(root.resolve("no-folder"), "x");
    assertTrue(told(() -> Outputs.into(root).write("no-folder/A-1.txt", "x")).contains("written"));
    assertEquals(List.of("no-folder"), files());
  }

  /** A child process that may not write files beyond 1 MiB: its disk is full in mid-file. */
  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aFullDiskLeavesTheOldFile() throws Exception {
    Files.writeString(root.resolve("A-1.recipe"), "the old one\n");
    List<String> command = new ArrayList<>(List.of("sh", "-c"));
    command.add("ulimit -f 2048 || exit 9; exec \"$@\"");
    command.add("sh");
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:-UsePerfData", "-Xshare:auto", "-cp"));
    command.add(System.getProperty("java.class.path"));
    command.addAll(List.of(FullDisk.class.getName(), root.toString()));
    Process child = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(child.waitFor(60, TimeUnit.SECONDS));
    assertEquals(0, child.exitValue(), said);
    assertTrue(said.contains("A-1.recipe was not written, "), said);
    assertTrue(said.contains("what was there is as it was; see that the disk has room"), said);
    assertEquals("the old one\n", Files.readString(root.resolve("A-1.recipe")));
    assertEquals(List.of("A-1.recipe"), files());
  }

  /** What the child does. */
  static final class FullDisk {
    private FullDisk() {}

    public static void main(String[] words) throws IOException {
      try {
        Outputs.over(Path.of(words[0])).write("A-1.recipe", "#".repeat(4 << 20));
      } catch (WriteFailure full) {
        System.out.println(full.getMessage());
      }
    }
  }

  @Test
  void whatBreaksHalfwayLeavesTheOldFile() throws IOException {
    Outputs outputs = Outputs.into(root);
    outputs.write("a.txt", "old");
    IOException full = new IOException("full");
    assertThrows(
        IOException.class,
        () ->
            outputs.write(
                "a.txt",
                out -> {
                  out.write(new byte[1 << 20]);
                  throw full;
                }));
    assertEquals("old", Files.readString(root.resolve("a.txt")));
    assertEquals(List.of("a.txt"), files());
  }
}
