package dev.pellucid.engine.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The version of the plugin, read from the project. */
final class OwnVersion {
  private static final Pattern VERSION = Pattern.compile("<revision>([^<]+)</revision>");

  private OwnVersion() {}

  static String read() throws IOException {
    Matcher version = VERSION.matcher(Files.readString(Path.of("..", "pom.xml")));
    if (!version.find()) {
      throw new AssertionError("pom.xml says no version");
    }
    return version.group(1);
  }
}
