package dev.pellucid.engine.benchmark;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A program as a user starts it, timed from its start to its end.
 *
 * @param folder where it is started
 * @param environment what is set for it beside what is set anyway
 */
record Command(String name, Path folder, List<String> words, Map<String, String> environment) {
  /** Prints seconds by the clock, of the program and of the system on its behalf. */
  private static final List<String> TIMED =
      List.of("bash", "-c", "TIMEFORMAT='%R %U %S'; time \"$@\" 2>&1", "timed");

  Command {
    words = List.copyOf(words);
    environment = Map.copyOf(environment);
  }

  /**
   * What one run took and said.
   *
   * @param clock seconds from start to end
   * @param processor seconds that processors worked for it
   */
  record Run(double clock, double processor, String said) {}

  Run run() throws IOException, InterruptedException {
    List<String> all = new ArrayList<>(TIMED);
    all.addAll(words);
    ProcessBuilder builder = new ProcessBuilder(all).directory(folder.toFile());
    builder.environment().putAll(environment);
    File times = File.createTempFile("times", ".txt");
    try {
      Process process = builder.redirectError(times).start();
      String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      if (process.waitFor() != 0) {
        throw new IllegalStateException(name + " failed:\n" + said);
      }
      String[] told = Files.readString(times.toPath()).trim().split("\\s+", -1);
      double clock = Double.parseDouble(told[told.length - 3]);
      double processor =
          Double.parseDouble(told[told.length - 2]) + Double.parseDouble(told[told.length - 1]);
      return new Run(clock, processor, said);
    } finally {
      times.delete();
    }
  }
}
