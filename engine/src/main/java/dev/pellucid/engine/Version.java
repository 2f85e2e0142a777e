package dev.pellucid.engine;

/**
 * Which state of the folder a batch sheet was made from, as the version control says.
 *
 * @param commit the short name of the commit that holds the recipe; empty where there is none
 * @param clean whether the tree held nothing that is not in the commit
 */
public record Version(String commit, boolean clean) {}
