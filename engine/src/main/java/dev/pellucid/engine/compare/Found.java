package dev.pellucid.engine.compare;

import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Fingerprint;
import dev.pellucid.finding.Severity;

/**
 * A finding as a comparison tells it, as plain values that hold no file.
 *
 * @param path of the file that it stands in
 * @param line from 1 on
 * @param subject what it is about; may be empty
 * @param side of a limit, {@code min} or {@code max}; may be empty
 * @param known by what it is known again beside its severity, the file left out
 */
public record Found(
    Severity severity,
    String code,
    String path,
    int line,
    String headline,
    String subject,
    String side,
    String known) {

  public static Found of(Finding finding) {
    return new Found(
        finding.severity(),
        finding.code().text(),
        finding.span().file().path(),
        finding.span().from().line(),
        finding.headline(),
        finding.about().subject(),
        Fingerprint.side(finding.about().side()),
        finding.severity().word() + "|" + Fingerprint.of(finding, ""));
  }
}
