package dev.pellucid.maven;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeoutException;
import org.jspecify.annotations.Nullable;

/**
 * The program git, asked about one folder: within a time, for so many bytes at most, and so that
 * the repository cannot have a program run ({@link GitSettings}).
 */
final class Git {
  private static final List<String> NAMES = List.of("git", "git.exe");

  private final File folder;
  private final Optional<File> program;
  private final Limits limits;
  private @Nullable List<String> filters;

  /**
   * How long git may take and how much it may say.
   *
   * @param question for an answer of a few lines
   * @param packing for an archive
   * @param answer bytes of an answer; a list of all files of a large folder is one
   * @param archive bytes of an archive
   */
  record Limits(Duration question, Duration packing, long answer, long archive) {
    static final Limits USUAL =
        new Limits(Duration.ofSeconds(30), Duration.ofMinutes(5), 64L << 20, 4L << 30);
  }

  Git(File folder) {
    this(folder, onThePath(), Limits.USUAL);
  }

  Git(File folder, Optional<File> program, Limits limits) {
    this.folder = folder;
    this.program = program;
    this.limits = limits;
  }

  /** Only in folders that are named in full: never one that lies where the build runs. */
  private static Optional<File> onThePath() {
    return Optional.ofNullable(System.getenv("PATH")).stream()
        .flatMap(path -> Arrays.stream(path.split(File.pathSeparator)))
        .map(File::new)
        .filter(File::isAbsolute)
        .flatMap(there -> NAMES.stream().map(name -> new File(there, name)))
        .filter(git -> git.isFile() && git.canExecute())
        .findFirst();
  }

  File folder() {
    return folder;
  }

  /**
   * What it prints; empty where it says no.
   *
   * @throws GitTrouble where it cannot be asked
   */
  Optional<String> said(String... words) throws GitTrouble {
    TimedProgram.Ended<String> ended = ask(words);
    return ended.exit() == 0 ? ended.said() : Optional.empty();
  }

  /**
   * What it prints of the repository that the folder is in.
   *
   * @throws GitTrouble where it is in none, or cannot be asked
   */
  String saidOfRepository(String... words) throws GitTrouble {
    TimedProgram.Ended<String> ended = ask(words);
    if (ended.exit() == 0 && ended.said().isPresent()) {
      return ended.said().get();
    }
    String complaint = ended.complaint();
    if (complaint.contains("dubious ownership")) {
      throw GitTrouble.notTrusted(folder);
    }
    if (complaint.contains("not a git repository")
        || complaint.contains("cannot use bare repository")) {
      throw GitTrouble.notUnderGit(folder);
    }
    throw GitTrouble.refused(words[0], complaint);
  }

  /**
   * Reads an archive of the folder.
   *
   * @param commit the full name of a commit
   * @throws GitTrouble where git does not pack it
   * @throws IOException where what it packs cannot be read
   */
  <T> T packed(String commit, TimedProgram.Reading<T> reading) throws IOException {
    // The format is named: it is the one that no setting can have another program write.
    String[] words = {"archive", "--format=tar", commit, "."};
    TimedProgram.Ended<T> ended =
        run(filters(), "", limits.packing(), limits.archive(), reading, words);
    if (ended.exit() != 0) {
      throw GitTrouble.refused(words[0], ended.complaint());
    }
    return whole(ended, words[0], limits.archive());
  }

  /**
   * Reads what is answered to lines, as by {@code cat-file --batch}.
   *
   * @param lines without line ends
   * @throws GitTrouble where git cannot be asked, or breaks off
   * @throws IOException where what it prints cannot be read
   */
  <T> T answered(Collection<String> lines, TimedProgram.Reading<T> reading, String... words)
      throws IOException {
    String input = String.join("\n", lines) + "\n";
    TimedProgram.Ended<T> ended =
        run(List.of(), input, limits.packing(), limits.archive(), reading, words);
    if (ended.exit() != 0) {
      throw GitTrouble.refused(words[0], ended.complaint());
    }
    return whole(ended, words[0], limits.archive());
  }

  private TimedProgram.Ended<String> ask(String... words) throws GitTrouble {
    try {
      TimedProgram.Ended<String> ended =
          run(List.of(), "", limits.question(), limits.answer(), Git::text, words);
      if (ended.unread().isPresent()) {
        whole(ended, words[0], limits.answer());
      }
      return ended;
    } catch (GitTrouble told) {
      throw told;
    } catch (IOException unread) {
      throw GitTrouble.refused(words[0], String.valueOf(unread.getMessage()));
    }
  }

  private static String text(InputStream output) throws IOException {
    return new String(output.readAllBytes(), StandardCharsets.UTF_8).stripTrailing();
  }

  private <T> T whole(TimedProgram.Ended<T> ended, String what, long most) throws IOException {
    Optional<IOException> unread = ended.unread();
    if (unread.isPresent()) {
      throw unread.get() instanceof TimedProgram.TooMuch
          ? GitTrouble.tooMuch(what, most)
          : unread.get();
    }
    return ended.said().orElseThrow();
  }

  private List<String> filters() throws GitTrouble {
    List<String> known = filters;
    if (known == null) {
      known =
          said("config", "--null", "--name-only", "--get-regexp", "^filter\\.").stream()
              .flatMap(keys -> Arrays.stream(keys.split("\0")))
              .filter(key -> !key.isEmpty())
              .distinct()
              .toList();
      filters = known;
    }
    return known;
  }

  private <T> TimedProgram.Ended<T> run(
      List<String> turnedOff,
      String input,
      Duration most,
      long bytes,
      TimedProgram.Reading<T> reading,
      String... words)
      throws GitTrouble {
    List<String> command = new ArrayList<>();
    command.add(program.orElseThrow(GitTrouble::notInstalled).getPath());
    command.addAll(GitSettings.options());
    command.addAll(List.of(words));
    ProcessBuilder git = new ProcessBuilder(command).directory(folder);
    GitSettings.into(git.environment(), turnedOff);
    try {
      return TimedProgram.run(git, input, most, bytes, reading);
    } catch (TimeoutException late) {
      throw GitTrouble.hung(words[0], most);
    } catch (IOException cannotRun) {
      throw GitTrouble.refused(words[0], String.valueOf(cannotRun.getMessage()));
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw GitTrouble.refused(words[0], "the build was stopped");
    }
  }
}
