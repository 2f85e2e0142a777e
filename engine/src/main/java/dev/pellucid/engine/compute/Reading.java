package dev.pellucid.engine.compute;

import dev.pellucid.engine.quantity.Certainty;

/**
 * A figure of a feed at one end, in the base of its kind.
 *
 * @param value the figure, with what is not told, or only bounded, at the end's worst
 * @param withoutUntold the figure without the contents that are not told
 * @param sure the figure with what is told alone: without what is not told, and of {@code below X}
 *     nothing
 * @param certainty how {@code sure} stands to what is really there
 * @param deviation one standard deviation of it between batches; 0 where it was not asked for
 * @param spreadUnknown whether some content has no known spread, so that the deviation is too small
 * @param unbounded whether something that would make it worse is not told and nothing bounds it
 * @param unknownShare the part of all that is weighed whose content is not told
 */
public record Reading(
    double value,
    double withoutUntold,
    double sure,
    Certainty certainty,
    double deviation,
    boolean spreadUnknown,
    boolean unbounded,
    double unknownShare) {}
