package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Line;
import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Word;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A step for one ingredient that the recipe does not hold, or that is poured and not ground. */
final class GrindOfNone implements Rule {
  private static final Code CODE = new Code("grind-of-none");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    for (Pass pass : recipe.recipe().process().inOrder()) {
      for (Setting setting : pass.settings()) {
        if (pass.step().comesBeforeWeighing()
            && setting.ingredient().isPresent()
            && setting.written().ingredient().isPresent()) {
          look(pass, setting.written().ingredient().get(), recipe.recipe().lines(), out);
        }
      }
    }
  }

  private static void look(Pass pass, Word name, List<Line> lines, Remarks out) {
    Optional<Line> line = line(name, lines);
    if (line.isEmpty()) {
      out.accept(none(pass, name, lines));
    } else if (line.get().material().isLiquid()) {
      out.accept(
          Finding.error(
                  CODE, name.span(), name + " is poured, there is nothing of it to " + pass.word())
              .seeing("line written", line.get().name())
              .helping("take this line out, or name what is coarse"));
    }
  }

  private static Optional<Line> line(Word name, List<Line> lines) {
    for (Line line : lines) {
      if (line.material().isCalled(name.text())) {
        return Optional.of(line);
      }
    }
    return Optional.empty();
  }

  private static Finding none(Pass pass, Word name, List<Line> lines) {
    List<String> names = new ArrayList<>();
    for (Line line : lines) {
      if (!line.material().isLiquid()) {
        names.add(line.material().name());
      }
    }
    List<String> near = NearNames.of(name.text(), names);
    Finding finding =
        Finding.error(CODE, name.span(), "this recipe holds no " + name + " to " + pass.word())
            .helping(
                Meant.question(near).orElse("name an ingredient of this recipe, or take it out"));
    return near.size() == 1 ? finding.fixing(name.span(), near.get(0)) : finding;
  }
}
