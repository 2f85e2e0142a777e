package dev.pellucid.maven;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;

/** A goal that says in a sentence what stopped it, whatever that is. */
abstract class StatingGoal extends AbstractMojo {
  private static final String FAULT = "a fault of pellucid, and none of yours, stopped the goal (";

  private static final String FULL =
      "there is not enough memory for this folder; give Maven more, as in MAVEN_OPTS=-Xmx1g";

  /** What a goal does. */
  interface Work {
    void run() throws IOException, MojoExecutionException, MojoFailureException;
  }

  final void stating(Work work) throws MojoExecutionException, MojoFailureException {
    try {
      work.run();
    } catch (GitTrouble trouble) {
      throw new MojoFailureException(trouble.getMessage());
    } catch (IOException broken) {
      throw new MojoExecutionException(said(broken), broken);
    } catch (OutOfMemoryError full) {
      // What was in flight is given up by then, so that there is room for a sentence.
      throw new MojoExecutionException(FULL);
    } catch (RuntimeException | StackOverflowError fault) {
      throw new MojoExecutionException(
          FAULT
              + fault.getClass().getSimpleName()
              + "); take back what was changed last and try again, and send what -X prints to those"
              + " who look after pellucid",
          fault);
    }
  }

  private static String said(IOException broken) {
    if (broken instanceof NoSuchFileException gone) {
      return gone.getFile() + " is gone; another program took it away, run the goal again";
    }
    if (broken instanceof AccessDeniedException closed) {
      return closed.getFile() + " cannot be opened; see whether you may read it";
    }
    String words = broken.getMessage();
    if (broken instanceof FileSystemException) {
      // Its words begin with the path, and most often are nothing else.
      return "cannot read or write " + words;
    }
    return words == null ? "reading or writing failed: " + broken : words;
  }
}
