package dev.pellucid.engine.weighing;

/**
 * Wet feed on trays.
 *
 * @param load kg on one tray
 * @param count how many trays the batch fills, the last one not full
 * @param rounds how often the dryer is filled
 */
public record Trays(double load, int count, int rounds) {}
