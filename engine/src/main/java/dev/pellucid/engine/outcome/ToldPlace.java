package dev.pellucid.engine.outcome;

import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Fingerprint;

/**
 * Which finding it is, of all of a run: where several recipes have one cause its sentences may be
 * put together otherwise, and this stays the same.
 *
 * @param start where it begins in its file
 */
record ToldPlace(String fingerprint, int start) {
  static ToldPlace of(Finding finding) {
    return new ToldPlace(Fingerprint.of(finding), finding.span().start());
  }
}
