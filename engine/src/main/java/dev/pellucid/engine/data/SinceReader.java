package dev.pellucid.engine.data;

import dev.pellucid.engine.data.BatchRecord.Bags;
import dev.pellucid.engine.data.BatchRecord.Located;
import dev.pellucid.engine.data.Keys.Holds.Block;
import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.data.Since.Complaint;
import dev.pellucid.engine.data.Since.Correction;
import dev.pellucid.engine.data.Since.Decided;
import dev.pellucid.engine.data.Since.Handed;
import dev.pellucid.engine.data.Since.Result;
import dev.pellucid.engine.yaml.Yaml.Entry;
import dev.pellucid.engine.yaml.Yaml.Scalar;
import dev.pellucid.measure.Extent;
import dev.pellucid.measure.Kind;
import dev.pellucid.text.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** What a record tells that was written after the batch was released. */
final class SinceReader {
  private final Fields record;
  private final BatchNames names;
  private final Remarks remarks;
  private final FigureReader figures;
  private final SignedReader signed;
  private final Optional<Bags> bags;

  private SinceReader(
      Fields record, BatchNames names, Remarks remarks, FigureReader figures, Optional<Bags> bags) {
    this.record = record;
    this.names = names;
    this.remarks = remarks;
    this.figures = figures;
    this.signed = new SignedReader(figures);
    this.bags = bags;
  }

  /**
   * @param bags that were filled, where that is told
   */
  static Since of(
      Fields record, BatchNames names, Remarks remarks, FigureReader figures, Optional<Bags> bags) {
    return new SinceReader(record, names, remarks, figures, bags).since();
  }

  private Since since() {
    return new Since(
        handed(SinceVocabulary.DELIVERED, Optional.of(SinceVocabulary.TO)),
        handed(SinceVocabulary.RETURNED, Optional.of(SinceVocabulary.FROM)),
        handed(SinceVocabulary.DISPOSED, Optional.empty()),
        handed(SinceVocabulary.COUNTED, Optional.empty()),
        complaints(),
        results(),
        decisions(),
        corrections());
  }

  private List<Handed> handed(Key<ListOf<Block>> key, Optional<Key<Text>> party) {
    List<Handed> handed = new ArrayList<>();
    for (Fields block : record.blocks(key)) {
      boolean reasoned = block.keys().has(SignedVocabulary.BECAUSE);
      Optional<Signed> when =
          reasoned ? signed.of(block, SignedVocabulary.BECAUSE) : signed.of(block);
      OptionalInt count = count(block, key);
      OptionalDouble loose = loose(block, key);
      if (when.isPresent() && isTold(block, count, loose)) {
        handed.add(
            new Handed(
                when.get(),
                party.map(one -> party(block, one)).orElse(""),
                count,
                count.orElse(0) * bags.map(Bags::of).orElse(0.0) + loose.orElse(0),
                block.keys().has(SinceVocabulary.NOTE)
                    ? block.textOr(SinceVocabulary.NOTE, "")
                    : "",
                amount(block)));
      }
    }
    return handed;
  }

  /** Who it was; empty where what is written names nobody. */
  private String party(Fields block, Key<Text> key) {
    String party = block.textOr(key, "");
    if (!party.isBlank() && party.codePoints().noneMatch(Character::isLetterOrDigit)) {
      remarks.add(
          LotFindings.record(
              block.placeOf(key),
              "\"" + party.strip() + "\" names nobody",
              "write who it was, as on the delivery note, such as Lower Pond"));
      return "";
    }
    return party;
  }

  /** No bag at all can be counted, and not handed over. */
  private OptionalInt count(Fields block, Key<ListOf<Block>> key) {
    Optional<Scalar> bags = block.text(SinceVocabulary.AMOUNT_BAGS);
    return key.equals(SinceVocabulary.COUNTED) ? figures.countOrNone(bags) : figures.count(bags);
  }

  /** Nothing at all can be counted, and not handed over. */
  private OptionalDouble loose(Fields block, Key<ListOf<Block>> key) {
    Optional<Scalar> weight = block.text(SinceVocabulary.AMOUNT_WEIGHT);
    return key.equals(SinceVocabulary.COUNTED)
        ? figures.base(weight, Kind.MASS)
        : figures.positive(weight, Extent.WEIGHT);
  }

