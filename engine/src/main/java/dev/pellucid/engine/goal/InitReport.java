package dev.pellucid.engine.goal;

import dev.pellucid.engine.folder.Ground;
import dev.pellucid.engine.folder.Outputs;
import dev.pellucid.engine.starter.Begun;
import dev.pellucid.engine.starter.LeftAlone;
import dev.pellucid.engine.starter.Plan;
import dev.pellucid.engine.starter.StarterFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What came of asking for a folder of feeds.
 *
 * @param plan what it is to get; empty where there are problems
 * @param problems why it gets nothing, and what to do
 */
public record InitReport(Optional<Plan> plan, List<String> problems) {
  public InitReport {
    problems = List.copyOf(problems);
  }

  static InitReport refused(List<String> problems) {
    return new InitReport(Optional.empty(), problems);
  }

  static InitReport of(Plan plan) {
    return new InitReport(Optional.of(plan), List.of());
  }

  /**
   * Writes what is not there yet, and nothing else.
   *
   * @throws IOException where a file cannot be written; those before it are there
   */
  public Written write(Path root) throws IOException {
    Ground ground = Ground.at(root);
    Plan whole = plan.orElseThrow(() -> new IllegalStateException(String.join("; ", problems)));
    return new Written(write(whole, Outputs.over(root), ground), root, ground.isInRepository());
  }

  /**
   * What was written.
   *
   * @param inRepository whether a version control looks after the folder
   */
  public record Written(Begun begun, Path root, boolean inRepository) {
    /** What was done, a line each. */
    public List<String> done() {
      return begun.done();
    }

    /**
     * What comes next, a line each.
     *
     * @param working the folder of the command line
     */
    public List<String> next(Path working) {
      return begun.next(called(root, working), inRepository);
    }
  }

  private static Begun write(Plan plan, Outputs outputs, Ground ground) throws IOException {
    List<String> written = new ArrayList<>();
    List<LeftAlone> left = new ArrayList<>();
    for (StarterFile file : plan.files()) {
      if (outputs.writeNew(file.path(), file.text())) {
        written.add(file.path());
      } else {
        left.add(LeftAlone.of(file, ground.text(file.path())));
      }
    }
    return new Begun(plan, written, left);
  }

  private static String called(Path root, Path working) {
    Path folder = root.toAbsolutePath().normalize();
    Path from = working.toAbsolutePath().normalize();
    return folder.equals(from) ? "mvn" : "mvn -f " + Command.word("", Command.seen(from, folder));
  }
}
