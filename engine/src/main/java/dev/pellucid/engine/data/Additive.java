package dev.pellucid.engine.data;

import java.util.Optional;

/**
 * What makes an ingredient a feed additive on a label.
 *
 * @param functionalGroup what it is for, as the label says it: "Trace elements"
 * @param number its identification number, where it has one
 * @param nutrient what its amount is told in: {@code zinc}
 */
public record Additive(
    String functionalGroup, Optional<String> number, Optional<String> nutrient, Source source) {}