  /** Whether an amount is told that can be reckoned in kg. */
  private boolean isTold(Fields block, OptionalInt count, OptionalDouble loose) {
    boolean neither =
        !block.has(SinceVocabulary.AMOUNT_BAGS) && !block.has(SinceVocabulary.AMOUNT_WEIGHT);
    boolean unknownBag = count.isPresent() && bags.filter(one -> one.of() > 0).isEmpty();
    if (neither) {
      remarks.add(
          LotFindings.record(
              block.place(),
              block.keys().thing() + " tells no amount",
              "write bags: 4, or weight: 12.5 kg for what is loose"));
    }
    if (unknownBag) {
      remarks.add(
          LotFindings.record(
              block.placeOf(SinceVocabulary.AMOUNT_BAGS),
              "bags are counted here, and the record does not tell what a full bag holds",
              "write bags: {full: 4, of: 25 kg} in the record first"));
    }
    return !unknownBag && (count.isPresent() || loose.isPresent());
  }

  private static Span amount(Fields block) {
    return block.placeOf(
        block.has(SinceVocabulary.AMOUNT_BAGS)
            ? SinceVocabulary.AMOUNT_BAGS
            : SinceVocabulary.AMOUNT_WEIGHT);
  }

  private List<Complaint> complaints() {
    List<Complaint> complaints = new ArrayList<>();
    for (Fields block : record.blocks(SinceVocabulary.COMPLAINTS)) {
      signed
          .of(block)
          .ifPresent(
              when ->
                  complaints.add(
                      new Complaint(
                          when,
                          block.textOr(SinceVocabulary.COMPLAINT_FROM, ""),
                          block.textOr(SinceVocabulary.COMPLAINT_ABOUT, ""))));
    }
    return complaints;
  }

  private List<Result> results() {
    List<Result> results = new ArrayList<>();
    for (Fields block : record.blocks(SinceVocabulary.RESULTS)) {
      Map<String, Content> found = new LinkedHashMap<>();
      for (Entry entry : block.others()) {
        found(block, entry).ifPresent(content -> found.put(entry.key().text(), content));
      }
      if (block.others().isEmpty()) {
        remarks.add(
            LotFindings.record(
                block.place(),
                "a result tells nothing that was found",
                "write what was found by the name of its nutrient: crude-protein: 34.2 %"));
      }
      signed.of(block).ifPresent(when -> results.add(new Result(when, found)));
    }
    return results;
  }

  private Optional<Content> found(Fields block, Entry entry) {
    Optional<Scalar> value = block.textOf(entry);
    if (!names.nutrients().check(entry.key(), block.keys(), remarks) || value.isEmpty()) {
      return Optional.empty();
    }
    Source laboratory = Sources.unknown("", entry.key().span());
    return names
        .contents()
        .named(entry.key().text())
        .flatMap(nutrient -> figures.content(value.get(), nutrient.unit().kind(), laboratory));
  }

  private List<Decided> decisions() {
    List<Decided> decisions = new ArrayList<>();
    for (Fields block : record.blocks(SinceVocabulary.DECIDED_LATER)) {
      Optional<BatchRecord.Decision> decision = block.oneOf(SinceVocabulary.DECISION, "a decision");
      signed
          .of(block, SignedVocabulary.BECAUSE)
          .ifPresent(when -> decision.ifPresent(it -> decisions.add(new Decided(when, it))));
    }
    return decisions;
  }

  private List<Correction> corrections() {
    List<Correction> corrections = new ArrayList<>();
    for (Fields block : record.blocks(SinceVocabulary.CORRECTIONS)) {
      signed
          .of(block, SignedVocabulary.BECAUSE)
          .ifPresent(
              when ->
                  corrections.add(
                      new Correction(
                          when,
                          block
                              .text(SinceVocabulary.CORRECTION_LINE)
                              .map(line -> new Located<>(line.text(), line.span())),
                          block.string(SinceVocabulary.CORRECTION_WAS))));
    }
    return corrections;
  }
}
