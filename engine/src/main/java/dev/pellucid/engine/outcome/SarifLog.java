package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Related;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.Position;
import dev.pellucid.text.PrintedPaths;
import dev.pellucid.text.Span;
import dev.pellucid.text.TextEdit;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Findings as SARIF 2.1.0 (Static Analysis Results Interchange Format, an OASIS standard): one run,
 * the rules it needed with the words of their pages, one result for each finding. A limit that a
 * waiver lets pass is a result that is suppressed in source, since the waiver stands in the recipe;
 * all other results say that they are not suppressed, as the standard wants it of either all or
 * none.
 */
final class SarifLog {
  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";
  private static final String ROOT = "%SRCROOT%";
  private static final String FINGERPRINT = "pellucid/v1";
  private static final String UNRESERVED = "-._~/";

  private final List<ReportedFinding> told;
  private final PrintedPaths paths;
  private final List<Code> rules;

  private SarifLog(List<ReportedFinding> told, PrintedPaths paths) {
    this.told = told;
    this.paths = paths;
    this.rules = told.stream().map(one -> one.finding().code()).distinct().sorted().toList();
  }

  static String of(List<ReportedFinding> told, PrintedPaths paths) {
    return Json.written(new SarifLog(told, paths).log());
  }

  private ObjectNode log() {
    ObjectNode log = Json.object().put("$schema", SCHEMA).put("version", "2.1.0");
    ObjectNode run = log.putArray("runs").addObject();
    ObjectNode driver = run.putObject("tool").putObject("driver").put("name", "Pellucid");
    ArrayNode described = driver.putArray("rules");
    rules.forEach(code -> rule(described.addObject(), code));
    ObjectNode root = run.putObject("originalUriBaseIds").putObject(ROOT);
    text(root, "description", "The folder from which files are named.");
    run.put("columnKind", "utf16CodeUnits");
    ArrayNode results = run.putArray("results");
    told.forEach(one -> result(results.addObject(), one));
    return log;
  }

  private static void rule(ObjectNode rule, Code code) {
    RuleWords words = RuleWords.of(code);
    rule.put("id", code.text());
    text(rule, "shortDescription", words.inShort());
    text(rule, "fullDescription", words.paragraphs().get(0));
    rule.putObject("help").put("text", words.text()).put("markdown", words.page());
  }

  private void result(ObjectNode result, ReportedFinding one) {
    Finding finding = one.finding();
    result.put("ruleId", finding.code().text());
    result.put("ruleIndex", rules.indexOf(finding.code()));
    result.put("level", level(finding.severity()));
    text(result, "message", message(finding));
    location(result.putArray("locations").addObject(), finding.span());
    related(result, finding);
    result.putObject("partialFingerprints").put(FINGERPRINT, one.fingerprint());
    fixes(result, finding);
    suppressions(result.putArray("suppressions"), one.waived());
  }

  private static String level(Severity severity) {
    return switch (severity) {
      case ERROR -> "error";
      case WARNING -> "warning";
      case NOTE -> "note";
    };
  }

  private static String message(Finding finding) {
    List<String> lines = new ArrayList<>();
    lines.add(finding.headline());
    finding.notes().forEach(note -> lines.add("note: " + note));
    finding.helps().forEach(help -> lines.add("help: " + help));
    return bare(String.join("\n", lines));
  }

  /** Keeps braces from being read as a gap to fill, by section 3.11.5 of the standard. */
  private static String bare(String text) {
    return text.replace("{", "{{").replace("}", "}}");
  }

  private void related(ObjectNode result, Finding finding) {
    if (finding.related().isEmpty()) {
      return;
    }
    ArrayNode places = result.putArray("relatedLocations");
    for (Related related : finding.related()) {
      ObjectNode place = places.addObject().put("id", places.size());
      location(place, related.span());
      text(place, "message", bare(related.text()));
    }
  }

  /** The edits of a mend are one fix, since they go together. */
  private void fixes(ObjectNode result, Finding finding) {
    if (finding.edits().isEmpty()) {
      return;
    }
    ArrayNode changes = result.putArray("fixes").addObject().putArray("artifactChanges");
    for (TextEdit edit : finding.edits()) {
      ObjectNode change = changes.addObject();
      artifact(change, edit.span());
      ObjectNode replacement = change.putArray("replacements").addObject();
      region(replacement.putObject("deletedRegion"), edit.span());
      text(replacement, "insertedContent", edit.replacement());
    }
  }

  private void suppressions(ArrayNode suppressions, Optional<WaivedFinding> waived) {
    waived.ifPresent(
        waiver -> {
          ObjectNode suppression = suppressions.addObject().put("kind", "inSource");
          suppression.put("status", "accepted").put("justification", waiver.justification());
          location(suppression.putObject("location"), waiver.waiver());
        });
  }

  private void location(ObjectNode location, Span span) {
    ObjectNode place = location.putObject("physicalLocation");
    artifact(place, span);
    region(place.putObject("region"), span);
  }

  private void artifact(ObjectNode node, Span span) {
    node.putObject("artifactLocation")
        .put("uri", uri(paths.of(span.file())))
        .put("uriBaseId", ROOT);
  }

  private static void region(ObjectNode region, Span span) {
    Position from = span.from();
    Position to = span.to();
    region.put("startLine", from.line());
    if (span.end() > 0) {
      region.put("startColumn", from.column());
      region.put("endLine", to.line()).put("endColumn", to.column());
    }
  }

  private static void text(ObjectNode node, String key, String text) {
    node.putObject(key).put("text", text);
  }

  /** A path as a relative reference (RFC 3986): all but letters, figures and marks escaped. */
  static String uri(String path) {
    StringBuilder out = new StringBuilder();
    for (byte one : path.getBytes(StandardCharsets.UTF_8)) {
      char c = (char) (one & 0xFF);
      boolean plain = c < 0x80 && (Character.isLetterOrDigit(c) || UNRESERVED.indexOf(c) >= 0);
      if (plain) {
        out.append(c);
      } else {
        out.append('%').append(hex(c >> 4)).append(hex(c & 0xF));
      }
    }
    return out.toString();
  }

  private static char hex(int digit) {
    return "0123456789ABCDEF".charAt(digit);
  }
}
