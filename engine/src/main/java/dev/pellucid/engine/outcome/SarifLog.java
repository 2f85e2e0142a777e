package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Related;
import dev.pellucid.finding.Severity;
import dev.pellucid.text.BundledPath;
import dev.pellucid.text.PastPath;
import dev.pellucid.text.Position;
import dev.pellucid.text.PrintedPaths;
import dev.pellucid.text.Span;
import dev.pellucid.text.TextEdit;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Findings as SARIF 2.1.0 (Static Analysis Results Interchange Format, an OASIS standard): one run,
 * the rules it needed with the words of their pages, one result for each finding. A limit that a
 * waiver lets pass is a result that is suppressed in source, since the waiver stands in the recipe;
 * all other results say that they are not suppressed, as the standard wants it of either all or
 * none.
 *
 * <p>The other places of a finding are linked from its message, since some readers show none but
 * those. The run is named by the folder, so that of two folders of a repository neither takes the
 * place of the other.
 */
final class SarifLog implements Report {
  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";
  private static final String ROOT = "%SRCROOT%";
  private static final String FINGERPRINT = "pellucid/v1";
  private static final String UNRESERVED = "-._~/";

  private final List<ReportedFinding> told;
  private final PrintedPaths paths;
  private final Tool tool;
  private final List<Code> rules;

  SarifLog(List<ReportedFinding> told, PrintedPaths paths, Tool tool) {
    this.told = told;
    this.paths = paths;
    this.tool = tool;
    this.rules = told.stream().map(one -> one.finding().code()).distinct().sorted().toList();
  }

  @Override
  public void writeTo(OutputStream out) throws IOException {
    Json.write(out, this::log);
  }

  private void log(Json json) {
    json.put("$schema", SCHEMA);
    json.put("version", "2.1.0");
    json.list("runs");
    json.object();
    json.object("tool");
    json.object("driver");
    json.put("name", "Pellucid");
    putWhereTold(json, "version", tool.version());
    putWhereTold(json, "informationUri", tool.address());
    json.list("rules");
    for (Code code : rules) {
      rule(json, code);
    }
    json.end();
    json.end();
    json.end();
    json.object("automationDetails");
    json.put("id", "pellucid/" + uri(paths.before()));
    json.end();
    json.object("originalUriBaseIds");
    json.object(ROOT);
    text(json, "description", "The folder from which files are named.");
    json.end();
    json.end();
    json.put("columnKind", "utf16CodeUnits");
    json.list("results");
    for (ReportedFinding one : told) {
      result(json, one);
    }
    json.end();
    json.end();
    json.end();
  }

  private void rule(Json json, Code code) {
    RuleWords words = RuleWords.of(code);
    json.object();
    json.put("id", code.text());
    text(json, "shortDescription", words.inShort());
    text(json, "fullDescription", words.paragraphs().get(0));
    json.object("help");
    json.put("text", words.text());
    json.put("markdown", words.markdown());
    json.end();
    if (!tool.rulesAddress().isEmpty()) {
      json.put("helpUri", tool.rulesAddress() + "/" + code + ".md");
    }
    RuleKinds.of(code).ifPresent(kind -> kind(json, kind));
    json.end();
  }

  private static void kind(Json json, RuleKinds.Kind kind) {
    json.object("defaultConfiguration");
    json.put("level", kind.level());
    json.end();
    json.object("properties");
    json.put("tags", List.of(kind.tag()));
    json.end();
  }

  private static void putWhereTold(Json json, String key, String value) {
    if (!value.isEmpty()) {
      json.put(key, value);
    }
  }

  private void result(Json json, ReportedFinding one) {
    Finding finding = one.finding();
    json.object();
    json.put("ruleId", finding.code().text());
    json.put("ruleIndex", rules.indexOf(finding.code()));
    json.put("level", level(finding.severity()));
    text(json, "message", message(finding));
    json.list("locations");
    json.object();
    physical(json, finding.span());
    json.end();
    json.end();
    related(json, finding);
    json.object("partialFingerprints");
    json.put(FINGERPRINT, one.fingerprint());
    json.end();
    fixes(json, finding);
    json.list("suppressions");
    if (one.waived().isPresent()) {
      suppression(json, one.waived().get());
    }
    json.end();
    json.end();
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
    lines.add(SarifText.of(finding.headline()));
    int id = 1;
    for (Related related : finding.related()) {
      lines.add("note: " + SarifText.link(related.text(), id++));
    }
    finding.notes().forEach(note -> lines.add(SarifText.of("note: " + note)));
    finding.helps().forEach(help -> lines.add(SarifText.of("help: " + help)));
    return String.join("\n", lines);
  }

  private void related(Json json, Finding finding) {
    if (finding.related().isEmpty()) {
      return;
    }
    json.list("relatedLocations");
    int id = 1;
    for (Related related : finding.related()) {
      json.object();
      json.put("id", id++);
      physical(json, related.span());
      text(json, "message", SarifText.of(related.text()));
      json.end();
    }
    json.end();
  }

  /** The edits of a fix are one fix, since they go together. */
  private void fixes(Json json, Finding finding) {
    if (finding.edits().isEmpty()) {
      return;
    }
    json.list("fixes");
    json.object();
    json.list("artifactChanges");
    for (TextEdit edit : finding.edits()) {
      json.object();
      artifact(json, edit.span());
      json.list("replacements");
      json.object();
      region(json, "deletedRegion", edit.span());
      text(json, "insertedContent", edit.replacement());
      json.end();
      json.end();
      json.end();
    }
    json.end();
    json.end();
    json.end();
  }

  private void suppression(Json json, WaivedFinding waiver) {
    json.object();
    json.put("kind", "inSource");
    json.put("status", "accepted");
    json.put("justification", waiver.justification());
    json.object("location");
    physical(json, waiver.waiver());
    json.end();
    json.end();
  }

  private void physical(Json json, Span span) {
    json.object("physicalLocation");
    artifact(json, span);
    region(json, "region", span);
    json.end();
  }

  private void artifact(Json json, Span span) {
    json.object("artifactLocation");
    String path = span.file().path();
    if (PastPath.is(path)) {
      // No file that is there has such a line; the commit is the first part of an address.
      String then = paths.of(PastPath.below(path));
      json.put("uri", "commit:" + PastPath.commit(path) + "/" + uri(then));
    } else if (BundledPath.is(path)) {
      // It lies nowhere below the root; the mark is the scheme of an address of its own.
      json.put("uri", BundledPath.MARK + uri(BundledPath.below(path)));
    } else {
      json.put("uri", uri(paths.of(path)));
      json.put("uriBaseId", ROOT);
    }
    json.end();
  }

  private static void region(Json json, String key, Span span) {
    Position from = span.from();
    Position to = span.to();
    json.object(key);
    json.put("startLine", from.line());
    if (span.end() > 0) {
      json.put("startColumn", from.column());
      json.put("endLine", to.line());
      json.put("endColumn", to.column());
    }
    json.end();
  }

  private static void text(Json json, String key, String text) {
    json.object(key);
    json.put("text", text);
    json.end();
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
