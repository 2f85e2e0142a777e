package dev.pellucid.engine.goal;

import java.util.Optional;

/**
 * What came of asking for an explanation.
 *
 * @param text the explanation; empty where there is a problem
 * @param problem why there is none, and what to do
 */
public record ExplainReport(String text, Optional<String> problem) {}
