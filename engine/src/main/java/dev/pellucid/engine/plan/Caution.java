package dev.pellucid.engine.plan;

/**
 * One sentence that keeps people or fish from harm.
 *
 * @param about the titles of the ingredients or premixes it is about; empty for the whole step
 */
public record Caution(String about, String sentence) {}
