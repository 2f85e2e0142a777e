package dev.pellucid.engine.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Every goal of the plugin and its parameters, read from the sources of the plugin. */
final class PluginGoals {
  private static final Path SOURCES =
      Path.of("..", "maven-plugin", "src", "main", "java", "dev", "pellucid", "maven");
  private static final Pattern GOAL = Pattern.compile("@Mojo\\(\\s*name = \"([a-z-]+)\"");
  private static final Pattern PARAMETER =
      Pattern.compile("property =\\s*\"(pellucid\\.[A-Za-z]+)\"");
  private static final Pattern OF_FOLDERS = Pattern.compile("extends FolderGoal\\b");

  private final SortedMap<String, SortedSet<String>> parameters;

  private PluginGoals(SortedMap<String, SortedSet<String>> parameters) {
    this.parameters = parameters;
  }

  static PluginGoals read() throws IOException {
    SortedSet<String> ofFolders = parameters(Files.readString(SOURCES.resolve("FolderGoal.java")));
    SortedMap<String, SortedSet<String>> goals = new TreeMap<>();
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(path -> path.toString().endsWith("Mojo.java")).toList()) {
        String source = Files.readString(file);
        Matcher goal = GOAL.matcher(source);
        if (goal.find()) {
          SortedSet<String> own = parameters(source);
          own.addAll(OF_FOLDERS.matcher(source).find() ? ofFolders : new TreeSet<>());
          goals.put(goal.group(1), own);
        }
      }
    }
    goals.put("help", new TreeSet<>());
    return new PluginGoals(goals);
  }

  private static SortedSet<String> parameters(String source) {
    SortedSet<String> found = new TreeSet<>();
    PARAMETER.matcher(source).results().forEach(match -> found.add(match.group(1)));
    return found;
  }

  SortedSet<String> names() {
    return new TreeSet<>(parameters.keySet());
  }

  /** What is wrong with a goal of this name that gets this parameter. */
  Optional<String> slip(String goal, String parameter) {
    SortedSet<String> known = parameters.get(goal);
    if (known == null) {
      return Optional.of("the plugin has no goal " + goal);
    }
    return known.contains(parameter)
        ? Optional.empty()
        : Optional.of(goal + " has no parameter " + parameter);
  }

  Optional<String> slip(String goal) {
    return parameters.containsKey(goal)
        ? Optional.empty()
        : Optional.of("the plugin has no goal " + goal);
  }
}
