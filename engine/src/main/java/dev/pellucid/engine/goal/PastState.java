package dev.pellucid.engine.goal;

/**
 * A folder as it was.
 *
 * @param name of the state, a commit
 * @param day of it, as it is to be printed
 */
public record PastState(String name, String day, FolderState folder) {}
