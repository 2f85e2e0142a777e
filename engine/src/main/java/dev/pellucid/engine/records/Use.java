package dev.pellucid.engine.records;

import dev.pellucid.text.Span;
import java.time.LocalDate;

/**
 * What a batch takes of a lot.
 *
 * @param lot its number, or that of a batch of a premix; empty where only a bin is told
 * @param bin what it was taken from, where no lot is told
 * @param batch the number of the batch
 * @param share what the recipe asks of it, kg per kg of the batch, whatever was weighed
 * @param made whether it was weighed; else it is planned
 * @param place where the record names the lot
 */
public record Use(
    String lot,
    String bin,
    String batch,
    LocalDate day,
    double kg,
    double share,
    boolean made,
    Span place) {
  boolean isFromBin() {
    return lot.isEmpty();
  }
}
