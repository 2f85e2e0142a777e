package dev.pellucid.engine.data;

import dev.pellucid.engine.data.BatchNames.Earlier;
import dev.pellucid.engine.data.BatchRecord.Bags;
import dev.pellucid.engine.data.BatchRecord.BegunWith;
import dev.pellucid.engine.data.BatchRecord.Fines;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.BatchRecord.MadeFrom;
import dev.pellucid.engine.data.BatchRecord.NewShare;
import dev.pellucid.engine.data.BatchRecord.Rebalanced;
import dev.pellucid.engine.data.BatchRecord.Sample;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.measure.Extent;
import dev.pellucid.measure.Kind;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/** What a record tells of where a batch comes from, and of what was filled, sieved and kept. */
final class MadeReader {
  private static final Pattern COMMIT = Pattern.compile("[0-9a-f]{7,64}");
  private static final Pattern FINGERPRINT = Pattern.compile("[0-9a-f]{12}");

  private final BatchNames names;
  private final FigureReader figures;
  private final Remarks remarks;

  MadeReader(BatchNames names, FigureReader figures, Remarks remarks) {
    this.names = names;
    this.figures = figures;
    this.remarks = remarks;
  }

  Optional<MadeFrom> madeFrom(Fields record) {
    return record.block(BatchVocabulary.MADE_FROM).map(this::state);
  }

  private MadeFrom state(Fields block) {
    if (block.isEmpty()) {
      remarks.add(
          LotFindings.record(
              block.place(),
              "what the batch was made from is empty",
              "copy commit and fingerprint from its sheet"));
    }
    return new MadeFrom(
        shaped(
            block.text(BatchVocabulary.MADE_FROM_COMMIT), COMMIT, "a commit", "7 digits or more"),
        shaped(
            block.text(BatchVocabulary.MADE_FROM_FINGERPRINT),
            FINGERPRINT,
            "a fingerprint",
            "12 digits"),
        block.place());
  }

  private Optional<Located<String>> shaped(
      Optional<Scalar> written, Pattern shape, String what, String digits) {
    if (written.isPresent() && !shape.matcher(written.get().text()).matches()) {
      remarks.add(
          LotFindings.record(
              written.get().span(),
              KeyFindings.shown(written.get().text()) + " is not " + what,
              "copy it from the sheet: " + digits + ", each 0 to 9 or a to f"));
      return Optional.empty();
    }
    return written.map(text -> new Located<>(text.text(), text.span()));
  }

  Optional<Rebalanced> rebalanced(Fields record) {
    return record.block(BatchVocabulary.REBALANCED).flatMap(this::newShares);
  }

  private Optional<Rebalanced> newShares(Fields block) {
    List<NewShare> shares = new ArrayList<>();
    List<Fields> written = block.blocks(BatchVocabulary.REBALANCED_SHARES);
    if (block.has(BatchVocabulary.REBALANCED_SHARES) && written.isEmpty()) {
      remarks.add(
          LotFindings.record(
              block.placeOf(BatchVocabulary.REBALANCED_SHARES),
              "the batch is re-balanced, and no share is told",
              "write {line: maize, share: 12.50 %} for each line that changes"));
    }
    for (Fields one : written) {
      Optional<Scalar> line = one.text(BatchVocabulary.NEW_SHARE_LINE);
      OptionalDouble share = figures.share(one.text(BatchVocabulary.NEW_SHARE));
      if (line.isPresent() && share.isPresent()) {
        shares.add(
            new NewShare(
                line.get().text(),
                share.getAsDouble(),
                line.get().span(),
                one.placeOf(BatchVocabulary.NEW_SHARE)));
      }
    }
    Optional<Signed> signed = new SignedReader(figures).toSign(block, SignedVocabulary.MAY_BECAUSE);
    return shares.size() < written.size() || shares.isEmpty()
        ? Optional.empty()
        : signed.map(by -> new Rebalanced(by, shares));
  }

  /** All that is in bags, kg. */
  static Located<Double> all(Bags bags) {
    return new Located<>(bags.full() * bags.of() + bags.rest(), bags.place());
  }

  /**
   * @param number of the batch itself
   */
  Optional<Bags> bags(Fields record, String number) {
    return record
        .block(BatchVocabulary.BAGS)
        .flatMap(block -> bags(block, record.placeOf(BatchVocabulary.BAGS), number));
  }

  private Optional<Bags> bags(Fields block, Span place, String number) {
    OptionalInt full = figures.count(block.text(BatchVocabulary.BAGS_FULL));
    OptionalDouble of = figures.positive(block.text(BatchVocabulary.BAGS_OF), Extent.WEIGHT);
    OptionalDouble rest = figures.base(block.text(BatchVocabulary.BAGS_REST), Kind.MASS);
    Optional<BegunWith> begun =
        block.block(BatchVocabulary.BAGS_BEGUN_WITH).flatMap(it -> begunWith(it, number));
    if (full.isPresent() != of.isPresent() || (full.isEmpty() && rest.isEmpty())) {
      if (!block.has(BatchVocabulary.BAGS_FULL) || !block.has(BatchVocabulary.BAGS_OF)) {
        remarks.add(
            LotFindings.record(
                block.place(),
                "bags are given by how many are full, of what, and the rest",
                "write full: 2, of: 25 kg and rest: 6.4 kg"));
      }
      return Optional.empty();
    }
    return Optional.of(new Bags(full.orElse(0), of.orElse(0), rest.orElse(0), begun, place));
  }

  private Optional<BegunWith> begunWith(Fields block, String number) {
    Optional<Scalar> batch = block.text(BatchVocabulary.BEGUN_WITH_BATCH);
    OptionalDouble kg =
        figures.positive(block.text(BatchVocabulary.BEGUN_WITH_WEIGHT), Extent.WEIGHT);
    return batch.isPresent()
            && kg.isPresent()
            && names.isBefore(batch.get(), number, Earlier.PART_BAG, remarks)
        ? Optional.of(new BegunWith(batch.get().text(), kg.getAsDouble(), batch.get().span()))
        : Optional.empty();
  }

  Optional<Fines> fines(Fields record) {
    return record
        .block(BatchVocabulary.FINES)
        .flatMap(
            block ->
                figures.positive(block.text(BatchVocabulary.FINES_WEIGHT), Extent.WEIGHT).stream()
                    .mapToObj(
                        kg ->
                            new Fines(
                                kg,
                                block.textOr(BatchVocabulary.FINES_TO, ""),
                                block.placeOf(BatchVocabulary.FINES_WEIGHT),
                                block.placeOf(BatchVocabulary.FINES_TO)))
                    .findFirst());
  }

  List<Sample> samples(Fields record) {
    List<Sample> samples = new ArrayList<>();
    for (Fields block : record.blocks(BatchVocabulary.SAMPLES)) {
      OptionalDouble kg =
          figures.positive(block.text(BatchVocabulary.SAMPLE_WEIGHT), Extent.WEIGHT);
      if (kg.isPresent()) {
        samples.add(
            new Sample(
                kg.getAsDouble(),
                block.textOr(BatchVocabulary.SAMPLE_PLACE, ""),
                figures.day(block.text(BatchVocabulary.SAMPLE_UNTIL)),
                block.placeOf(BatchVocabulary.SAMPLE_WEIGHT)));
      }
    }
    return samples;
  }
}
