package dev.pellucid.engine.check;

import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.util.List;
import java.util.Optional;

/**
 * What a rule says of a recipe.
 *
 * @param about the limit that it speaks of, as it stands; empty where it speaks of something else
 */
public record Remark(Finding finding, Optional<LimitStatus> about) {

  /** The first of what is said that tells of an error about how this limit stands. */
  public static Optional<Finding> errorAbout(LimitStatus status, List<Remark> said) {
    for (Remark remark : said) {
      if (remark.finding.severity() == Severity.ERROR && remark.speaksOf(status)) {
        return Optional.of(remark.finding);
      }
    }
    return Optional.empty();
  }

  private boolean speaksOf(LimitStatus status) {
    return about.isPresent() && about.get().equals(status);
  }
}
