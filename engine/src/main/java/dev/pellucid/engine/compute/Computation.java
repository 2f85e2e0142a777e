package dev.pellucid.engine.compute;

import java.util.Optional;

/** The balance of a recipe, and the feed unless something stands in the way. */
public record Computation(Balances balances, Optional<ComputedFeed> feed) {}
