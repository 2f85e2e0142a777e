package dev.pellucid.engine.data;

import dev.pellucid.text.Span;
import java.util.Optional;

/**
 * Who makes the feed and answers for its label.
 *
 * @param address the place where post finds them
 * @param approvalNumber of the mill, as the authority has given it; empty where it has none
 * @param numberTold whether the file says anything of the number: it may say {@code none}
 * @param place its first line
 */
public record Maker(
    String name, String address, Optional<String> approvalNumber, boolean numberTold, Span place) {}
