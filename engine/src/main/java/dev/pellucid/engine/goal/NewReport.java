package dev.pellucid.engine.goal;

import dev.pellucid.engine.folder.Outputs;
import dev.pellucid.engine.form.Form;
import dev.pellucid.text.Plural;
import dev.pellucid.text.Sentence;
import dev.pellucid.text.ToBeGiven;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What came of asking for a new file.
 *
 * @param form what it would be; empty where there is a problem
 * @param problem why there is none, and what to do
 * @param next what a person does with it, a line each
 */
public record NewReport(Optional<Form> form, Optional<String> problem, List<String> next) {
  public NewReport {
    next = List.copyOf(next);
  }

  static NewReport of(Form form, String... next) {
    return new NewReport(Optional.of(form), Optional.empty(), List.of(next));
  }

  static NewReport refused(String problem) {
    return new NewReport(Optional.empty(), Optional.of(Sentence.of(problem)), List.of());
  }

  /** Where the file would stand below the folder; empty where there is a problem. */
  public String path() {
    return form.map(Form::path).orElse("");
  }

  /**
   * Writes the file where nothing bears its name.
   *
   * @return what was done, a line each; empty where something bears the name
   * @throws IOException where it cannot be written
   */
  public List<String> write(Path root) throws IOException {
    Form whole = form.orElseThrow(() -> new IllegalStateException(problem.orElse("")));
    if (!Outputs.over(root).writeNew(whole.path(), whole.text())) {
      return List.of();
    }
    List<String> done = new ArrayList<>();
    done.add(whole.path() + " written; " + toGive(whole.toGive()));
    done.addAll(next);
    return done;
  }

  private static String toGive(int lines) {
    return lines == 0
        ? "nothing in it is still to be given"
        : "in "
            + Plural.of(lines, "line")
            + " "
            + ToBeGiven.MARK
            + " stands for what is still to be given, and check names each";
  }
}
