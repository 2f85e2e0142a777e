package dev.pellucid.maven;

import dev.pellucid.engine.Pellucid;
import dev.pellucid.engine.goal.FolderLayout;
import dev.pellucid.engine.goal.FolderState;
import dev.pellucid.engine.goal.NoFeeds;
import dev.pellucid.text.PrintedPaths;
import dev.pellucid.text.Unseen;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Component;
import org.apache.maven.plugins.annotations.Parameter;
import org.eclipse.aether.RepositorySystem;
import org.eclipse.aether.RepositorySystemSession;
import org.eclipse.aether.repository.RemoteRepository;
import org.jspecify.annotations.Nullable;

/** A goal that works on a folder of feeds: which one, and whether to work at all. */
abstract class FolderGoal extends StatingGoal {
  /**
   * The folder of feeds: the one that holds pellucid.yaml.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.folder", defaultValue = "${project.basedir}", required = true)
  private @Nullable File folder;

  /** The folder of the project; what is written below it stays in it. */
  @Parameter(defaultValue = "${project.basedir}", readonly = true)
  private @Nullable File project;

  /**
   * The folder from which files are named on the console, in reports and on pages; it holds the
   * folder of recipes. Where none is given it is the root of the repository, and without a
   * repository the folder where Maven was started.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.pathRoot")
  private @Nullable File pathRoot;

  /** The folder where Maven was started. */
  @Parameter(defaultValue = "${session.executionRootDirectory}", readonly = true)
  private @Nullable File started;

  /**
   * Whether the goal does nothing.
   *
   * @since 0.1.0
   */
  @Parameter(property = "pellucid.skip", defaultValue = "false")
  private boolean skip;

  // What stands in its place, of javax.inject, Maven 4 no longer brings to every plugin.
  @SuppressWarnings("deprecation")
  @Component
  private @Nullable RepositorySystem system;

  @Parameter(defaultValue = "${repositorySystemSession}", readonly = true)
  private @Nullable RepositorySystemSession session;

  @Parameter(defaultValue = "${project.remotePluginRepositories}", readonly = true)
  private @Nullable List<RemoteRepository> repositories;

  /** The version of this plugin. */
  @Parameter(defaultValue = "${plugin.version}", readonly = true)
  private @Nullable String ownVersion;

  @Override
  public final void execute() throws MojoExecutionException, MojoFailureException {
    if (skip) {
      getLog().info("pellucid: skipped");
      return;
    }
    File feeds = folder;
    if (feeds == null || !feeds.isDirectory()) {
      throw new MojoExecutionException(
          "there is no folder " + feeds + "; say which with -Dpellucid.folder=recipes");
    }
    stating(() -> workIn(feeds));
  }

  private void workIn(File feeds) throws IOException, MojoExecutionException, MojoFailureException {
    if (needsFeeds()) {
      Optional<String> message = NoFeeds.message(feeds.toPath(), called(feeds));
      if (message.isPresent()) {
        throw new MojoFailureException(message.get());
      }
    }
    work(feeds);
  }

  /**
   * Stops the build where this program broke at a file, whatever else may pass; what it broke at is
   * printed for whoever asks for everything.
   *
   * @throws MojoFailureException where it did
   */
  final void refuseFaults(List<Throwable> faults) throws MojoFailureException {
    faults.forEach(fault -> getLog().debug(fault));
    if (!faults.isEmpty()) {
      throw new MojoFailureException(
          "a fault of pellucid kept files from being checked; its findings name them");
    }
  }

  /**
   * Refuses a folder to write into that is below the project by name only.
   *
   * @param parameter that names another one
   * @throws IOException with a sentence that says what to do
   */
  final void refuseLinkOut(File to, String parameter) throws IOException {
    File base = project == null ? folder : project;
    if (base != null) {
      Pellucid.refuseLinkOut(base.toPath(), to.toPath(), parameter);
    }
  }

  /**
   * The folder as it lies there, with the data under it that come with this plugin, and how it was
   * in earlier commits, which is asked of git where a batch record names one.
   */
  final FolderState feeds(File folder) {
    return ComingAlong.under(FolderState.at(folder.toPath()))
        .knowing(past(new Git(folder), "HEAD"));
  }

  /** How a folder was before a commit. */
  final GitPast past(Git git, String tip) {
    return new GitPast(git, tip, new DataOfThen(ownVersion, formerData()));
  }

  /** The data of other versions of the plugin; empty where Maven cannot be asked for them. */
  final Optional<FormerData> formerData() {
    return system == null || session == null
        ? Optional.empty()
        : Optional.of(
            new FormerData(system, session, repositories == null ? List.of() : repositories));
  }

  /** Whether it is a mistake to call it where no feeds are. */
  boolean needsFeeds() {
    return true;
  }

  private NoFeeds.Called called(File feeds) {
    File base = project == null ? feeds : project;
    return new NoFeeds.Called(goal(), Path.of(""), base.toPath());
  }

  /** As it is called behind the prefix: {@code batch-sheet} of {@code BatchSheetMojo}. */
  private String goal() {
    String words = getClass().getSimpleName().replace("Mojo", "");
    return words.replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
  }

  /** Whether there is anything to work on. */
  final boolean isFeedFolder() {
    return !skip && folder != null && FolderLayout.isFeedFolder(folder.toPath());
  }

  /** Says lines of a report. */
  final void show(String report) {
    report.lines().map(Unseen::shown).forEach(getLog()::info);
  }

  /** Says which files of the folder were changed. */
  final void changed(List<String> written, PrintedPaths paths) {
    written.forEach(path -> getLog().info("changed " + paths.of(path)));
  }

  abstract void work(File folder) throws IOException, MojoExecutionException, MojoFailureException;

  /** How files are named on the console, in reports and on pages. */
  final PrintedPaths paths(File folder) throws MojoFailureException {
    return PathRoot.paths(folder, pathRoot, started);
  }
}
