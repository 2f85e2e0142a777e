package dev.pellucid.engine.check;

import dev.pellucid.finding.About;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.List;
import java.util.function.Consumer;

/** Confidence is asked for, and for some content nothing says how far lots differ. */
final class UnknownSpread implements Rule {
  private static final Code CODE = new Code("unknown-spread");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(Inspection recipe, Consumer<Finding> out) {
    for (Verdict verdict : recipe.verdicts()) {
      if (verdict.limit().inBatches().isPresent() && verdict.reading().spreadUnknown()) {
        String text = verdict.limit().subject().text();
        LimitWords words = new LimitWords(verdict.limit());
        out.accept(
            Finding.warning(
                    CODE,
                    recipe.recipe().declared(),
                    text + words.terms() + " is judged with too small a spread")
                .seeing("limit written", verdict.limit().origin().span())
                .noting("an ingredient tells its content without saying how far lots differ")
                .helping("write ± after the content, or add " + text + " to practice/spreads.yaml")
                .about(new About(text, About.Side.NONE, List.of())));
      }
    }
  }
}
