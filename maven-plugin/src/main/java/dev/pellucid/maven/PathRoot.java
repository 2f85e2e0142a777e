package dev.pellucid.maven;

import dev.pellucid.text.PrintedPaths;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.maven.plugin.MojoFailureException;
import org.jspecify.annotations.Nullable;

/**
 * The folder from which files are named on the console and in reports, so that other programs find
 * them: a code host knows files from the root of what it checked out.
 *
 * <p>It is the one that is asked for; else the root of the repository, which is the nearest folder
 * with {@code .git} in it, a folder or the file of a linked work tree; else the folder where Maven
 * was started. Where none of them holds the folder of feeds, that one's own name stands before its
 * files. Nothing of git is called for it.
 */
final class PathRoot {
  private static final String GIT = ".git";

  private PathRoot() {}

  /**
   * How the files of a folder are named.
   *
   * @param asked for by a person
   * @param started where Maven was
   * @throws MojoFailureException where what is asked for does not hold the folder
   */
  static PrintedPaths paths(File folder, @Nullable File asked, @Nullable File started)
      throws MojoFailureException {
    Path feeds = whole(folder);
    if (asked != null) {
      return below(whole(asked), feeds)
          .or(() -> belowLinks(asked, folder))
          .orElseThrow(() -> elsewhere(asked, folder));
    }
    return repository(feeds)
        .or(() -> Optional.ofNullable(started).map(PathRoot::whole))
        .flatMap(root -> below(root, feeds))
        .orElseGet(() -> new PrintedPaths(feeds.getFileName() + "/"));
  }

  private static Path whole(File folder) {
    return folder.toPath().toAbsolutePath().normalize();
  }

  private static Optional<Path> repository(Path feeds) {
    for (Path at = feeds; at != null; at = at.getParent()) {
      if (at.resolve(GIT).toFile().exists()) {
        return Optional.of(at);
      }
    }
    return Optional.empty();
  }

  private static Optional<PrintedPaths> below(Path root, Path feeds) {
    if (!feeds.startsWith(root)) {
      return Optional.empty();
    }
    // The way from a folder to itself has one empty part.
    List<String> parts = new ArrayList<>();
    root.relativize(feeds).forEach(part -> parts.add(part.toString()));
    String way = String.join("/", parts);
    return Optional.of(new PrintedPaths(way.isEmpty() ? "" : way + "/"));
  }

  /** The same where one of the two is named through a link. */
  private static Optional<PrintedPaths> belowLinks(File asked, File folder) {
    try {
      return below(asked.toPath().toRealPath(), folder.toPath().toRealPath());
    } catch (IOException gone) {
      return Optional.empty();
    }
  }

  private static MojoFailureException elsewhere(File asked, File folder) {
    return new MojoFailureException(
        "pellucid.pathRoot is "
            + asked
            + ", which does not hold the folder "
            + folder
            + "; name a folder that holds it, or take pellucid.pathRoot out to have paths from the"
            + " root of the repository");
  }
}
