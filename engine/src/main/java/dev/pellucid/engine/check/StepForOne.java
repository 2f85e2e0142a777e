package dev.pellucid.engine.check;

import dev.pellucid.engine.resolve.Pass;
import dev.pellucid.engine.resolve.Setting;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.ProcessLine;
import dev.pellucid.syntax.Word;
import dev.pellucid.text.Span;

/**
 * A line that names one ingredient for a step that is done to all that is in the machine. What it
 * asks would not be done, since no other line asks it of the step.
 */
final class StepForOne implements Rule {
  private static final Code CODE = new Code("step-for-one");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(RuleContext recipe, Remarks out) {
    for (Pass pass : recipe.recipe().process().inOrder()) {
      for (Setting setting : pass.settings()) {
        if (!pass.step().comesBeforeWeighing() && setting.written().ingredient().isPresent()) {
          out.accept(finding(pass, setting.written(), setting.written().ingredient().get()));
        }
      }
    }
  }

  private static Finding finding(Pass pass, ProcessLine line, Word name) {
    return Finding.error(
            CODE,
            name.span(),
            pass.word() + " is done to the whole feed, it cannot be told for " + name + " alone")
        .helping(
            "take the name out: "
                + pass.word()
                + " "
                + line.propertyAsWritten()
                + " "
                + line.target().asWritten()
                + " is for all that "
                + (pass.coats() ? "is coated on" : "goes through the step"))
        .fixing(withBlanks(name.span()), "");
  }

  /** The name and what parts it from the next word. */
  private static Span withBlanks(Span name) {
    String text = name.file().text();
    int end = name.end();
    while (end < text.length() && (text.charAt(end) == ' ' || text.charAt(end) == '\t')) {
      end++;
    }
    return name.file().span(name.start(), end);
  }
}
