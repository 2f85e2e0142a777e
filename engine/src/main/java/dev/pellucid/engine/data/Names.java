package dev.pellucid.engine.data;

/**
 * The names that a folder declares, as each kind of file may use them.
 *
 * @param species species and groups of species
 * @param classes stability classes, without {@link Nutrient#STABLE}
 */
record Names(Sources sources, Known groups, Known nutrients, Known species, Known classes) {}
