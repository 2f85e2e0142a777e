package dev.pellucid.engine.starter;

import java.time.LocalDate;

/**
 * What a person wishes of a folder that begins.
 *
 * @param species one of those that there are templates of
 * @param jurisdiction whose law is judged, as {@code pellucid.yaml} says it: {@code none}, {@code
 *     EU}
 * @param currency three capital letters
 * @param name what the folder is called, on one line
 * @param day from which its prices are
 * @param version of the plugin that the folder is tied to
 */
public record Wishes(
    String species,
    String jurisdiction,
    String currency,
    String name,
    LocalDate day,
    String version) {}
