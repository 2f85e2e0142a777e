package dev.pellucid.engine.data;

import dev.pellucid.text.Span;
import java.util.Optional;

/**
 * {@code pellucid.yaml}.
 *
 * @param name what the folder is called on sheets
 * @param currency three capital letters
 * @param jurisdiction whose law applies, or empty where the file says {@code none}
 * @param plant the name of the plant file to use, or empty
 * @param label the name of the label rules to use, or empty
 * @param lawKeptIn the part of all batches that is to keep a limit of the law
 * @param maker who makes the feed, where the file says so
 * @param place the file, or the line that names the jurisdiction
 */
public record Settings(
    String name,
    String currency,
    Optional<String> jurisdiction,
    Optional<String> plant,
    Optional<String> label,
    double lawKeptIn,
    Optional<Maker> maker,
    Span place) {
  /** Where the file does not say it: nineteen batches of twenty. */
  static final double LAW_KEPT_IN = 0.95;
}
