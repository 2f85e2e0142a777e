package dev.pellucid.engine.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The names of the test classes of engine and plugin. */
final class TestClasses {
  private static final String JAVA = "Test.java";

  private TestClasses() {}

  static Set<String> names() throws IOException {
    Set<String> names = new TreeSet<>();
    for (Path module : List.of(Path.of("."), Path.of("..", "maven-plugin"))) {
      try (Stream<Path> files = Files.walk(module.resolve(Path.of("src", "test", "java")))) {
        files
            .map(file -> String.valueOf(file.getFileName()))
            .filter(name -> name.endsWith(JAVA))
            .forEach(name -> names.add(name.replace(".java", "")));
      }
    }
    return names;
  }
}
