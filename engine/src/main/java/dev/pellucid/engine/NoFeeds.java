package dev.pellucid.engine;

import dev.pellucid.engine.folder.FeedFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * What to do in a folder that is none of feeds, since no {@code pellucid.yaml} stands in it. A goal
 * that went on would read all that lies below as one folder, and find more wrong than anyone reads.
 */
public final class NoFeeds {
  private static final List<String> KINDS = List.of(".recipe", ".premix", ".limits");

  /** Of more folders so many are named. */
  private static final int MOST = 8;

  private NoFeeds() {}

  /**
   * One message; empty in a folder of feeds, and where nothing of feeds lies below either.
   *
   * @param goal as it is called: {@code check}
   * @throws IOException where the disk fails
   */
  public static Optional<String> message(Path root, String goal) throws IOException {
    if (FolderLayout.isFeedFolder(root)) {
      return Optional.empty();
    }
    FeedFolder below = FeedFolder.list(root, "");
    List<String> folders = folders(below);
    if (!folders.isEmpty()) {
      return Optional.of(elsewhere(root, goal, folders));
    }
    return KINDS.stream()
        .flatMap(kind -> below.ending(kind).stream())
        .findFirst()
        .map(path -> withoutSettings(root, path));
  }

  private static List<String> folders(FeedFolder below) {
    TreeSet<String> folders = new TreeSet<>();
    for (String path : below.paths()) {
      if (path.endsWith("/" + FeedFolder.SETTINGS)) {
        folders.add(path.substring(0, path.length() - FeedFolder.SETTINGS.length() - 1));
      }
    }
    return List.copyOf(folders);
  }

  private static String elsewhere(Path root, String goal, List<String> folders) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "there is no "
            + FeedFolder.SETTINGS
            + " in "
            + root
            + ", so it is no folder of feeds; below it "
            + (folders.size() == 1 ? "is one" : "are " + folders.size())
            + ", say which:");
    for (String folder : folders.subList(0, Math.min(MOST, folders.size()))) {
      boolean builds = FeedFolder.holds(root.resolve(folder), "pom.xml");
      lines.add("  mvn pellucid:" + goal + (builds ? " -f " : " -Dpellucid.folder=") + folder);
    }
    if (folders.size() > MOST) {
      lines.add("  and " + (folders.size() - MOST) + " more");
    }
    return String.join("\n", lines);
  }

  private static String withoutSettings(Path root, String path) {
    return String.join(
        "\n",
        "there is no " + FeedFolder.SETTINGS + " in " + root + ", and " + path + " lies below it;",
        "if this is your folder of feeds, write that file with these lines:",
        "  format: 1",
        "  name: the name of your mill or farm",
        "  currency: EUR",
        "  jurisdiction: none");
  }
}
