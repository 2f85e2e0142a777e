package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Position;
import dev.pellucid.text.PrintedPaths;
import dev.pellucid.text.Span;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * All findings and the tally as plain JSON, for scripts. A key never changes its meaning: what is
 * new comes under new keys. Lines and columns count from 1, columns in UTF-16 units, the end is the
 * place after the last letter.
 */
final class FindingsJson {
  private final PrintedPaths paths;

  private FindingsJson(PrintedPaths paths) {
    this.paths = paths;
  }

  static String of(CheckOutcome outcome, List<ReportedFinding> told, PrintedPaths paths) {
    return Json.written(new FindingsJson(paths).root(outcome, told));
  }

  private ObjectNode root(CheckOutcome outcome, List<ReportedFinding> told) {
    ObjectNode root = Json.object().put("format", 2);
    tally(root.putObject("tally"), outcome);
    ArrayNode recipes = root.putArray("recipes");
    outcome.recipes().forEach(recipe -> recipe(recipes.addObject(), recipe));
    ArrayNode findings = root.putArray("findings");
    ArrayNode waived = root.putArray("waived");
    for (ReportedFinding one : told) {
      if (one.waived().isEmpty()) {
        finding(findings.addObject(), one);
      } else {
        waived(waived.addObject(), one, one.waived().get());
      }
    }
    return root;
  }

  private static void tally(ObjectNode tally, CheckOutcome outcome) {
    tally
        .put("recipes", outcome.recipes().size())
        .put("batches", outcome.batches())
        .put("limits", outcome.limits())
        .put("errors", outcome.count(Severity.ERROR))
        .put("warnings", outcome.count(Severity.WARNING))
        .put("notes", outcome.count(Severity.NOTE))
        .put("waived", outcome.waived().size())
        .set("notChecked", Json.texts(outcome.notChecked().map(RecipeOutcome::code).toList()));
  }

  private void recipe(ObjectNode node, RecipeOutcome recipe) {
    node.put("code", recipe.code())
        .put("file", paths.of(recipe.path()))
        .put("checked", recipe.checked())
        .put("kept", recipe.kept())
        .put("broken", recipe.count(LimitOutcome.State.BROKEN))
        .put("notJudged", recipe.count(LimitOutcome.State.NOT_JUDGED))
        .put("waived", recipe.waived().size())
        .set("mendFirst", Json.texts(recipe.mendFirst()));
  }

  private void waived(ObjectNode node, ReportedFinding one, WaivedFinding waived) {
    finding(node, one);
    ObjectNode waiver = node.putObject("waiver");
    place(waiver, waived.waiver());
    waiver.put("until", waived.until()).put("by", waived.by()).put("because", waived.because());
  }

  private void finding(ObjectNode node, ReportedFinding one) {
    Finding finding = one.finding();
    node.put("code", finding.code().text())
        .put("severity", finding.severity().word())
        .put("headline", finding.headline());
    place(node, finding.span());
    node.put("label", finding.label());
    node.put("subject", finding.about().subject());
    node.put("side", Fingerprints.side(finding.about().side()));
    node.set("path", Json.texts(finding.about().path()));
    ArrayNode related = node.putArray("related");
    finding
        .related()
        .forEach(other -> place(related.addObject().put("text", other.text()), other.span()));
    node.set("notes", Json.texts(finding.notes()));
    node.set("helps", Json.texts(finding.helps()));
    ArrayNode edits = node.putArray("edits");
    finding
        .edits()
        .forEach(edit -> place(edits.addObject().put("text", edit.replacement()), edit.span()));
    node.put("fingerprint", one.fingerprint());
  }

  private void place(ObjectNode node, Span span) {
    Position from = span.from();
    Position to = span.to();
    node.put("file", paths.of(span.file()))
        .put("line", from.line())
        .put("column", from.column())
        .put("endLine", to.line())
        .put("endColumn", to.column());
  }
}
