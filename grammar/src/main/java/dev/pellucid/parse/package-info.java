/**
 * Text to tree and findings: always a tree, and a broken line never costs another line. The only
 * room that sees the generated parser.
 */
@NullMarked
package dev.pellucid.parse;

import org.jspecify.annotations.NullMarked;
