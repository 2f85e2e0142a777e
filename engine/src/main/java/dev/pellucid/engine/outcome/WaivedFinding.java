package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Finding;
import dev.pellucid.text.Span;

/**
 * A broken limit that its waiver lets pass.
 *
 * @param finding what would be said without the waiver
 * @param waiver where the waiver is written
 * @param until the last day of the waiver, as 2027-03-31
 */
public record WaivedFinding(Finding finding, Span waiver, String until, String by, String because) {
  /** In one line: until when, by whom, why. */
  public String justification() {
    return "waived until " + until + " by " + by + ": " + because;
  }
}
