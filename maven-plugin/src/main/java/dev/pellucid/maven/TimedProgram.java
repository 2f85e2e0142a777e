package dev.pellucid.maven;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Runs a program that may hang or print without end, and comes back all the same. What it prints is
 * read by threads of their own; when the time is up, or the run is over, the program and what it
 * started are stopped, and a thread that still waits for them is left behind.
 */
final class TimedProgram<T> {
  private static final int LONGEST_COMPLAINT = 8192;
  private static final Duration TO_END = Duration.ofSeconds(2);

  private final Process running;
  private final long end;

  private TimedProgram(Process running, Duration most) {
    this.running = running;
    this.end = System.nanoTime() + most.toNanos();
  }

  /** Who reads what a program prints, to its end. */
  interface Reading<T> {
    T of(InputStream output) throws IOException;
  }

  /** It printed more than it may. */
  static final class TooMuch extends IOException {
    private static final long serialVersionUID = 1;
  }

  /**
   * How it ended.
   *
   * @param exit its exit code, zero for success; of one that was stopped since its output could not
   *     be read there is none to speak of, and it is zero too
   * @param complaint the beginning of what it printed as an error
   * @param said what was read of its output; empty where that failed
   * @param unread why it could not be read
   */
  record Ended<T>(int exit, String complaint, Optional<T> said, Optional<IOException> unread) {}

  /**
   * Runs it.
   *
   * @param most how long it may take, its output included
   * @param bytes how much it may print
   * @throws TimeoutException where it took longer
   * @throws IOException where it cannot be started
   */
  static <T> Ended<T> run(ProcessBuilder program, Duration most, long bytes, Reading<T> reading)
      throws IOException, InterruptedException, TimeoutException {
    return run(program, "", most, bytes, reading);
  }

  /**
   * The same of a program that is asked by lines.
   *
   * @param input what it reads
   * @throws TimeoutException where it took longer
   * @throws IOException where it cannot be started
   */
  static <T> Ended<T> run(
      ProcessBuilder program, String input, Duration most, long bytes, Reading<T> reading)
      throws IOException, InterruptedException, TimeoutException {
    TimedProgram<T> timed = new TimedProgram<>(program.start(), most);
    try {
      return timed.ended(input, bytes, reading);
    } finally {
      timed.stop();
    }
  }

  private Ended<T> ended(String input, long bytes, Reading<T> reading)
      throws IOException, InterruptedException, TimeoutException {
    ask(input);
    FutureTask<String> complaint = beside(() -> beginning(running.getErrorStream()));
    FutureTask<T> output = beside(() -> reading.of(new Bounded(running.getInputStream(), bytes)));
    Optional<T> said = Optional.empty();
    Optional<IOException> unread = Optional.empty();
    try {
      said = Optional.of(output.get(left(), TimeUnit.NANOSECONDS));
    } catch (ExecutionException broken) {
      unread = Optional.of(cause(broken));
    }
    if (unread.isPresent()) {
      // Where the program failed, its own words say more than a cut-off output does.
      boolean byItself = running.waitFor(TO_END.toMillis(), TimeUnit.MILLISECONDS);
      return new Ended<>(byItself ? running.exitValue() : 0, text(complaint), said, unread);
    }
    if (!running.waitFor(left(), TimeUnit.NANOSECONDS)) {
      throw new TimeoutException();
    }
    return new Ended<>(running.exitValue(), text(complaint), said, unread);
  }

  /** It may answer while it is still asked, so that neither waits for the other. */
  private void ask(String input) throws IOException {
    if (input.isEmpty()) {
      running.getOutputStream().close();
      return;
    }
    Thread asking = new Thread(() -> write(input), "pellucid asks a program");
    asking.setDaemon(true);
    asking.start();
  }

  private void write(String input) {
    try (OutputStream to = running.getOutputStream()) {
      to.write(input.getBytes(StandardCharsets.UTF_8));
    } catch (IOException ended) {
      // It has ended by itself, and its exit code says how.
    }
  }

  private long left() {
    return Math.max(0, end - System.nanoTime());
  }

  private static <V> FutureTask<V> beside(Callable<V> work) {
    FutureTask<V> task = new FutureTask<>(work);
    Thread thread = new Thread(task, "pellucid reads a program");
    thread.setDaemon(true);
    thread.start();
    return task;
  }

  private static IOException cause(ExecutionException broken) {
    return broken.getCause() instanceof IOException unread
        ? unread
        : new IOException("the output of a program could not be read", broken.getCause());
  }

  /** What there is of it by now; a program may leave its channel for errors open to others. */
  private static String text(FutureTask<String> complaint) throws InterruptedException {
    try {
      return complaint.get(TO_END.toMillis(), TimeUnit.MILLISECONDS);
    } catch (ExecutionException | TimeoutException unread) {
      return "";
    }
  }

  private static String beginning(InputStream errors) throws IOException {
    byte[] first = errors.readNBytes(LONGEST_COMPLAINT);
    byte[] rest = new byte[LONGEST_COMPLAINT];
    while (errors.read(rest) >= 0) {
      // Read on, or the program would stand still with a full pipe.
    }
    return new String(first, StandardCharsets.UTF_8);
  }

  private void stop() {
    List<ProcessHandle> started = running.descendants().toList();
    running.destroyForcibly();
    started.forEach(ProcessHandle::destroyForcibly);
  }

  /** Says no beyond so many bytes. */
  private static final class Bounded extends FilterInputStream {
    private long left;

    Bounded(InputStream in, long most) {
      super(in);
      this.left = most;
    }

    @Override
    public int read() throws IOException {
      int one = super.read();
      count(one < 0 ? 0 : 1);
      return one;
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
      int read = super.read(into, from, length);
      count(Math.max(0, read));
      return read;
    }

    @Override
    public long skip(long many) throws IOException {
      long skipped = super.skip(many);
      count(skipped);
      return skipped;
    }

    private void count(long bytes) throws TooMuch {
      left -= bytes;
      if (left < 0) {
        throw new TooMuch();
      }
    }
  }
}
