package dev.pellucid.engine.goal;

import dev.pellucid.engine.folder.Texts;
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
   * How a goal was called.
   *
   * @param goal as it is written: {@code check}
   * @param working the folder of the command line
   * @param project the folder of the project, from which Maven takes the folders of parameters
   */
  public record Called(String goal, Path working, Path project) {
    public Called {
      working = working.toAbsolutePath().normalize();
      project = project.toAbsolutePath().normalize();
    }

    /** The command for another folder, to be typed where this goal was called. */
    private String on(Path folder) throws IOException {
      Path feeds = folder.toAbsolutePath().normalize();
      String command = "mvn pellucid:" + goal;
      if (Texts.holds(feeds, "pom.xml")) {
        return command + " -f " + Command.word("", Command.seen(working, feeds));
      }
      String from =
          project.equals(working) ? "" : " -f " + Command.word("", Command.seen(working, project));
      return command
          + from
          + " "
          + Command.word("-Dpellucid.folder=", Command.seen(project, feeds));
    }
  }

  /**
   * One message; empty in a folder of feeds, and where nothing of feeds lies below either.
   *
   * @param called how the goal was called, so that what is told can be typed there
   * @throws IOException where the disk fails
   */
  public static Optional<String> message(Path root, Called called) throws IOException {
    if (FolderLayout.isFeedFolder(root)) {
      return Optional.empty();
    }
    Texts below = Texts.at(root);
    List<String> folders = folders(below);
    if (!folders.isEmpty()) {
      return Optional.of(elsewhere(root, called, folders));
    }
    return KINDS.stream()
        .flatMap(kind -> below.ending(kind).stream())
        .findFirst()
        .map(path -> withoutSettings(root, path));
  }

  private static List<String> folders(Texts below) {
    TreeSet<String> folders = new TreeSet<>();
    for (String path : below.paths()) {
      if (path.endsWith("/" + Texts.SETTINGS)) {
        folders.add(path.substring(0, path.length() - Texts.SETTINGS.length() - 1));
      }
    }
    return List.copyOf(folders);
  }

  private static String elsewhere(Path root, Called called, List<String> folders)
      throws IOException {
    List<String> lines = new ArrayList<>();
    lines.add(
        "there is no "
            + Texts.SETTINGS
            + " in "
            + root
            + ", so it is no folder of feeds; below it "
            + (folders.size() == 1 ? "is one" : "are " + folders.size())
            + ", say which:");
    for (String folder : folders.subList(0, Math.min(MOST, folders.size()))) {
      lines.add("  " + called.on(root.resolve(folder)));
    }
    if (folders.size() > MOST) {
      lines.add("  and " + (folders.size() - MOST) + " more");
    }
    return String.join("\n", lines);
  }

  private static String withoutSettings(Path root, String path) {
    return String.join(
        "\n",
        "there is no " + Texts.SETTINGS + " in " + root + ", and " + path + " lies below it;",
        "if this is your folder of feeds, write that file with these lines:",
        "  format: 1",
        "  name: the name of your mill or farm",
        "  currency: EUR",
        "  jurisdiction: none",
        "or let mvn pellucid:init write it, which writes over nothing");
  }
}
