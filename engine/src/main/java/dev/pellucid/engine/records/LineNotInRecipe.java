package dev.pellucid.engine.records;

import dev.pellucid.engine.data.BatchRecord.Entry;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.text.Meant;
import dev.pellucid.text.NearNames;
import java.util.List;
import java.util.function.Consumer;

/** Something was weighed that the recipe does not ask for. */
final class LineNotInRecipe implements RecordRule {
  private static final Code CODE = new Code("line-not-in-recipe");

  @Override
  public Code code() {
    return CODE;
  }

  @Override
  public void look(MadeBatch batch, Consumer<Finding> out) {
    List<String> lines =
        batch.order().asks().stream().map(ask -> ask.material().name()).distinct().toList();
    for (Entry entry : batch.record().entries()) {
      if (batch.order().named(entry.line()).isEmpty()) {
        List<String> near = NearNames.of(entry.line(), lines);
        out.accept(
            Finding.error(
                    CODE, entry.name(), entry.line() + " is no line of " + batch.order().code())
                .noting("the feed as made is computed without it")
                .helping(
                    Meant.question(near)
                        .orElse(
                            "if it went in, hold the batch; else take the line out of the record")));
      }
    }
  }
}
