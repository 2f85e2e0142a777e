package dev.pellucid.engine.promise;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The goals and their parameters, read from the sources of the plugin. */
final class GoalRows {
  private static final Path SOURCES =
      Path.of("..", "maven-plugin", "src", "main", "java", "dev", "pellucid", "maven");
  private static final String EVERY_GOAL = "every goal";
  private static final Pattern GOAL = Pattern.compile("@Mojo\\(\\s*name = \"([a-z-]+)\"");
  private static final Pattern PARAMETER =
      Pattern.compile(
          "@Parameter\\(\\s*property = \"([A-Za-z.]+)\"[^;]*?\\)\\s+private (?:@Nullable )?\\w+ (\\w+)");
  private static final String PREFIX = "pellucid.";

  private GoalRows() {}

  static List<Row> all() throws IOException {
    Map<String, List<String>> words = new LinkedHashMap<>();
    words.put(EVERY_GOAL, List.of());
    try (Stream<Path> files = Files.list(SOURCES)) {
      for (Path file : files.sorted().toList()) {
        put(words, Files.readString(file));
      }
    }
    return Lists.rows(words);
  }

  private static void put(Map<String, List<String>> words, String source) {
    List<String> parameters = parameters(source);
    Matcher goal = GOAL.matcher(source);
    if (goal.find()) {
      parameters.add(0, "goal");
      words.put(goal.group(1), parameters);
    } else if (!parameters.isEmpty()) {
      words.put(EVERY_GOAL, parameters);
    }
  }

  /** By its property, and by its name in a POM where that is another. */
  private static List<String> parameters(String source) {
    List<String> parameters = new ArrayList<>();
    Matcher found = PARAMETER.matcher(source);
    while (found.find()) {
      String property = found.group(1);
      String name = found.group(2);
      parameters.add(property.equals(PREFIX + name) ? property : property + "=" + name);
    }
    return parameters;
  }
}
