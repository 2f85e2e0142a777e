package dev.pellucid.engine.benchmark;

import java.util.concurrent.Callable;

/**
 * One way to go through all recipes.
 *
 * @param work goes through them once and returns how many it read
 */
record Contender(String name, Callable<Integer> work) {}
