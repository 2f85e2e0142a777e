/**
 * What a person is told who asks for the cheapest recipe that keeps all: the change of its text,
 * proven by the checker, and the reasons. It finds no shares itself and prints nothing.
 */
@NullMarked
package dev.pellucid.engine.leastcost;

import org.jspecify.annotations.NullMarked;
