package dev.pellucid.engine.folder;

import java.io.IOException;
import java.io.InputStream;
import java.net.JarURLConnection;
import java.net.URI;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.jar.JarEntry;

/** The pages about findings that come with this program, one for each code. */
public final class RulePages {
  private static final String PAGES = "/dev/pellucid/rules/";
  private static final String END = ".md";

  /** A page that is always there. */
  private static final String ONE = "below-minimum";

  private RulePages() {}

  /** The page of a code, in Markdown; empty where no finding has it. */
  public static Optional<String> of(String code) throws IOException {
    if (!code.matches("[a-z0-9-]+")) {
      return Optional.empty();
    }
    try (InputStream page = RulePages.class.getResourceAsStream(PAGES + code + END)) {
      return page == null
          ? Optional.empty()
          : Optional.of(new String(page.readAllBytes(), StandardCharsets.UTF_8));
    }
  }

  /** Every code that has a page, in order. */
  public static List<String> codes() throws IOException {
    URL one = RulePages.class.getResource(PAGES + ONE + END);
    if (one == null) {
      return List.of();
    }
    List<String> codes = new ArrayList<>();
    for (String name : one.getProtocol().equals("jar") ? inJar(one) : inFolder(one)) {
      if (name.endsWith(END)) {
        codes.add(name.substring(name.lastIndexOf('/') + 1, name.length() - END.length()));
      }
    }
    Collections.sort(codes);
    return codes;
  }

  private static List<String> inJar(URL page) throws IOException {
    JarURLConnection jar = (JarURLConnection) page.openConnection();
    List<String> names = new ArrayList<>();
    for (JarEntry entry : Collections.list(jar.getJarFile().entries())) {
      if (("/" + entry.getName()).startsWith(PAGES)) {
        names.add(entry.getName());
      }
    }
    return names;
  }

  private static List<String> inFolder(URL page) throws IOException {
    Path folder = Path.of(URI.create(page.toString())).resolveSibling("");
    List<String> names = new ArrayList<>();
    try (DirectoryStream<Path> pages = Files.newDirectoryStream(folder)) {
      for (Path one : pages) {
        names.add(String.valueOf(one.getFileName()));
      }
    }
    return names;
  }
}
