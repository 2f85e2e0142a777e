/** What ANTLR makes of the grammar files. Only the room above it may look in. */
package dev.pellucid.parse.generated;
