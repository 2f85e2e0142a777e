package dev.pellucid.engine.rules;

import dev.pellucid.engine.goal.RunCodes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Every code that resolving, checking and looking at records, figures and folders can give, read
 * from the sources of the engine, so that no list has to be kept beside them.
 */
final class EngineCodes {
  private static final Path SOURCES = Path.of("src", "main", "java", "dev", "pellucid", "engine");
  private static final Pattern DECLARED =
      Pattern.compile("new (?:Code|Obstacles|BrokenLimit|LabelJudgedBy)\\(\\s*\"([a-z0-9-]+)\"");

  private EngineCodes() {}

  static NavigableSet<String> all() throws IOException {
    NavigableSet<String> codes = new TreeSet<>();
    for (String room :
        new String[] {"resolve", "check", "figures", "records", "trace", "workspace"}) {
      try (Stream<Path> files = Files.walk(SOURCES.resolve(room))) {
        for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
          Matcher declared = DECLARED.matcher(Files.readString(file));
          while (declared.find()) {
            codes.add(declared.group(1));
          }
        }
      }
    }
    RunCodes.all().forEach(code -> codes.remove(code.text()));
    return codes;
  }
}
