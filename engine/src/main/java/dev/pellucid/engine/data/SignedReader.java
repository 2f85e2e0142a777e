package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import java.time.LocalDate;
import java.util.Optional;

/** When something was done, by whom and why. */
final class SignedReader {
  private final FigureReader figures;

  SignedReader(FigureReader figures) {
    this.figures = figures;
  }

  /** Empty where its day cannot be read; that is a finding. */
  Optional<Signed> of(Fields block) {
    return of(block, "");
  }

  /** The same with a reason. */
  Optional<Signed> of(Fields block, Key<Text> because) {
    return of(block, block.textOr(because, ""));
  }

  /**
   * The same where who signs may still be to be given, as on a sheet that is printed for it: then
   * nobody does.
   */
  Optional<Signed> toSign(Fields block, Key<Text> because) {
    Optional<Scalar> by = block.textOrMark(SignedVocabulary.BY);
    return of(block, by.map(Scalar::text).orElse(""), block.textOr(because, ""));
  }

  private Optional<Signed> of(Fields block, String because) {
    return of(block, block.textOr(SignedVocabulary.BY, ""), because);
  }

  private Optional<Signed> of(Fields block, String by, String because) {
    Optional<LocalDate> day = figures.day(block.text(SignedVocabulary.DAY));
    return day.map(when -> new Signed(when, by, because, block.placeOf(SignedVocabulary.DAY)));
  }
}
