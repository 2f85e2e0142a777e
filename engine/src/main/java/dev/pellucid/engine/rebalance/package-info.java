/**
 * What a person is told who asks for one batch re-balanced to its lots: the smallest change of its
 * shares that keeps every limit, proven by the checker, with the reasons, and the edit of its
 * record. It finds no shares itself, reads no file and prints nothing.
 */
@NullMarked
package dev.pellucid.engine.rebalance;

import org.jspecify.annotations.NullMarked;
