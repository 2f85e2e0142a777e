/**
 * A folder of feeds that begins: its first files as texts, made of templates and of what a person
 * wishes. It knows no disk, and nothing of what the texts come to.
 */
@NullMarked
package dev.pellucid.engine.starter;

import org.jspecify.annotations.NullMarked;
