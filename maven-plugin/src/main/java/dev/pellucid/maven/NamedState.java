package dev.pellucid.maven;

import dev.pellucid.engine.FolderState;
import java.io.File;
import org.apache.maven.plugin.MojoFailureException;

/**
 * A folder of feeds in the state that a name means: a git revision, another folder, or the files as
 * they lie there. {@code git archive} works in a shallow clone, a work tree, with a detached head
 * and in a subfolder of a repository, and touches neither index nor files; what {@code
 * .gitattributes} marks {@code export-ignore} it leaves out.
 */
final class NamedState {
  private NamedState() {}

  /**
   * The state.
   *
   * @param name empty for the files as they lie there
   * @throws MojoFailureException where the name means nothing here
   */
  static FolderState of(File folder, String name) throws MojoFailureException {
    File other = new File(name).isAbsolute() ? new File(name) : new File(folder, name);
    if (name.isEmpty() || other.isDirectory()) {
      return FolderState.at(name.isEmpty() ? folder.toPath() : other.toPath());
    }
    return GitState.bytes(folder, "archive", "--format=zip", name, ".")
        .map(FolderState::packed)
        .orElseThrow(
            () ->
                new MojoFailureException(
                    name
                        + " is neither a folder nor a revision that git knows here; in a shallow"
                        + " clone fetch it first: git fetch --unshallow"));
  }
}
