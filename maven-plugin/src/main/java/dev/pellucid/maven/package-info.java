/** The goals: parameters in, findings out. It decides nothing about feed. */
@NullMarked
package dev.pellucid.maven;

import org.jspecify.annotations.NullMarked;
