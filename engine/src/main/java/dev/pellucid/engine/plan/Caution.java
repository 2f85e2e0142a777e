package dev.pellucid.engine.plan;

/**
 * What keeps people or fish from harm.
 *
 * @param about the titles of the ingredients or premixes it is about; empty for the whole step
 * @param words a sentence or more
 */
public record Caution(String about, String words) {}
