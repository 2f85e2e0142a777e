package dev.pellucid.engine.check;

import dev.pellucid.engine.compute.End;
import dev.pellucid.engine.compute.Reading;
import dev.pellucid.engine.resolve.Limit;

/**
 * One side of one limit, judged.
 *
 * @param end where it was judged
 * @param reading the figure there, in the base of the limit's kind
 * @param judged the figure that is held against the bound: with confidence, the reading less or
 *     more so many deviations
 * @param keeps whether the bound in force is kept; a value within 1e-9 of it keeps it
 */
public record Verdict(Limit limit, End end, Reading reading, double judged, boolean keeps) {}
