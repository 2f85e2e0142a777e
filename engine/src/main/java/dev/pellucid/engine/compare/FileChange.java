package dev.pellucid.engine.compare;

/** What the check says otherwise of a file that is neither a recipe nor a premix. */
public record FileChange(String path, FindingsMoved findings) {}
