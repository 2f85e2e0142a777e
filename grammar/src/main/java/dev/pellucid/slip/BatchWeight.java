package dev.pellucid.slip;

import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import java.util.Optional;

/** A batch that does not say which weight is meant. */
final class BatchWeight implements Slip {
  static final Code CODE = new Code("batch-weight-missing");

  @Override
  public Optional<Finding> in(BrokenLine line) {
    if (line.place() != Place.HEAD || !line.is(0, "batch") || line.size() != 3) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.error(CODE, line.span(), "the batch does not say which weight is meant")
            .helping("end the line with weighed, for what goes into the mixer")
            .helping("or with finished, for what comes out after drying and losses"));
  }
}
