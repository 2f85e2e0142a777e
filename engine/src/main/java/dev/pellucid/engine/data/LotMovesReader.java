package dev.pellucid.engine.data;

import dev.pellucid.engine.data.Keys.Holds.Block;
import dev.pellucid.engine.data.Keys.Holds.ListOf;
import dev.pellucid.engine.data.Keys.Holds.Text;
import dev.pellucid.engine.data.Keys.Key;
import dev.pellucid.engine.data.LotMoves.Moved;
import dev.pellucid.measure.Extent;
import dev.pellucid.measure.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What became of a lot beside going into batches. */
final class LotMovesReader {
  private final FigureReader figures;
  private final Remarks remarks;
  private final SignedReader signed;

  LotMovesReader(FigureReader figures, Remarks remarks) {
    this.figures = figures;
    this.remarks = remarks;
    this.signed = new SignedReader(figures);
  }

  LotMoves moves(Fields lot) {
    return new LotMoves(
        out(lot, LotsVocabulary.RETURNED),
        out(lot, LotsVocabulary.DISPOSED),
        corrections(lot),
        counted(lot));
  }

  private List<Moved> out(Fields lot, Key<ListOf<Block>> key) {
    List<Moved> moves = new ArrayList<>();
    for (Fields block : lot.blocks(key)) {
      add(
          moves,
          signed.of(block, SignedVocabulary.BECAUSE),
          figures.positive(block.text(LotsVocabulary.MOVED_WEIGHT), Extent.WEIGHT),
          block,
          LotsVocabulary.MOVED_WEIGHT);
    }
    return moves;
  }

  private List<Moved> counted(Fields lot) {
    List<Moved> moves = new ArrayList<>();
    for (Fields block : lot.blocks(LotsVocabulary.COUNTED)) {
      add(
          moves,
          signed.of(block),
          figures.base(block.text(LotsVocabulary.MOVED_WEIGHT), Kind.MASS),
          block,
          LotsVocabulary.MOVED_WEIGHT);
    }
    return moves;
  }

  private List<Moved> corrections(Fields lot) {
    List<Moved> moves = new ArrayList<>();
    for (Fields block : lot.blocks(LotsVocabulary.CORRECTIONS)) {
      boolean less = block.has(LotsVocabulary.LESS);
      if (less == block.has(LotsVocabulary.MORE)) {
        remarks.add(
            LotFindings.record(
                block.place(),
                "a correction of the store tells " + (less ? "less and more" : "no amount"),
                "write less: 12 kg, or more: 3 kg"));
        continue;
      }
      Key<Text> key = less ? LotsVocabulary.LESS : LotsVocabulary.MORE;
      OptionalDouble kg = figures.positive(block.text(key), Extent.WEIGHT);
      add(
          moves,
          signed.of(block, SignedVocabulary.BECAUSE),
          less && kg.isPresent() ? OptionalDouble.of(-kg.getAsDouble()) : kg,
          block,
          key);
    }
    return moves;
  }

  private static void add(
      List<Moved> moves, Optional<Signed> signed, OptionalDouble kg, Fields block, Key<Text> key) {
    if (signed.isPresent() && kg.isPresent()) {
      moves.add(new Moved(signed.get(), kg.getAsDouble(), block.placeOf(key)));
    }
  }
}
