package dev.pellucid.engine.check;

import dev.pellucid.engine.judge.LimitStatus;
import dev.pellucid.finding.Finding;
import dev.pellucid.finding.Severity;
import java.util.Optional;

/**
 * What a rule says of a recipe.
 *
 * @param about the limit that it speaks of, as it stands; empty where it speaks of something else
 */
public record Remark(Finding finding, Optional<LimitStatus> about) {

  /** Whether it says that something is wrong about how this limit stands. */
  public boolean isErrorAbout(LimitStatus status) {
    return finding.severity() == Severity.ERROR && about.filter(status::equals).isPresent();
  }
}
