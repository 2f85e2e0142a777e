package dev.pellucid.maven;

import java.io.File;
import java.io.IOException;
import org.apache.maven.plugin.MojoExecutionException;
import org.jspecify.annotations.Nullable;

/** The folder that a goal works on. */
final class Places {
  private Places() {}

  static File folder(@Nullable File folder) throws MojoExecutionException {
    if (folder == null || !folder.isDirectory()) {
      throw new MojoExecutionException(
          "there is no folder " + folder + "; say which with -Dpellucid.folder=recipes");
    }
    return folder;
  }

  /** What is printed before each path: the folder's own name. */
  static String prefix(File folder) {
    return folder.getName() + "/";
  }

  static String refused(String path) {
    return "left alone, a fault of the formatter and not of the file: " + path;
  }

  static MojoExecutionException unreadable(IOException broken) {
    return new MojoExecutionException("the folder cannot be read: " + broken.getMessage());
  }
}
