package dev.pellucid.engine.resolve;

import dev.pellucid.engine.data.Nutrient;
import dev.pellucid.engine.resolve.Label.Claim;
import dev.pellucid.engine.resolve.Label.Manner;
import dev.pellucid.finding.Code;
import dev.pellucid.finding.Finding;
import dev.pellucid.syntax.Bound;
import dev.pellucid.syntax.LabelLine;
import dev.pellucid.syntax.Section;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The section {@code label} to what it claims; a line that names no nutrient is left out. */
final class LabelLines {
  static final Code TWICE = new Code("label-twice");

  private final Limits limits;
  private final List<Finding> findings;
  private final List<Claim> claims = new ArrayList<>();
  private final Map<String, Span> told = new HashMap<>();

  LabelLines(Limits limits, List<Finding> findings) {
    this.limits = limits;
    this.findings = findings;
  }

  Label of(Section<LabelLine> section) {
    int before = findings.size();
    section.lines().forEach(this::line);
    return new Label(claims, section.heading(), section.whole() && findings.size() == before);
  }

  private void line(LabelLine line) {
    Optional<Nutrient> nutrient = limits.nutrient(line.nutrient());
    Span earlier = told.putIfAbsent(line.nutrient().text(), line.nutrient().span());
    if (earlier != null) {
      findings.add(
          Finding.error(
                  TWICE, line.nutrient().span(), line.nutrient() + " stands on the label twice")
              .seeing("first given", earlier)
              .helping("keep one of the two lines"));
    } else if (nutrient.isPresent()) {
      line.declared()
          .map(amount -> new Bound.Limit.Measured(amount))
          .ifPresent(figure -> claim(nutrient.get(), Manner.DECLARED, line, figure));
      for (Bound bound : line.guaranteed()) {
        Manner manner = bound.side() == Bound.Side.MIN ? Manner.AT_LEAST : Manner.AT_MOST;
        claim(nutrient.get(), manner, line, bound.limit());
      }
    }
  }

  private void claim(Nutrient nutrient, Manner manner, LabelLine line, Bound.Limit figure) {
    Subject subject = limits.alone(nutrient);
    figure
        .measured()
        .filter(amount -> limits.fits(subject, amount))
        .map(amount -> new Claim(nutrient, manner, amount.base(), amount, line.nutrient().span()))
        .ifPresent(claims::add);
  }
}
