package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Fingerprint;
import dev.pellucid.finding.Related;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Position;
import dev.pellucid.text.PrintedPaths;
import dev.pellucid.text.Span;
import dev.pellucid.text.TextEdit;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/**
 * All findings and the tally as plain JSON, for scripts. A key never changes its meaning: what is
 * new comes under new keys. Lines and columns count from 1, columns in UTF-16 units, the end is the
 * place after the last letter.
 */
final class FindingsJson implements Report {
  private final CheckOutcome outcome;
  private final List<ReportedFinding> told;
  private final PrintedPaths paths;

  FindingsJson(CheckOutcome outcome, List<ReportedFinding> told, PrintedPaths paths) {
    this.outcome = outcome;
    this.told = told;
    this.paths = paths;
  }

  @Override
  public void writeTo(OutputStream out) throws IOException {
    Json.write(out, this::write);
  }

  private void write(Json json) {
    json.put("format", 2);
    tally(json);
    json.list("recipes");
    for (RecipeStanding recipe : outcome.recipes()) {
      recipe(json, recipe);
    }
    json.end();
    json.list("findings");
    for (ReportedFinding one : told) {
      if (one.waived().isEmpty()) {
        json.object();
        finding(json, one);
        json.end();
      }
    }
    json.end();
    json.list("waived");
    for (ReportedFinding one : told) {
      if (one.waived().isPresent()) {
        waived(json, one, one.waived().get());
      }
    }
    json.end();
  }

  private void tally(Json json) {
    json.object("tally");
    json.put("recipes", outcome.recipes().size());
    json.put("batches", outcome.batches());
    json.put("limits", outcome.limits());
    json.put("limitsOfLaw", outcome.askers().law());
    json.put("limitsOfGuidance", outcome.askers().guidance());
    json.put("limitsOfNeed", outcome.askers().need());
    json.put("limitsOfPractice", outcome.askers().practice());
    json.put("limitsOfRecipes", outcome.askers().recipes());
    json.put("fewerThanSisters", outcome.askers().fewer());
    json.put("errors", outcome.count(Severity.ERROR));
    json.put("warnings", outcome.count(Severity.WARNING));
    json.put("notes", outcome.count(Severity.NOTE));
    json.put("waived", outcome.waived().size());
    json.put("notChecked", outcome.notChecked());
    json.end();
  }

  private void recipe(Json json, RecipeStanding recipe) {
    json.object();
    json.put("code", recipe.code());
    json.put("file", paths.of(recipe.path()));
    json.put("checked", recipe.checked());
    json.put("kept", recipe.kept());
    json.put("broken", recipe.broken());
    json.put("notJudged", recipe.notJudged());
    json.put("beyondGuidance", recipe.beyondGuidance());
    json.put("waived", recipe.waived().size());
    json.put("mendFirst", recipe.mendFirst());
    json.end();
  }

  private void waived(Json json, ReportedFinding one, WaivedFinding waived) {
    json.object();
    finding(json, one);
    json.object("waiver");
    place(json, waived.waiver());
    json.put("until", waived.until());
    json.put("by", waived.by());
    json.put("because", waived.because());
    json.end();
    json.end();
  }

  private void finding(Json json, ReportedFinding one) {
    Finding finding = one.finding();
    json.put("code", finding.code().text());
    json.put("severity", finding.severity().word());
    json.put("headline", finding.headline());
    place(json, finding.span());
    json.put("label", finding.label());
    json.put("subject", finding.about().subject());
    json.put("side", Fingerprint.side(finding.about().side()));
    json.put("path", finding.about().path());
    json.list("related");
    for (Related other : finding.related()) {
      beside(json, other.text(), other.span());
    }
    json.end();
    json.put("notes", finding.notes());
    json.put("helps", finding.helps());
    json.list("edits");
    for (TextEdit edit : finding.edits()) {
      beside(json, edit.replacement(), edit.span());
    }
    json.end();
    json.put("fingerprint", one.fingerprint());
  }

  private void beside(Json json, String text, Span span) {
    json.object();
    json.put("text", text);
    place(json, span);
    json.end();
  }

  private void place(Json json, Span span) {
    Position from = span.from();
    Position to = span.to();
    json.put("file", paths.of(span.file()));
    json.put("line", from.line());
    json.put("column", from.column());
    json.put("endLine", to.line());
    json.put("endColumn", to.column());
  }
}
